/** @module The record's shim packs: needed, as found, chosen and fitted under each pump, with errors in mm and degrees. */
import type { OpenJob } from '../../job/job.ts';
import { type PackAgainstNeed, type Pump, type PumpPacks, pumpPacksOf } from '../../job/pumps.ts';
import { formatFigure } from '../../quantity/figure.ts';
import { refusalText } from '../../quantity/refusal.ts';
import { errorText, lengthText, timingText } from '../figure-text.ts';
import type { Line, RecordRow, RecordSection } from '../record-model.ts';

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
    packText(pump.found),
    pump.chosen === undefined ? '' : `${stackText(pump.chosen.shims)} = ${packText(pump.chosen)}`,
    pump.fitted === undefined ? 'not fitted' : `${stackText(pump.fitted.shims)} = ${packText(pump.fitted)}`,
  ],
  ...(pump.fitted?.withinTolerance === true ? {} : { marked: true as const }),
});

const setText = ({ set }: PumpPacks): string => {
  if (set.kind === 'refused') return `Packs not chosen: ${refusalText(set.refusal)}`;
  const { greatestError, spread, shimsUsed } = set.value;
  return `Chosen for all pumps together: greatest error ${lengthText(greatestError)}, cylinder to cylinder ${lengthText(spread)}, ${shimsUsed} shims.`;
};

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
            setText(packs),
          ],
    table: {
      heads: ['Pump', 'Depth', 'Needed', 'As found', 'Chosen', 'Fitted'],
      rows: packs.pumps.map(rowOf),
    },
    derived: true,
  };
};

/** Pumps that run on a pack other than the one needed, or on none that is noted. */
export const packDeviations = (job: OpenJob): readonly Line[] =>
  pumpPacksOf(job).pumps.flatMap((pump) => {
    if (pump.fitted === undefined) return [{ name: pump.title, says: 'no shim pack is noted as fitted' }];
    if (pump.fitted.withinTolerance === true) return [];
    return [{ name: pump.title, says: `the pack fitted is beyond the tolerance: ${packText(pump.fitted)}` }];
  });
