/** @module Selective fitting: measured parts from stock, each to the place where its clearance lies nearest the middle. */
import { liesIn, weigh } from '../measure/weigh.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { combine, expanded, type Uncertain } from '../quantity/uncertain.ts';
import { evenAssignment } from './even-assignment.ts';
import { type Lacking, lackingAt } from './fit-lacking.ts';
import { pairsForPlaces } from './fit-pairs.ts';
import type { FitPart, FitPlace, FitQuestion } from './fit-question.ts';
import { type SizeOfParts, sizesOf } from './fit-sizes.ts';

export interface Fitted {
  readonly place: string;
  /** Names of the parts, in the order of the halves that the place takes. */
  readonly parts: readonly string[];
  readonly clearance: Uncertain;
  /** Half the width of the 95 % interval of the clearance, mm. */
  readonly expanded: number;
  /** From the middle of the limits, mm; above 0 is wide. */
  readonly off: number;
}

export interface FitSet {
  readonly kind: 'fitted';
  /** In the order of the places. */
  readonly fits: readonly Fitted[];
  /** Furthest from the middle of its limits, mm. */
  readonly greatestOff: number;
  readonly sumOff: number;
  /** Whether it is certain that no other set is better; false only where the bound on effort was reached. */
  readonly proved: boolean;
}

const mostPlaces = 500;
const mostParts = 5000;
/** Some seconds at the worst. */
const usualEffort = 30_000_000;
/** Costs are whole nanometres, so that sums and ties are exact. */
const perMillimetre = 1e6;

/** Sums of decimals stray by a rounding of the machine: a clearance on a limit lies within it. */
const settled = (value: number): number => Math.round(value * 1e9) / 1e9;

/**
 * Clearance of parts at a place, to the picometre.
 *
 * @param goes   inside: room less parts; outside: parts less room
 * @param room   what there is without the parts, mm
 * @param parts  their sizes, mm
 * @returns mm, less than 0 where they interfere
 * @source  JCGM 100:2008, 5.2.2: influences that sizes share cancel or add
 * @example clearanceOf({ goes: 'inside' }, certain(98.02), [certain(97.92)]) // 0.100 mm
 */
export const clearanceOf = (
  { goes }: Pick<FitQuestion, 'goes'>,
  room: Uncertain,
  parts: readonly Uncertain[],
): Uncertain => {
  const sign = goes === 'inside' ? 1 : -1;
  const { value, terms } = combine([[sign, room], ...parts.map((part) => [-sign, part] as const)]);
  return { value: settled(value), terms };
};

const middleOf = ({ limits }: FitPlace): number => (limits.least + limits.greatest) / 2;

/** Nanometres from the middle; Infinity where the clearance is not proved within its limits. */
const costOf = (question: FitQuestion, place: FitPlace, parts: readonly Uncertain[]): number => {
  const { limits } = place;
  const sign = question.goes === 'inside' ? 1 : -1;
  const value = settled(sign * parts.reduce((left, { value: size }) => left - size, place.room.value));
  if (!liesIn(value, limits)) return Number.POSITIVE_INFINITY;
  const clearance = clearanceOf(question, place.room, parts);
  const { verdict } = weigh(clearance, { new: limits, goesBack: limits, printed: {} }, question.rule);
  return verdict === 'within'
    ? Math.round(Math.abs(value - middleOf(place)) * perMillimetre)
    : Number.POSITIVE_INFINITY;
};

const twice = (names: readonly string[]): string | undefined =>
  names.find((name, at) => names.indexOf(name) !== at);

const nonsense = ({ places, parts, takes }: FitQuestion): Answer<never> | undefined => {
  if (places.length === 0) return refuse('there is no place to fit parts to', 'places', 'name the places');
  if (parts.length === 0) return refuse('there are no parts to choose from', 'parts', 'measure the parts');
  if (places.length > mostPlaces || parts.length > mostParts)
    return refuse(
      `${places.length} places and ${parts.length} parts are too many`,
      'places, parts',
      `give at most ${mostPlaces} places and ${mostParts} parts`,
    );
  const same = twice(places.map(({ name }) => name)) ?? twice(parts.map(({ name }) => name));
  if (same !== undefined) return refuse(`${same} is named twice`, same, 'give each its own name');
  const wrong = places.find(({ limits }) => !(limits.least < limits.greatest));
  if (wrong)
    return refuse(
      `the least clearance at ${wrong.name} is not below the greatest`,
      wrong.name,
      'check both limits against the manual',
    );
  const stray = parts.find(({ half = '' }) => !takes.includes(half));
  return stray
    ? refuse(`${stray.name} is no half that a place takes`, stray.name, `mark it as ${takes.join(' or ')}`)
    : undefined;
};

