/** @module The box of shims: what is loose in it now, and what there is in all, fitted ones included. */
import type { Millimetres } from '../quantity/brand.ts';
import { lengthOf, type Typed } from '../quantity/typed.ts';
import type { BoxShim } from '../reckon/shim-pack.ts';
import type { FittedPack, OpenJob } from './job.ts';

/** Two shims are of one thickness when they agree to a hundredth of a micrometre, inch or millimetre. */
const thicknessKey = (thickness: Millimetres): number => Math.round(thickness * 1e5);

interface Tally {
  readonly thickness: Millimetres;
  count: number;
}

const addTo = (tally: Map<number, Tally>, typed: Typed, count: number): void => {
  const length = lengthOf(typed);
  if (length.kind === 'refused') return;
  const key = thicknessKey(length.value);
  const line = tally.get(key);
  if (line === undefined) tally.set(key, { thickness: length.value, count });
  else line.count += count;
};

const addPacks = (tally: Map<number, Tally>, packs: ReadonlyMap<string, FittedPack>, sign: 1 | -1): void => {
  for (const { shims } of packs.values()) for (const shim of shims) addTo(tally, shim, sign);
};

/** Thickest first, none of which there are none. */
const listed = (tally: Map<number, Tally>): readonly BoxShim[] =>
  [...tally.values()].filter(({ count }) => count > 0).sort((a, b) => b.thickness - a.thickness);

const everyShim = (job: OpenJob): Map<number, Tally> => {
  const tally = new Map<number, Tally>();
  for (const { thickness, count } of job.shims) addTo(tally, thickness, count);
  addPacks(tally, job.packsAtCount, 1);
  return tally;
};

/** All shims for this engine, those under its pumps included: what the packs of all pumps can be chosen from. */
export const shimsInAll = (job: OpenJob): readonly BoxShim[] => listed(everyShim(job));

/** Shims in the box now: as counted, plus those that came out of a pump since, less those that went in. */
export const looseShims = (job: OpenJob, leaving: readonly string[] = []): readonly BoxShim[] => {
  const tally = everyShim(job);
  const fitted = new Map([...job.packs].filter(([place]) => !leaving.includes(place)));
  addPacks(tally, fitted, -1);
  return listed(tally);
};

/** The shims of a pack that the box does not hold. */
export const notInBox = (box: readonly BoxShim[], pack: readonly Typed[]): readonly Typed[] => {
  const left = new Map(box.map(({ thickness, count }) => [thicknessKey(thickness), count]));
  return pack.filter((shim) => {
    const length = lengthOf(shim);
    if (length.kind === 'refused') return true;
    const key = thicknessKey(length.value);
    const count = left.get(key) ?? 0;
    left.set(key, count - 1);
    return count < 1;
  });
};
