/** @module A governor held against a class of ISO 8528-5: droop, steadiness, and what to turn which way. */
import { verdictOf } from '../measure/guard-band.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { combine, propagate, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { speedDroop } from './droop.ts';
import { quantityInput, textInput } from './inputs.ts';
import { quantityOf, type Reckoning, type Result, result, type Values } from './reckoning.ts';

/** Greatest droop and greatest steady band, in parts of the rated speed. source: ISO 8528-5, Table 4 (G1 and G3 from memory). */
const classes = {
  G1: { droop: 0.08, band: 0.025 },
  G2: { droop: 0.05, band: 0.015 },
  G3: { droop: 0.03, band: 0.005 },
} as const;
const names = Object.keys(classes) as readonly (keyof typeof classes)[];

/**
 * What a class of generating set allows its governor.
 *
 * @param name  G1, G2 or G3; G4 is by agreement and has no figures
 * @returns greatest droop and greatest steady-state band, in parts of the rated speed
 * @source  ISO 8528-5, performance classes
 * @example classLimits('G2').droop // 0.05
 */
export const classLimits = (name: keyof typeof classes): { readonly droop: number; readonly band: number } =>
  classes[name];

const ways = ['in raises it', 'in lowers it'] as const;

/** Which way a screw goes, where it was said how it acts. */
const turned = (way: string | undefined, rise: boolean): string =>
  way === undefined ? '' : (way === ways[0]) === rise ? ', screw in' : ', screw out';

const inputs = [
  quantityInput('rated', 'speed', 'rated speed', 'above 0', '1500rpm'),
  quantityInput('no-load', 'speed', 'steady speed without load, engine hot', 'about rated', '1590±2rpm'),
  quantityInput('full-load', 'speed', 'steady speed at full load', 'about rated', '1500±2rpm'),
  quantityInput('highest', 'speed', 'highest speed seen at one steady load', 'about rated', '1546±1rpm'),
  quantityInput('lowest', 'speed', 'lowest speed seen at that load', 'not above the highest', '1534±1rpm'),
  textInput('class', 'performance class asked for', 'G2', { oneOf: names }),
  quantityInput('wanted', 'ratio', 'droop wanted, as the manual has it', '0 to the class’s limit', '4%', {
    optional: true,
  }),
  textInput('speed-screw', 'how the speed setting acts on the speed', 'in raises it', {
    oneOf: ways,
    optional: true,
  }),
  textInput('droop-screw', 'how the droop setting acts on the droop', 'in raises it', {
    oneOf: ways,
    optional: true,
  }),
];

const misgiven = (values: Values): Answer<never> | undefined => {
  const rated = quantityOf(values, 'rated').value;
  if (!(rated > 0 && rated < 1e5))
    return refuse(`a rated speed of ${rated} rpm is out of range`, 'rated', 'give it above 0');
  const far = ['no-load', 'full-load', 'highest', 'lowest'].find(
    (key) => Math.abs(quantityOf(values, key).value / rated - 1) > 0.5,
  );
  if (far !== undefined)
    return refuse('it is more than half the rated speed off: no governed speed is', far, 'check the speed');
  if (quantityOf(values, 'no-load').value < quantityOf(values, 'full-load').value)
    return refuse(
      'the speed without load is below that at full load',
      'no-load, full-load',
      'check that the two are not swapped, and take both again on a steady engine',
    );
  if (quantityOf(values, 'highest').value < quantityOf(values, 'lowest').value)
    return refuse('the highest speed is below the lowest', 'highest, lowest', 'swap them, if they are so');
  const { wanted } = values.quantities;
  const limit = classes[names.find((name) => name === values.texts.class) ?? 'G3'].droop;
  return wanted !== undefined && !(wanted.value >= 0 && wanted.value <= limit)
    ? refuse('the droop wanted is not within the class', 'wanted', `give 0 to ${100 * limit} %`)
    : undefined;
};