const setOf = (
  question: FitQuestion,
  taken: readonly (readonly FitPart[])[],
  { greatest, sum, proved }: { greatest: number; sum: number; proved: boolean },
): FitSet => ({
  kind: 'fitted',
  fits: question.places.map((place, at) => {
    const parts = taken[at] ?? [];
    const clearance = clearanceOf(
      question,
      place.room,
      parts.map(({ size }) => size),
    );
    const off = Math.round((clearance.value - middleOf(place)) * perMillimetre) / perMillimetre + 0;
    return {
      place: place.name,
      parts: parts.map(({ name }) => name),
      clearance,
      expanded: expanded(clearance, 0.95),
      off,
    };
  }),
  greatestOff: greatest / perMillimetre,
  sumOff: sum / perMillimetre,
  proved,
});

const oneEach = (question: FitQuestion): FitSet | Lacking => {
  const { places, parts } = question;
  const even = evenAssignment(
    places.map((place) => parts.map(({ size }) => costOf(question, place, [size]))),
  );
  if (even.kind === 'crowded')
    return lackingAt(
      question,
      even.rows.flatMap((row) => places[row] ?? []),
      even.columns.flatMap((column) => parts[column] ?? []),
    );
  const taken = even.columns.map((column) => parts.slice(column, column + 1));
  return setOf(question, taken, { ...even, proved: true });
};

/** The pairs of sizes that serve a place, least off first, then as the sizes are listed. */
const pairsAt = (question: FitQuestion, place: FitPlace, sizes: readonly SizeOfParts[]) => {
  const [one = '', two = ''] = question.takes;
  const alike = one === two;
  return sizes
    .flatMap((first, a) =>
      sizes.flatMap((second, b) => {
        if (first.half !== one || second.half !== two || (alike && b < a)) return [];
        const partner = a === b ? first.parts[1] : second.parts[0];
        if (!first.parts[0] || !partner) return [];
        const cost = costOf(question, place, [first.parts[0].size, partner.size]);
        return cost < Number.POSITIVE_INFINITY ? [{ first: a, second: b, cost }] : [];
      }),
    )
    .sort((x, y) => x.cost - y.cost);
};

const twoEach = (question: FitQuestion): FitSet | Lacking => {
  const { places } = question;
  const sizes = sizesOf(question);
  const set = pairsForPlaces({
    counts: sizes.map(({ parts }) => parts.length),
    pairs: places.map((place) => pairsAt(question, place, sizes)),
    effort: question.effort ?? usualEffort,
  });
  if (set.kind === 'crowded')
    return lackingAt(
      question,
      set.places.flatMap((at) => places[at] ?? []),
      undefined,
      set.proved,
    );
  const next = sizes.map(({ parts }) => parts.values());
  const take = (size: number): readonly FitPart[] => {
    const part = next[size]?.next();
    return part && !part.done ? [part.value] : [];
  };
  return setOf(
    question,
    set.pairs.map(({ first, second }) => [...take(first), ...take(second)]),
    set,
  );
};

/**
 * Which part from stock goes to which place.
 *
 * A part may go where its clearance is proved within the limits by the rule, its uncertainty counted. Of all ways to
 * serve every place the one is chosen whose worst clearance lies nearest the middle of its limits, then that whose
 * deviations add up to least, to the nanometre. With one part to a place ties go to the earliest parts for the
 * earliest places; with two they are broken by the same search every time.
 *
 * @param question  places with room and limits, parts with sizes, mm; at most 500 places and 5000 parts
 * @returns the parts of each place with clearance and deviation, exact with one part to a place, and with two where
 *   it is proved; or the places that cannot all be served, and what size is lacking; refuses names given twice and
 *   limits that leave no middle
 * @source  see evenAssignment; clearances within by ISO 14253-1:2017 or the shop's rule
 * @example fitParts({
 *   places: [{ name: 'bore.1', room: certain(98.02), limits: { least: 0.08, greatest: 0.12 } }],
 *   parts: [{ name: 'A', size: certain(97.9) }, { name: 'B', size: certain(97.925) }],
 *   goes: 'inside',
 *   takes: [''],
 *   rule: { kind: 'guarded', conformance: 0.95 },
 * }).value.greatestOff // 0.005 mm
 */
export const fitParts = (question: FitQuestion): Answer<FitSet | Lacking> => {
  const wrong = nonsense(question);
  if (wrong) return wrong;
  return answer(question.takes.length === 2 ? twoEach(question) : oneEach(question));
};
