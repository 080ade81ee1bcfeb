/** @module Shim packs as mixed-integer programs in LP text, for general solvers: written from the ranks, not from the search. */

/** In hundredths of a millimetre. */
export interface Shims {
  readonly needs: readonly number[];
  readonly box: readonly { readonly thickness: number; readonly count: number }[];
  readonly mostShims: number;
}

export type Asked =
  | { readonly least: 'greatest error' }
  | { readonly least: 'spread'; readonly greatest: number }
  | { readonly least: 'number of shims'; readonly greatest: number; readonly spread: number };

const objectives = {
  'greatest error': 'e',
  spread: 'high - low',
  'number of shims': 'used',
};

const sum = (terms: readonly string[]): string => terms.join('\n  + ');

/**
 * Columns x{pump}_{shim} say how many shims of a thickness lie under a pump; `high` and `low` close in the
 * signed errors, `e` their sizes.
 */
export const shimModel = ({ needs, box, mostShims }: Shims, asked: Asked): string => {
  const column = (pump: number, shim: number): string => `x${pump}_${shim}`;
  const pumps = needs.map((needed, pump) => {
    const thickness = sum(box.map((shim, at) => `${shim.thickness} ${column(pump, at)}`));
    return [
      ` h${pump}: ${thickness} - high <= ${needed}`,
      ` l${pump}: ${thickness} - low >= ${needed}`,
      ` m${pump}: ${sum(box.map((_, at) => column(pump, at)))} <= ${mostShims}`,
    ].join('\n');
  });
  const held =
    asked.least === 'greatest error'
      ? []
      : [
          ` e <= ${asked.greatest}`,
          ...(asked.least === 'number of shims' ? [` high - low <= ${asked.spread}`] : []),
        ];
  return [
    'Minimize',
    ` least: ${objectives[asked.least]}`,
    'Subject To',
    ...pumps,
    ...box.map(({ count }, at) => ` c${at}: ${sum(needs.map((_, pump) => column(pump, at)))} <= ${count}`),
    ` used: ${sum(needs.flatMap((_, pump) => box.map((__, at) => column(pump, at))))} - used = 0`,
    ' high - e <= 0',
    ' low + e >= 0',
    ...held,
    'Bounds',
    ' high free',
    ' low free',
    'General',
    ...needs.map((_, pump) => ` ${box.map((__, at) => column(pump, at)).join(' ')}`),
    'End',
    '',
  ].join('\n');
};

/** Every pack of the box for one pump with an error in the window, as counts by thickness. */
const packsIn = (
  { box, mostShims }: Shims,
  needed: number,
  [least, greatest]: readonly [number, number],
): readonly (readonly number[])[] => {
  let stacks: readonly (readonly number[])[] = [[]];
  for (const { count } of box) {
    stacks = stacks.flatMap((stack) => {
      const room = mostShims - stack.reduce((all, taken) => all + taken, 0);
      return Array.from({ length: Math.min(room, count) + 1 }, (_, taken) => [...stack, taken]);
    });
  }
  return stacks.filter((stack) => {
    const error = stack.reduce((all, taken, at) => all + taken * (box[at]?.thickness ?? 0), -needed);
    return error >= least && error <= greatest;
  });
};

/**
 * The fewest shims with which all errors lie in a window: one binary column for every pack a pump could have.
 * Undefined where some pump has no such pack at all. A longer model than `shimModel`, and far quicker solved.
 */
export const windowModel = (shims: Shims, window: readonly [number, number]): string | undefined => {
  const { needs, box } = shims;
  const packs = needs.map((needed) => packsIn(shims, needed, window));
  if (packs.some((own) => own.length === 0)) return undefined;
  const all = packs.flatMap((own, pump) => own.map((pack, at) => ({ pump, pack, column: `p${pump}_${at}` })));
  const size = (pack: readonly number[]): number => pack.reduce((taken, count) => taken + count, 0);
  return [
    'Minimize',
    ` least: ${sum(all.map(({ pack, column }) => `${size(pack)} ${column}`))}`,
    'Subject To',
    ...packs.map((own, pump) => ` one${pump}: ${sum(own.map((_, at) => `p${pump}_${at}`))} = 1`),
    ...box.flatMap(({ count }, shim) => {
      const users = all.filter(({ pack }) => (pack[shim] ?? 0) > 0);
      const taken = users.map(({ pack, column }) => `${pack[shim]} ${column}`);
      return taken.length === 0 ? [] : [` c${shim}: ${sum(taken)} <= ${count}`];
    }),
    'Binary',
    ...all.map(({ column }) => ` ${column}`),
    'End',
    '',
  ].join('\n');
};
