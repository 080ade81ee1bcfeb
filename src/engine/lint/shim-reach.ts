/** @module Rule: with the shims made for the pump every pack in its range can be put together. */
import type { EngineType } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import type { PumpTiming } from '../pump-timing.ts';
import { millimetres } from './every-limits.ts';

/** Thicknesses are counted in tenths of a micrometre, so that sums are whole numbers. */
const grid = 10_000;
/** A pack thicker than this, mm, is no shim pack; the bound keeps the sum short. */
const thickest = 20;

const counted = (thickness: number): number => Math.round(thickness * grid);

/** Thicknesses up to a greatest one that a number of shims can make, in tenths of a micrometre, rising. */
const makeable = ({ shims, mostShims }: PumpTiming, greatest: number): readonly number[] => {
  const fewest = new Uint8Array(greatest + 1).fill(255);
  fewest[0] = 0;
  const sums: number[] = [0];
  for (let sum = 1; sum <= greatest; sum += 1) {
    for (const shim of shims) {
      const before = fewest[sum - counted(shim)] ?? 255;
      if (before < mostShims && before + 1 < (fewest[sum] ?? 255)) fewest[sum] = before + 1;
    }
    if ((fewest[sum] ?? 255) <= mostShims) sums.push(sum);
  }
  return sums;
};

/** The first stretch of the range further than the tolerance from every pack. */
const firstGap = (sums: readonly number[], from: number, to: number, near: number) => {
  let covered = from;
  for (const sum of sums) {
    if (sum + near < covered) continue;
    if (sum - near > covered) break;
    covered = sum + near;
  }
  if (covered >= to) return undefined;
  const next = sums.find((sum) => sum - near > covered);
  return { from: covered, to: Math.min(to, next === undefined ? to : next - near) };
};

export const shimReach = ({ pumpTiming }: EngineType): readonly Finding[] => {
  if (pumpTiming === undefined) return [];
  const { least, greatest } = pumpTiming.range;
  if (least === undefined || greatest === undefined) {
    const remedy = 'give the thinnest and the thickest pack that the pumps are made to take';
    return [wrong(['pump-timing', 'range'], 'the range of packs has an open end', remedy)];
  }
  if (least < 0 || least > greatest || greatest > thickest) {
    const what = `packs from ${millimetres(least)} to ${millimetres(greatest)} cannot be right`;
    return [wrong(['pump-timing', 'range'], what, 'compare the range with the manual')];
  }
  const bad = pumpTiming.shims.findIndex((shim) => counted(shim) < 1 || shim > thickest);
  if (bad !== -1) {
    return [wrong(['pump-timing', 'shims', bad], 'no shim is that thick', 'compare it with the parts list')];
  }
  const near = counted(Math.min(Math.max(pumpTiming.tolerance, 0), thickest));
  const sums = makeable(pumpTiming, counted(greatest) + near);
  const gap = firstGap(sums, counted(least), counted(greatest), near);
  if (gap === undefined) return [];
  return [
    wrong(
      ['pump-timing', 'shims'],
      `no pack of ${pumpTiming.mostShims} shims or fewer comes within ${millimetres(pumpTiming.tolerance)} of the thicknesses between ${millimetres(gap.from / grid)} and ${millimetres(gap.to / grid)}`,
      'compare shims, most shims, tolerance and range with the manual',
    ),
  ];
};