const judged = (share: Uncertain, limit: number): Result => ({
  value: verdictOf(share.value, standardUncertainty(share), Infinity, { greatest: limit }, 0.95),
  unit: '',
});

/** The droop to make for: as wanted, else what was found where the class allows it, else the class's limit. */
const aimOf = (found: number, limit: number, wanted: number | undefined): number =>
  wanted ?? Math.min(found, limit);

export const governorBandReckoning: Reckoning = {
  name: 'governor-band',
  title: 'Governor against a class of ISO 8528-5: droop, steady band, what to turn and which way',
  inputs,
  formula:
    'droop = (no load − full load) / rated; band = (highest − lowest) / rated; both against the class; no load to set = rated (1 + droop wanted)',
  source:
    'ISO 8528-5 (G1 8 and 2.5 %, G2 5 and 1.5 %, G3 3 and 0.5 %; G1 and G3 from memory); ISO 14253-1 for the verdicts; what to turn: common practice, no source',
  reckon: (values) => {
    const wrong = misgiven(values);
    if (wrong !== undefined) return wrong;
    const [rated, noLoad, fullLoad, highest, lowest] = [
      'rated',
      'no-load',
      'full-load',
      'highest',
      'lowest',
    ].map((key) => quantityOf(values, key)) as [Uncertain, Uncertain, Uncertain, Uncertain, Uncertain];
    const limits = classLimits(names.find((name) => name === values.texts.class) ?? 'G3');
    const droop = propagate(([n = 0, f = 0, r = 1]) => speedDroop(n, f, r), [noLoad, fullLoad, rated]);
    if (droop.kind === 'refused') return droop;
    const band = propagate(([h = 0, l = 0, r = 1]) => speedDroop(h, l, r), [highest, lowest, rated]);
    if (band.kind === 'refused') return band;
    const aim = aimOf(droop.value.value, limits.droop, values.quantities.wanted?.value);
    const steady = judged(band.value, limits.band);
    const { 'speed-screw': speedWay, 'droop-screw': droopWay } = values.texts;
    const off = droop.value.value - aim;
    const known = 1.96 * standardUncertainty(droop.value);
    const turnDroop =
      Math.abs(off) <= Math.max(known, 1e-9)
        ? 'leave it'
        : off > 0
          ? `less droop${turned(droopWay, false)}`
          : `more droop${turned(droopWay, true)}`;
    const change = combine([
      [1 + aim, rated],
      [-1, noLoad],
    ]);
    const turnSpeed =
      Math.abs(change.value) <= Math.max(1.96 * standardUncertainty(change), 1e-6)
        ? 'leave it'
        : change.value > 0
          ? `faster${turned(speedWay, true)}`
          : `slower${turned(speedWay, false)}`;
    return answer({
      results: {
        droop: result(droop.value, '%', 100),
        'droop-allowed': { value: 100 * limits.droop, unit: '%' },
        'droop-verdict': judged(droop.value, limits.droop),
        band: result(band.value, '%', 100),
        'band-allowed': { value: 100 * limits.band, unit: '%' },
        'band-verdict': steady,
        'turn-droop': { value: turnDroop, unit: '' },
        'no-load-to-set': result(combine([[1 + aim, rated]]), 'rpm'),
        'turn-speed': { value: turnSpeed, unit: '' },
        'speed-change': result(change, 'rpm'),
      },
      notes: [
        ...(steady.value === 'within'
          ? []
          : [
              'Before the governor is touched: disconnect it and prove the rack free; look at the linkage for play and at the camshaft’s end float. More droop steadies, where the class leaves room for it.',
            ]),
        `Set the speed without load first, hot; then load it fully, work out the droop (made for: ${formatFigure(100 * aim, 1)} %); a change of one setting moves the other: go round until both hold, then seal them.`,
        'Have the means at hand to shut off its air, nobody in line with the flywheel, hands and clothes clear of what turns.',
      ],
    });
  },
};
