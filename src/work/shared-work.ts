/** @module What fitters who work side by side share: hands, the one way the engine lies, the one special tool of each kind. */
import type { Operation } from '../engine/engine-type.ts';
import type { Precedence } from './precedence.ts';

/** The work as a schedule sees it, by index. */
export interface SharedWork {
  readonly minutes: readonly number[];
  /** Fitters that each takes, never more than there are. */
  readonly hands: readonly number[];
  /** Whether two may not go on at the same time. */
  readonly clash: (one: number, other: number) => boolean;
  /** From the start of each to the end of all that must follow it. */
  readonly tail: readonly number[];
  /** No schedule is shorter. */
  readonly atLeast: number;
}

const sum = (figures: readonly number[]): number => figures.reduce((all, one) => all + one, 0);

const tailsOf = ({ after }: Precedence, minutes: readonly number[]): readonly number[] => {
  const tail: number[] = [];
  const of = (at: number): number => {
    const known = tail[at];
    if (known !== undefined) return known;
    const longest = Math.max(0, ...(after[at] ?? []).map(of));
    const own = longest + (minutes[at] ?? 0);
    tail[at] = own;
    return own;
  };
  for (const at of minutes.keys()) of(at);
  return tail;
};

/**
 * The greatest of four leasts: the longest chain; all the work shared out evenly; the time that each way of lying
 * takes at the least, one after the other; and what a tool, or both hands, are wanted for in all.
 */
const leastOf = (
  operations: readonly Operation[],
  minutes: readonly number[],
  hands: readonly number[],
  fitters: number,
  tail: readonly number[],
): number => {
  const taken = (chosen: (operation: Operation, at: number) => boolean): readonly number[] =>
    [...operations.keys()].filter((at) => chosen(operations[at] as Operation, at));
  const shared = (of: readonly number[]): number =>
    Math.max(
      0,
      ...of.map((at) => minutes[at] ?? 0),
      sum(of.map((at) => (minutes[at] ?? 0) * (hands[at] ?? 1))) / fitters,
    );
  const alone = (of: readonly number[]): number => sum(of.map((at) => minutes[at] ?? 0));
  const lies = new Set(operations.flatMap(({ stand }) => stand ?? []));
  const tools = new Set(operations.flatMap((operation) => operation.tools));
  return Math.max(
    0,
    ...tail,
    shared([...operations.keys()]),
    sum([...lies].map((lie) => shared(taken(({ stand }) => stand === lie)))),
    ...[...tools].map((tool) => alone(taken((operation) => operation.tools.includes(tool)))),
    alone(taken((_, at) => 2 * (hands[at] ?? 1) > fitters)),
  );
};

const greatestDivisor = (a: number, b: number): number => (b === 0 ? a : greatestDivisor(b, a % b));

/** Work that is begun as early as it can be ends on a sum of minutes: where all are whole, on a multiple of what divides all. */
const onWholeSums = (least: number, minutes: readonly number[]): number => {
  const step = minutes.every((one) => Number.isInteger(one)) ? minutes.reduce(greatestDivisor, 0) : 0;
  return step === 0 ? least : Math.ceil(least / step) * step;
};

/** @param minutes  of each operation, in the order of `work` */
export const sharedWork = (work: Precedence, minutes: readonly number[], fitters: number): SharedWork => {
  const { operations } = work;
  const hands = operations.map(({ people }) => Math.min(people, fitters));
  const tail = tailsOf(work, minutes);
  return {
    minutes,
    hands,
    tail,
    clash: (one, other) => {
      const [a, b] = [operations[one], operations[other]];
      if (a === undefined || b === undefined) return false;
      const turned = a.stand !== undefined && b.stand !== undefined && a.stand !== b.stand;
      return turned || a.tools.some((tool) => b.tools.includes(tool));
    },
    atLeast: onWholeSums(leastOf(operations, minutes, hands, fitters, tail), minutes),
  };
};
