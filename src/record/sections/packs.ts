/** @module The record's shim packs: needed, as found, chosen and fitted under each pump, with errors in mm and degrees. */
import { camRate } from '../../engine/cam-law.ts';
import type { PumpTiming } from '../../engine/pump-timing.ts';
import type { OpenJob } from '../../job/job.ts';
import type { PackAgainstNeed } from '../../job/pack-against.ts';
import type { Beyond } from '../../job/pack-beyond.ts';
import { type Pump, type PumpPacks, pumpPacksOf } from '../../job/pumps.ts';
import { type Radians, toDegrees } from '../../quantity/brand.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { refusalText } from '../../quantity/refusal.ts';
import { errorText, lengthText, timingText } from '../figure-text.ts';
import type { Line, RecordRow, RecordSection } from '../record-model.ts';
import { checkText } from './spill-check.ts';

const stackText = (shims: readonly number[]): string =>
  shims.map((shim) => formatFigure(shim, 3)).join(' + ');

const packText = (pack: PackAgainstNeed | undefined): string => {
  if (pack === undefined) return '';
  const { thickness, error, timingError } = pack;
  if (error === undefined || timingError === undefined) return lengthText(thickness);
  return `${lengthText(thickness)}: ${errorText(error)}, ${timingText(timingError)}`;
};

const rowOf = (pump: Pump): RecordRow => ({
  of: pump.place,
  cells: [
    pump.title,
    pump.depth === undefined ? '' : lengthText(pump.depth),
    pump.needed === undefined ? '' : lengthText(pump.needed),
    pump.lost === undefined ? packText(pump.found) : `not measured: ${pump.lost.says} (${pump.lost.by})`,
    pump.chosen === undefined ? '' : `${stackText(pump.chosen.shims)} = ${packText(pump.chosen)}`,
    pump.fitted === undefined ? 'not fitted' : `${stackText(pump.fitted.shims)} = ${packText(pump.fitted)}`,
  ],
  ...(pump.fitted?.withinTolerance === true && pump.beyond === undefined ? {} : { marked: true as const }),
});

const setText = ({ set }: PumpPacks): string => {
  if (set.kind === 'refused') return `Packs not chosen: ${refusalText(set.refusal)}`;
  const { greatestError, spread, shimsUsed } = set.value;
  return `Chosen for all pumps together: greatest error ${lengthText(greatestError)}, cylinder to cylinder ${lengthText(spread)}, ${shimsUsed} shims.`;
};

/** Where the rate comes from, with both figures where the manual gives it and the cam as well. */
const rateText = ({ rate, rateGiven, cam }: PumpTiming): string => {
  const text = (angle: Radians) => `${formatFigure(toDegrees(angle), 2)}° of crank a mm`;
  const byCam = cam && camRate(cam);
  if (byCam?.kind !== 'answer') return text(rate);
  const of = cam?.crankPerAngle === 2 ? ', a degree of the camshaft being two of the crank' : '';
  return rateGiven === undefined
    ? `${text(rate)} by the lift of the cam${of}`
    : `${text(rateGiven)} as given, ${text(byCam.value.rate)} by the lift of the cam${of}`;
};

/** A pack needed that the pump is not made to take, with where to look. */
const beyondText = (title: string, { says, lookAt }: Beyond): string =>
  `${title} ${says}. Look at: ${lookAt.join('; ')}.`;

export const packSection = (job: OpenJob): RecordSection => {
  const packs = pumpPacksOf(job);
  const { timing } = packs;
  return {
    name: 'shim packs',
    title: 'Shim packs under the pumps',
    says:
      timing === undefined
        ? ['No pump of this engine is timed by shims.']
        : [
            `Needed is ${timing.packIs === 'depth less datum' ? `the depth less ${lengthText(timing.datum)}` : `${lengthText(timing.datum)} less the depth`}. Shims sit ${timing.shimsSit}; adding shims ${timing.addingShims}. A fitted pack may be ${lengthText(timing.tolerance)} off.`,
            `Rate: ${rateText(timing)}.`,
            setText(packs),
            ...(packs.set.kind === 'answer' ? packs.set.value.notes.map((note) => `${note}.`) : []),
            ...packs.pumps.flatMap(({ title, beyond }) =>
              beyond === undefined ? [] : [beyondText(title, beyond)],
            ),
          ],
    table: {
      heads: ['Pump', 'Depth', 'Needed', 'As found', 'Chosen', 'Fitted'],
      rows: packs.pumps.map(rowOf),
    },
    derived: true,
  };
};

/** Pumps that run on a pack other than the one needed, or on none that is noted, or whose timing is not proved. */
export const packDeviations = (job: OpenJob): readonly Line[] => {
  const { pumps, checked, timing } = pumpPacksOf(job);
  return [
    ...pumps.flatMap(({ title, fitted, beyond, check, lost }) => [
      ...(fitted === undefined ? [{ name: title, says: 'no shim pack is noted as fitted' }] : []),
      ...(fitted !== undefined && fitted.withinTolerance !== true
        ? [
            {
              name: title,
              says: `the pack fitted is beyond the tolerance${check?.verdict === 'within' ? ' by its depth, and right by the second check' : ''}: ${packText(fitted)}`,
            },
          ]
        : []),
      ...(beyond === undefined ? [] : [{ name: title, says: beyond.says }]),
      ...(lost === undefined ? [] : [{ name: title, says: `pack not measured as found: ${lost.says}` }]),
      ...(timing?.check !== undefined && fitted !== undefined && check?.verdict !== 'within'
        ? [
            {
              name: title,
              says:
                check === undefined
                  ? 'its timing was not checked again'
                  : `timing ${check.verdict}: ${checkText(check)}`,
            },
          ]
        : []),
    ]),
    ...(checked?.notes ?? []).map((says) => ({ name: 'Timing of the pumps', says })),
  ];
};
