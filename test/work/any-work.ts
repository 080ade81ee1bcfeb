/** @module Made-up work for tests: operations in any precedence, and every order of them by plain enumeration. */
import fc from 'fast-check';
import type { Operation } from '../../src/engine/engine-type.ts';

export const operation = (name: string, more: Partial<Operation> = {}): Operation => ({
  name,
  title: name,
  phase: 'strip',
  after: [],
  needs: [],
  readAgain: false,
  removes: [],
  fits: [],
  renews: [],
  covers: [],
  tightens: [],
  tools: [],
  people: 1,
  asks: [],
  gate: false,
  breaks: new Map(),
  cautions: [],
  sums: [],
  ...more,
});

export const bookOf = (operations: readonly Operation[]): ReadonlyMap<string, Operation> =>
  new Map(operations.map((one) => [one.name, one]));

/** Operations `a`, `b` …, each after some listed before it, then shuffled, so that the list is no order of work. */
export const anyWork = (most: number, arcs = 0.3, least = 1): fc.Arbitrary<readonly Operation[]> =>
  fc
    .array(
      fc.record({
        links: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: most, maxLength: most }),
        stand: fc.constantFrom(undefined, 'upright', 'upside-down', 'on-its-side'),
        tools: fc.subarray(['puller', 'beam', 'bar'], { maxLength: 2 }),
        people: fc.constantFrom(1, 1, 1, 2),
        minutes: fc.integer({ min: 1, max: 6 }),
      }),
      { minLength: least, maxLength: most },
    )
    .map((made) =>
      made.map(({ links, stand, ...more }, at) =>
        operation(String.fromCharCode(97 + at), {
          ...more,
          ...(stand && { stand }),
          after: made.flatMap((_, other) =>
            other < at && (links[other] ?? 1) < arcs ? [String.fromCharCode(97 + other)] : [],
          ),
        }),
      ),
    )
    .chain((made) => fc.shuffledSubarray([...made], { minLength: made.length, maxLength: made.length }));

/** Every order in which the operations can be worked. */
export const everyOrder = function* (
  operations: readonly Operation[],
  done: readonly Operation[] = [],
): Generator<readonly Operation[]> {
  if (done.length === operations.length) yield done;
  const names = new Set(done.map(({ name }) => name));
  for (const one of operations)
    if (!names.has(one.name) && one.after.every((name) => names.has(name)))
      yield* everyOrder(operations, [...done, one]);
};

/** Turns and fetches along an order, counted as a bystander would. */
export const changesIn = (
  order: readonly Operation[],
): { readonly turns: number; readonly fetches: number } => {
  let lies: string | undefined;
  let hand: readonly string[] = [];
  let [turns, fetches] = [0, 0];
  for (const { stand, tools } of order) {
    if (stand !== undefined) {
      if (lies !== undefined && lies !== stand) turns += 1;
      lies = stand;
    }
    if (tools.length === 0) continue;
    fetches += tools.filter((tool) => !hand.includes(tool)).length;
    hand = tools;
  }
  return { turns, fetches };
};
