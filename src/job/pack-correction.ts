/** @module The packs that would put right the pumps whose second check is off. */
import type { PumpTiming } from '../engine/pump-timing.ts';
import { mm, type Radians, radians, toDegrees } from '../quantity/brand.ts';
import { formatFigure } from '../quantity/figure.ts';
import { type Answer, refuse } from '../quantity/refusal.ts';
import { chooseShims, type PackSet } from '../reckon/shim-pack.ts';
import { looseShims } from './box.ts';
import type { OpenJob } from './job.ts';
import { earlierPerShim } from './pack-against.ts';
import type { PumpCheck } from './spill-check.ts';

export interface CheckedPump {
  readonly place: string;
  readonly title: string;
  readonly thickness: number;
  readonly check: PumpCheck;
}

/** What the second checks of all pumps come to. */
export interface Checked {
  readonly read: number;
  readonly of: number;
  /** Greatest less least error, as soon as two pumps are read. */
  readonly spread?: Radians;
  readonly spreadTooWide: boolean;
  /** Pumps that are to get another pack, by place. */
  readonly off: readonly string[];
  /** Packs for those; undefined where none is off. */
  readonly putRight?: Answer<PackSet>;
  /** What is to be known, in words. */
  readonly notes: readonly string[];
}

const rounding = 1e-9;

/** Pumps outside their limits or too near them; of pumps that are too far apart the one that is furthest off. */
const offOf = (pumps: readonly CheckedPump[], spreadTooWide: boolean): readonly CheckedPump[] => {
  const off = pumps.filter(({ check }) => check.verdict === 'outside' || check.verdict === 'unsure');
  if (off.length > 0 || !spreadTooWide) return off;
  return pumps.toSorted((a, b) => Math.abs(b.check.error) - Math.abs(a.check.error)).slice(0, 1);
};

/**
 * Another pack for each pump that is off: what is fitted, less its error over what a millimetre brings earlier.
 *
 * The shims are those in the box and those that come out of these pumps; the other pumps keep theirs.
 */
const putRight = (job: OpenJob, timing: PumpTiming, off: readonly CheckedPump[]): Answer<PackSet> => {
  const doubtful = off.find(({ check }) => check.moved?.went === 'the wrong way');
  if (doubtful)
    return refuse(
      `the last change went the wrong way: ${doubtful.check.moved?.says ?? ''}`,
      doubtful.title,
      'be sure of the sign first; then fit the pack by hand and read the spill again',
    );
  return chooseShims({
    needs: off.map(({ place, thickness, check }) => ({
      pump: place,
      needed: mm(Number((thickness - check.error / earlierPerShim(timing)).toFixed(5))),
    })),
    box: looseShims(
      job,
      off.map(({ place }) => place),
    ),
    mostShims: timing.mostShims,
    rate: timing.rate,
    addingShims: timing.addingShims,
  });
};

/**
 * The second checks of the pumps together.
 *
 * @param pumps  those that were read since their packs were fitted
 * @param of     how many pumps there are
 */
export const checkedOf = (
  job: OpenJob,
  timing: PumpTiming,
  pumps: readonly CheckedPump[],
  of: number,
): Checked => {
  const errors = pumps.map(({ check }) => check.error);
  const spread = errors.length < 2 ? undefined : radians(Math.max(...errors) - Math.min(...errors));
  const most = timing.check?.spread;
  const spreadTooWide = spread !== undefined && most !== undefined && spread > most + rounding;
  const off = offOf(pumps, spreadTooWide);
  const degrees = (angle: number) => `${formatFigure(toDegrees(radians(angle)), 2)}°`;
  return {
    read: pumps.length,
    of,
    ...(spread !== undefined && { spread }),
    spreadTooWide,
    off: off.map(({ place }) => place),
    ...(off.length > 0 && { putRight: putRight(job, timing, off) }),
    notes: [
      ...(spreadTooWide
        ? [`the pumps are ${degrees(spread ?? 0)} apart, and ${degrees(most ?? 0)} are allowed`]
        : []),
      ...pumps.flatMap(({ title, check: { moved } }) =>
        moved === undefined || moved.went === 'as it should' ? [] : [`${title}: ${moved.says}`],
      ),
    ],
  };
};
