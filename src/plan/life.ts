/** @module How long a part lasts: a distribution of hours, as plain data, and the hours that a plan may promise of it. */
import type { Component } from '../engine/engine-type.ts';
import { type Hours, hours } from '../quantity/brand.ts';
import { hoursAt, longest } from '../quantity/falls-to.ts';
import { normalQuantile } from '../quantity/normal.ts';
import { studentCumulative, studentQuantile } from '../quantity/student.ts';
import { type WearSoFar, wearLasts } from '../reckon/remaining-hours.ts';

/** Of a new or machined one: the logarithm of the hours is normal, or Student's where it rests on few engines. */
export interface UsualLife {
  readonly kind: 'usual';
  /** Half last longer. */
  readonly middle: Hours;
  /** Standard deviation of the logarithm: about the share by which lives vary. */
  readonly spread: number;
  /** Degrees of freedom behind the spread; left out where it is taken as known. */
  readonly freedom?: number;
  readonly restsOn: "the type's usual life" | "this workshop's history";
}

/** Of a used part: its own wear carried on to the limit. */
interface WornLife {
  readonly kind: 'worn';
  readonly wear: WearSoFar;
  readonly restsOn: "this engine's wear";
  /** What is worn, in words: `main bearing clearance at main.2`. */
  readonly of: string;
}

/** Of a used part whose hours are not known: what its wear has left of a usual life. */
interface RestOfUsual {
  readonly kind: 'rest of usual';
  readonly share: number;
  readonly usual: UsualLife;
}

/** No likelier to last than any of these: what wears in one part wears together. */
interface ShortestLife {
  readonly kind: 'shortest';
  readonly of: readonly Life[];
}

export type Life = UsualLife | WornLife | RestOfUsual | ShortestLife;

/**
 * Share of such parts that last longer than what is counted on.
 *
 * source: ISO 281 counts on the life that 90 % of bearings attain; that an owner is told it of an engine's parts is
 * common practice, no source
 */
export const countedOnShare = 0.9;
/** Spread of lives and scatter of wear where nobody states any: common practice, no source. */
export const usualSpread = 0.25;

/** Probability of lasting longer than so many hours, 0 and up. */
export const lasts = (life: Life, run: number): number => {
  switch (life.kind) {
    case 'usual':
      return run <= 0
        ? 1
        : studentCumulative(Math.log(life.middle / run) / life.spread, life.freedom ?? Infinity);
    case 'worn':
      return wearLasts(life.wear, run) ?? 1;
    case 'rest of usual':
      return life.share <= 0 ? 0 : lasts(life.usual, run / life.share);
    case 'shortest':
      return Math.min(1, ...life.of.map((each) => lasts(each, run)));
    default:
      return life satisfies never;
  }
};

/** Hours that a share of such parts outlasts. */
export const hoursLasting = (life: Life, share: number): Hours => {
  switch (life.kind) {
    case 'usual':
      return hours(life.middle * Math.exp(-life.spread * studentQuantile(share, life.freedom ?? Infinity)));
    case 'worn': {
      const { size, limit, made, run } = life.wear;
      const worn = Math.max(1e-9, Math.abs(size - (made.least + made.greatest) / 2));
      return hours(hoursAt((h) => lasts(life, h), share, Math.max(1, (run * Math.abs(limit - size)) / worn)));
    }
    case 'rest of usual':
      return hours(Math.max(0, life.share) * hoursLasting(life.usual, share));
    case 'shortest':
      return hours(Math.min(longest, ...life.of.map((each) => hoursLasting(each, share))));
    default:
      return life satisfies never;
  }
};

/** One life no longer than any of several, without the same usual life over and over. */
export const shortestOf = (lives: readonly Life[]): Life => {
  const flat = lives.flatMap((life) => (life.kind === 'shortest' ? life.of : [life]));
  const worn = flat.filter(({ kind }) => kind !== 'usual');
  const usual = flat.find(({ kind }) => kind === 'usual');
  return { kind: 'shortest', of: usual === undefined ? worn : [usual, ...worn] };
};

/** Whole hours of those that nine in ten outlast, a thousandth of room left so that 6000 h do not come to 5999. */
export const promised = (lasting: Hours): Hours => hours(Math.floor(lasting + 1e-3));

/** Whole hours that a plan may promise: nine in ten such parts last longer. */
export const countedOn = (life: Life): Hours => promised(hoursLasting(life, countedOnShare));

/** A usual life from the hours to count on, and those that half outlast where they are known. */
export const usualLifeOf = ({ life, lifeMiddle }: Pick<Component, 'life' | 'lifeMiddle'>): UsualLife => {
  const spread =
    lifeMiddle === undefined ? usualSpread : Math.log(lifeMiddle / life) / normalQuantile(countedOnShare);
  return {
    kind: 'usual',
    middle: lifeMiddle ?? hours(life * Math.exp(spread * normalQuantile(countedOnShare))),
    spread,
    restsOn: "the type's usual life",
  };
};
