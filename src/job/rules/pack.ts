/** @module May the shims be counted so, and may this pack go under the pump? */

import { chooseName } from '../../engine/nearest-name.ts';
import type { PumpTiming } from '../../engine/pump-timing.ts';
import { badFigure, type Trouble, trouble } from '../../journal/trouble.ts';
import { lengthOf, type Typed, typedText } from '../../quantity/typed.ts';
import { looseShims, notInBox } from '../box.ts';
import type { RequestOf } from '../command.ts';
import type { OpenJob } from '../job.ts';

const noPumps = (job: OpenJob): Trouble =>
  job.sheet.engine.pumpTiming === undefined
    ? trouble(
        `${job.sheet.engine.title} has no pumps that are timed by shims`,
        'shims',
        'leave shims out of this job',
      )
    : undefined;

export const countShimsTrouble = (job: OpenJob, { shims }: RequestOf<'count shims'>): Trouble => {
  const none = noPumps(job);
  if (none !== undefined) return none;
  const seen = new Set<number>();
  for (const { thickness } of shims) {
    const where = `shims of ${typedText(thickness)}`;
    const bad = badFigure(thickness, 'length', where, { above: 0 });
    if (bad !== undefined) return bad;
    const length = lengthOf(thickness);
    if (length.kind === 'refused') continue;
    if (seen.has(length.value))
      return trouble('this thickness is counted twice', where, 'add the two counts');
    seen.add(length.value);
  }
  return undefined;
};

const pumpsOf = (job: OpenJob, timing: PumpTiming): readonly string[] =>
  [...job.sheet.engine.places.values()].filter(({ kind }) => kind === timing.at).map(({ id }) => id);

const outsideRange = (timing: PumpTiming, shims: readonly Typed[], where: string): Trouble => {
  const sum = shims.reduce((total, shim) => {
    const length = lengthOf(shim);
    return length.kind === 'answer' ? total + length.value : total;
  }, 0);
  const { least, greatest } = timing.range;
  // A sum of decimals may stray by a rounding of the machine; shims come in hundredths.
  const stray = 1e-6;
  if ((least === undefined || sum > least - stray) && (greatest === undefined || sum < greatest + stray))
    return undefined;
  const from = least === undefined ? '' : `from ${least} mm `;
  const to = greatest === undefined ? '' : `to ${greatest} mm`;
  return trouble(
    `a pack of ${Number(sum.toFixed(4))} mm is outside what the pump is made to take`,
    where,
    `fit a pack ${from}${to}; if the timing then is wrong, look for a worn cam or tappet, or wrong parts`,
  );
};

/** Timing that was signed as proved rests on the packs as they are. */
const provedAlready = ({ sheet, done }: OpenJob, { check }: PumpTiming): Trouble => {
  if (check === undefined) return undefined;
  const signed = [...sheet.engine.operations.values()].find(
    ({ name, needs }) => needs.includes(check.of) && done.has(name),
  );
  return signed === undefined
    ? undefined
    : trouble(
        `“${signed.title}” is signed with the packs as they are`,
        'shim pack',
        'open that operation again, with the reason, and fit the pack then',
      );
};

export const fitPackTrouble = (job: OpenJob, { place, shims }: RequestOf<'fit pack'>): Trouble => {
  const timing = job.sheet.engine.pumpTiming;
  if (timing === undefined) return noPumps(job);
  const pumps = pumpsOf(job, timing);
  if (!pumps.includes(place))
    return trouble(`no pump sits at “${place}”`, 'shim pack', chooseName(place, pumps));
  const where = `shim pack, ${job.sheet.engine.places.get(place)?.title ?? place}`;
  const proved = provedAlready(job, timing);
  if (proved !== undefined) return proved;
  for (const shim of shims) {
    const bad = badFigure(shim, 'length', where, { above: 0 });
    if (bad !== undefined) return bad;
  }
  if (shims.length > timing.mostShims)
    return trouble(
      `${shims.length} shims in one pack are too many`,
      where,
      `use ${timing.mostShims} at most, thicker ones`,
    );
  const lacking = notInBox(looseShims(job, [place]), shims);
  if (lacking.length > 0)
    return trouble(
      `the box does not hold ${lacking.map(typedText).join(', ')}`,
      where,
      'choose from the shims in the box, or count the box again',
    );
  return outsideRange(timing, shims, where);
};
