/** @module How hot a hub must be to slip onto its shaft, and whether it may be. */
import { expansionOf } from '../measure/expansion.ts';
import { formatFigure } from '../quantity/figure.ts';
import { answer, refuse } from '../quantity/refusal.ts';
import { expanded, propagate, uncertain } from '../quantity/uncertain.ts';
import { quantityInput, textInput } from './inputs.ts';
import { metalNamed, metals } from './metal.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';
import { temperColour } from './temper-colour.ts';

/**
 * Temperature at which a bore has grown over a shaft by a clearance to slip on with.
 *
 * T = room + (shaft grown or shrunk at its own temperature − bore + clearance) / (α bore)
 *
 * @param bore       at 20 °C, mm
 * @param shaft      at 20 °C, mm
 * @param clearance  on the diameter while it is slipped on, mm
 * @param hub        how the hub grows, 1/K
 * @param cooled     how the shaft grows, 1/K, and the temperature at which it is, °C
 * @returns °C; sizes are those at 20 °C
 * @source  linear expansion; the clearance of a thousandth of the diameter: DIN 7190, from memory
 * @example slipOnTemperature(50, 50.08, 0.05, 11.5e-6, { expansion: 11.5e-6, celsius: 20 }) // 246 °C
 */
export const slipOnTemperature = (
  bore: number,
  shaft: number,
  clearance: number,
  hub: number,
  cooled: { readonly expansion: number; readonly celsius: number },
): number => {
  const there = shaft * (1 + cooled.expansion * (cooled.celsius - 20));
  return 20 + (there - bore + clearance) / (hub * bore);
};

/** Hottest that a hub may be, °C. source: DIN 7190, from memory; the maker's figure goes before it. */
const hottest = {
  'structural steel': 350,
  tempered: 300,
  'surface hardened': 250,
  'case hardened': 200,
} as const;
const states = Object.keys(hottest) as readonly (keyof typeof hottest)[];

export const shrinkFitReckoning: Reckoning = {
  name: 'shrink-fit',
  title: 'How hot a hub must be to slip onto its shaft, and whether it may be so hot',
  inputs: [
    quantityInput('bore', 'length', 'bore of the hub, measured, at 20 °C', 'above 0', '49.970±0.003mm'),
    quantityInput('shaft', 'length', 'shaft, measured, at 20 °C', 'above 0', '50.030±0.003mm'),
    quantityInput(
      'clearance',
      'length',
      'clearance on the diameter while it is slipped on; a thousandth of the diameter is usual',
      '0 to 1 mm',
      '0.05mm',
    ),
    quantityInput(
      'shaft-temperature',
      'temperature',
      'temperature of the shaft: cooled in dry ice it is near -70 °C',
      '-200 °C to 60 °C',
      '20°C',
      { unlessGiven: '20 °C' },
    ),
    textInput('hub', 'what the hub is made of', 'steel', { oneOf: metals, unlessGiven: 'steel' }),
    textInput('shaft-of', 'what the shaft is made of', 'steel', { oneOf: metals, unlessGiven: 'steel' }),
    textInput('state', 'how the hub was hardened', 'case hardened', { oneOf: states, optional: true }),
    quantityInput(
      'tempered-at',
      'temperature',
      "hottest that the maker's manual allows, or at which the hub was tempered",
      '100 °C to 700 °C',
      '220°C',
      { optional: true },
    ),
  ],
  formula:
    'T = 20 °C + (shaft (1 + αs (Ts − 20)) − bore + clearance) / (αh bore); heat past its uncertain side',
  source:
    'linear expansion; DIN 7190 for the hottest a hub may be (from memory); colours: a steel text of the early 20th century',
  reckon: (values) => {
    const [bore, shaft] = [quantityOf(values, 'bore'), quantityOf(values, 'shaft')];
    const clearance = quantityOf(values, 'clearance').value;
    const cold = quantityOf(values, 'shaft-temperature').value;
    if (!(bore.value > 0 && shaft.value > 0 && shaft.value < bore.value * 1.02))
      return refuse(
        'these are no sizes of one joint',
        'bore, shaft',
        'give both diameters: they lie within a fiftieth',
      );
    if (!(clearance >= 0 && clearance <= 1))
      return refuse(`a clearance of ${clearance} mm is out of range`, 'clearance', 'give 0 to 1 mm');
    if (!(cold >= -200 && cold <= 60))
      return refuse(`a shaft at ${cold} °C is out of range`, 'shaft-temperature', 'give -200 °C to 60 °C');
    const [hub, inner] = [
      expansionOf(metalNamed(values.texts.hub)),
      expansionOf(metalNamed(values.texts['shaft-of'])),
    ];
    const grows = (name: string, { perDegree, within }: typeof hub) =>
      uncertain(perDegree, name, within / Math.sqrt(3));
    const temperature = propagate(
      ([b = 0, s = 0, hubGrows = 0, shaftGrows = 0]) =>
        slipOnTemperature(b, s, clearance, hubGrows, { expansion: shaftGrows, celsius: cold }),
      [bore, shaft, grows('hub grows', hub), grows('shaft grows', inner)],
    );
    if (temperature.kind === 'refused') return temperature;
    const needed = temperature.value.value;
    const heatTo = needed + expanded(temperature.value, 0.95);
    const state = states.find((known) => known === values.texts.state);
    const limits = [
      ...(state === undefined ? [] : [hottest[state]]),
      ...(values.quantities['tempered-at'] === undefined ? [] : [values.quantities['tempered-at'].value]),
    ];
    const limit = Math.min(...limits);
    const colour = metalNamed(values.texts.hub) === 'steel' ? temperColour(heatTo) : undefined;
    const tooHot = limits.length > 0 && heatTo > limit;
    return answer({
      results: {
        'slips-on-at': result(temperature.value, '°C'),
        'heat-to': { value: Number(heatTo.toFixed(1)), unit: '°C' },
        ...(limits.length > 0 && { 'hottest-allowed': { value: limit, unit: '°C' } }),
        ...(limits.length > 0 && { allowed: { value: tooHot ? 'no' : 'yes', unit: '' } }),
        ...(colour !== undefined && { 'oxide-colour': { value: colour, unit: '' } }),
      },
      notes: [
        ...(needed <= 20 ? ['It slips on cold: this is no interference fit with that clearance.'] : []),
        ...(tooHot
          ? [
              `${formatFigure(heatTo, 0)} °C would soften the hub: cool the shaft too, slip on with less clearance, or press it on.`,
            ]
          : []),
        ...(limits.length === 0
          ? ['No limit was given: find how the hub was hardened before it is heated past 200 °C.']
          : []),
        ...(colour === undefined
          ? []
          : [
              'A colour is good to some 15 °C, on bright clean carbon steel warmed once; a thermometer goes before it.',
            ]),
        'Hot parts burn: gloves, a clear way to the shaft, a stop to push against, one movement. Never a flame on a hardened part.',
      ],
    });
  },
};
