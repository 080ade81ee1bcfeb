/** @module The second check of a fitted pump: how early or late it delivers, and whether its last change went the way it should. */
import type { PumpTiming, TimingCheck } from '../engine/pump-timing.ts';
import { sizeOfReading } from '../measure/cell-size.ts';
import { judge } from '../measure/judge.ts';
import type { Verdict } from '../measure/verdict-model.ts';
import { type Millimetres, mm, type Radians, radians, toDegrees } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';
import { lengthOf, type Typed } from '../quantity/typed.ts';
import { standardUncertainty } from '../quantity/uncertain.ts';
import type { OpenJob, TriedPack } from './job.ts';
import { earlierPerShim } from './pack-against.ts';

/** What a change of pack did, against what it should have done. */
export interface Moved {
  /** Thicker is above 0. */
  readonly shims: Millimetres;
  /** Crank angle, earlier is above 0. */
  readonly expected: Radians;
  readonly seen: Radians;
  readonly went: 'as it should' | 'the wrong way' | 'nowhere' | 'too far' | 'not far enough';
  readonly says: string;
}

export interface PumpCheck {
  readonly verdict: Verdict;
  /** Crank angle; positive is early. */
  readonly error: Radians;
  /** Half the width of the 95 % interval. */
  readonly expanded: Radians;
  readonly repeats: number;
  readonly moved?: Moved;
}

/** A reading of the check, or the spread of one, as crank angle. */
const asAngle = ({ rim }: TimingCheck, amount: number): number => (rim === undefined ? amount : amount / rim);

const early = (check: TimingCheck, reading: number): number =>
  (check.largerIs === 'earlier' ? 1 : -1) * asAngle(check, reading - check.nominal);

export const thicknessOf = (shims: readonly Typed[]): Millimetres =>
  mm(
    shims.reduce((sum, shim) => {
      const length = lengthOf(shim);
      return length.kind === 'answer' ? sum + length.value : sum;
    }, 0),
  );

/** The mean of what was read with a pack that is out again, and its spread. */
const readThen = (job: OpenJob, check: TimingCheck, { checks }: TriedPack) => {
  const sizes = checks.flatMap((reading) => sizeOfReading(job.sheet, reading) ?? []);
  if (sizes.length === 0) return undefined;
  const mean = sizes.reduce((sum, { value }) => sum + value, 0) / sizes.length;
  const expanded = 2 * Math.max(...sizes.map(standardUncertainty));
  return { error: early(check, mean), expanded: asAngle(check, expanded) };
};

const angleText = (angle: number): string => `${formatFigure(Math.abs(toDegrees(radians(angle))), 2)}°`;
const wayText = (angle: number): string => `${angleText(angle)} ${angle < 0 ? 'later' : 'earlier'}`;

const wentOf = (expected: number, seen: number, noise: number): Moved['went'] => {
  if (seen * expected < 0 && Math.abs(seen) > noise) return 'the wrong way';
  if (Math.abs(seen) <= noise && Math.abs(expected) > 2 * noise) return 'nowhere';
  if (Math.abs(seen - expected) <= noise || Math.abs(seen) <= noise) return 'as it should';
  if (seen / expected > 2) return 'too far';
  return seen / expected < 0.5 ? 'not far enough' : 'as it should';
};

const advice: Readonly<Record<Moved['went'], string>> = {
  'as it should': '',
  'the wrong way':
    'the sign of these shims is in doubt, or the spill was taken on the wrong stroke: look where they sit, and compare with the manual before another pack is fitted',
  nowhere:
    'look whether the pump was bolted down on its pack, the delivery valve was out and the crank approached in running direction',
  'too far': 'the rate is in doubt: compare it with the manual, and read the spill again',
  'not far enough': 'the rate is in doubt: compare it with the manual, and read the spill again',
};

const movedOf = (
  job: OpenJob,
  timing: PumpTiming,
  place: string,
  now: { readonly error: number; readonly expanded: number },
): Moved | undefined => {
  const before = job.packsTried.get(place)?.at(-1);
  const fitted = job.packs.get(place);
  const then = before && timing.check && readThen(job, timing.check, before);
  if (before === undefined || fitted === undefined || then === undefined) return undefined;
  const shims = thicknessOf(fitted.shims) - thicknessOf(before.shims);
  const expected = earlierPerShim(timing) * shims;
  const seen = now.error - then.error;
  const went = wentOf(expected, seen, Math.hypot(now.expanded, then.expanded));
  const made = `the pack was made ${formatFigure(Math.abs(shims), 3)} mm ${shims < 0 ? 'thinner' : 'thicker'}, which makes the pump ${wayText(expected)}`;
  return {
    shims: mm(shims),
    expected: radians(expected),
    seen: radians(seen),
    went,
    says:
      went === 'as it should'
        ? `${made}; it came ${wayText(seen)}`
        : `${made}, and it came ${wayText(seen)}: ${advice[went]}`,
  };
};

/**
 * The second check of one pump, from what was read since its pack was fitted.
 *
 * @returns crank angles in radians, positive early; undefined where nothing is fitted, or nothing was read since
 * @source  the nominal figure and the rate are the manual's; the mean of repeats by JCGM 100
 */
export const spillCheck = (job: OpenJob, timing: PumpTiming, place: string): PumpCheck | undefined => {
  const { check } = timing;
  if (check === undefined || !job.packs.has(place)) return undefined;
  const { value, expanded = 0, verdict, cells } = judge(job.sheet, check.of, place);
  if (value === undefined) return undefined;
  const now = { error: early(check, value.value), expanded: asAngle(check, expanded) };
  const moved = movedOf(job, timing, place, now);
  return {
    verdict,
    error: radians(now.error + 0),
    expanded: radians(now.expanded),
    repeats: cells[0]?.repeats ?? 1,
    ...(moved && { moved }),
  };
};
