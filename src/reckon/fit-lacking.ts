/** @module Why the parts in stock do not serve every place, and what size is lacking. */
import { formatFigure } from '../quantity/figure.ts';
import { combine, expanded } from '../quantity/uncertain.ts';
import type { FitPart, FitPlace, FitQuestion } from './fit-question.ts';

/** What would serve a place: sizes as measured, mm; of two parts their sum. None where the room is not known well enough. */
interface Wanted {
  readonly place: string;
  readonly least?: number;
  readonly greatest?: number;
}

export interface Lacking {
  readonly kind: 'lacking';
  /** Places that cannot all be served. */
  readonly places: readonly string[];
  /** The parts that any of them may take, fewer than the places take; unknown where two parts go to a place. */
  readonly parts?: readonly string[];
  /** What would serve each of the places. */
  readonly wanted: readonly Wanted[];
  readonly says: string;
  /** Whether it is certain; false only where the bound on effort was reached. */
  readonly proved: boolean;
}

/** A clearance with the part that comes nearest is as well known as one with the part that is lacking. */
const wantedAt = ({ parts, goes, takes }: FitQuestion, { name, room, limits }: FitPlace): Wanted => {
  const middle = (limits.least + limits.greatest) / 2;
  const ideal = goes === 'inside' ? room.value - middle : room.value + middle;
  const each = ideal / takes.length;
  const nearest = parts.reduce<FitPart | undefined>(
    (best, part) =>
      best && Math.abs(best.size.value - each) <= Math.abs(part.size.value - each) ? best : part,
    undefined,
  );
  const doubt = combine([[1, room], ...(nearest ? takes.map(() => [-1, nearest.size] as const) : [])]);
  const half = (limits.greatest - limits.least) / 2 - expanded(doubt, 0.95);
  return half > 0 ? { place: name, least: ideal - half, greatest: ideal + half } : { place: name };
};

const figures = (wanted: Wanted): string =>
  wanted.least === undefined || wanted.greatest === undefined
    ? `none at ${wanted.place}, where sizes are not known well enough to prove any clearance within its limits`
    : `${formatFigure(wanted.least, 3)} to ${formatFigure(wanted.greatest, 3)} mm for ${wanted.place}`;

const many = (count: number, one: string, more: string): string => `${count} ${count === 1 ? one : more}`;

const longest = 8;
const listed = (names: readonly string[]): string =>
  names.length <= longest
    ? names.join(', ')
    : `${names.slice(0, longest).join(', ')} and ${names.length - longest} more`;

/**
 * What is lacking at places that cannot all be served.
 *
 * @internal
 */
export const lackingAt = (
  question: FitQuestion,
  places: readonly FitPlace[],
  parts: readonly FitPart[] | undefined,
  proved = true,
): Lacking => {
  const wanted = places.map((place) => wantedAt(question, place));
  const names = places.map(({ name }) => name);
  const who =
    places.length === 1
      ? parts === undefined || parts.length > 0
        ? `no two parts fit ${names.join()}`
        : `no part fits ${names.join()}`
      : parts === undefined
        ? `${listed(names)} cannot all have two parts that fit`
        : `${listed(names)} are ${many(places.length, 'place', 'places')}, and ${many(parts.length, 'part fits', 'parts fit')} any of them${parts.length > 0 ? ` (${listed(parts.map(({ name }) => name))})` : ''}`;
  const what = question.takes.length === 2 ? 'two parts that add up to' : 'a part of';
  return {
    kind: 'lacking',
    places: names,
    ...(parts && { parts: parts.map(({ name }) => name) }),
    wanted,
    says: `${proved ? '' : 'as far as was searched, '}${who}; what would serve is ${what} ${listed(wanted.map(figures))}`,
    proved,
  };
};
