/** @module How long the engine lasts: until the first of its parts goes, with the share of each in being that one. */
import { type Hours, hours } from '../quantity/brand.ts';
import { type Alike, firstToGo, hoursOn, survivalOfAll } from './first-to-go.ts';
import { countedOnShare, type Life, lasts, usualLifeOf } from './life.ts';
import type { Option } from './plan-model.ts';

export interface EngineLife {
  /** Nine in ten such engines last longer. */
  readonly countedOn: Hours;
  /** Half of them last longer. */
  readonly middle: Hours;
  /** Falls from 1, or from what the chance of a part past its limit leaves, to as good as 0. */
  readonly curve: readonly { readonly hours: number; readonly share: number }[];
  /** Probability that it goes before every other; likeliest first, together 1. */
  readonly first: readonly { readonly slot: string; readonly component: string; readonly share: number }[];
}

type Part = Pick<Option, 'slot' | 'component' | 'hours' | 'life'>;

const lifeOf = ({ life, hours: counted }: Part): Life => life ?? usualLifeOf({ life: hours(counted) });

/** Lives that several parts share are asked once. */
const alike = (parts: readonly Part[]): ReadonlyMap<string, Alike> =>
  new Map(
    [...Map.groupBy(parts, (part) => JSON.stringify(lifeOf(part)))].map(([key, same]) => {
      const life = same[0] && lifeOf(same[0]);
      return [key, { survival: (run) => (life ? lasts(life, run) : 1), count: same.length }];
    }),
  );

/** Probability that the engine lasts longer than so many hours with the options chosen for it. */
export const engineLasts = (parts: readonly Part[], run: number): number =>
  survivalOfAll([...alike(parts).values()])(run);

/**
 * The engine's life as that of the first of its parts to go.
 *
 * The parts' lives are taken as independent: survival is the product of theirs. Where lives go together, as those of
 * one engine do, the product is no more than the truth, so that the hours are rather too few.
 *
 * @param parts  the chosen options, at least one; one without a life is taken to have the usual spread about its hours
 * @returns hours counted on and in the middle, the curve of survival, the parts by their share in being first
 * @source  J. D. Esary, F. Proschan and D. W. Walkup, Association of random variables, with applications, Annals of
 *   Mathematical Statistics 38 (1967), from memory
 */
export const engineLife = (parts: readonly Part[]): EngineLife => {
  const lives = alike(parts);
  const all = [...lives.values()];
  const start = Math.max(1, Math.min(...parts.map((part) => part.hours)));
  const { curve, shares } = firstToGo(all, start);
  const shareBy = new Map([...lives.keys()].map((key, index) => [key, shares[index] ?? 0]));
  const outlasted = (share: number): Hours => hours(Math.floor(hoursOn(curve, share) + 1e-3));
  return {
    countedOn: outlasted(countedOnShare),
    middle: outlasted(0.5),
    curve,
    first: parts
      .map((part) => ({
        slot: part.slot,
        component: part.component,
        share: shareBy.get(JSON.stringify(lifeOf(part))) ?? 0,
      }))
      .toSorted((a, b) => b.share - a.share),
  };
};

/** Shares by component, likeliest first: what the engine will come in for again. */
export const firstByComponent = (
  first: EngineLife['first'],
): readonly { readonly component: string; readonly places: number; readonly share: number }[] =>
  [...Map.groupBy(first, ({ component }) => component)]
    .map(([component, parts]) => ({
      component,
      places: parts.length,
      share: parts.reduce((sum, { share }) => sum + share, 0),
    }))
    .toSorted((a, b) => b.share - a.share);
