/** @module Fewest turns and fetches as a mixed-integer program in LP text, for general solvers: written from the meaning, not from the search. */
import type { Operation } from '../../src/engine/engine-type.ts';

const sum = (terms: readonly string[]): string => terms.join('\n  + ');

/**
 * Columns `x{operation}_{step}` say when each is done, `z…` how the engine lies and `w…` what is in hand at each step;
 * `t…` and `f…` count what changes from one step to the next.
 *
 * @param turn  what a turn weighs against a fetch
 */
export const changesModel = (work: readonly Operation[], turn: number): string => {
  const steps = [...work.keys()];
  const lies = [...new Set(work.flatMap(({ stand }) => stand ?? []))];
  const hands: readonly (readonly string[])[] = [
    [],
    ...new Map(work.map(({ tools }) => [tools.join(), tools])).values(),
  ];
  const rows: string[] = [];
  const row = (text: string) => rows.push(` r${rows.length}: ${text}`);
  for (const at of work.keys()) row(`${sum(steps.map((step) => `x${at}_${step}`))} = 1`);
  for (const [at, { after, stand, tools }] of work.entries()) {
    for (const name of after) {
      const before = work.findIndex((one) => one.name === name);
      const when = (one: number, sign: string) =>
        steps.map((step) => `${sign} ${step} x${one}_${step}`).join(' ');
      row(`${when(at, '+')} ${when(before, '-')} >= 1`);
    }
    for (const step of steps) {
      if (stand !== undefined) row(`z${lies.indexOf(stand)}_${step} - x${at}_${step} >= 0`);
      const own = hands.findIndex((hand) => hand.join() === tools.join());
      if (tools.length > 0) row(`w${own}_${step} - x${at}_${step} >= 0`);
    }
  }
  for (const step of steps) {
    row(`${sum(work.map((_, at) => `x${at}_${step}`))} = 1`);
    if (lies.length > 0) row(`${sum(lies.map((_, lie) => `z${lie}_${step}`))} = 1`);
    row(`${sum(hands.map((_, hand) => `w${hand}_${step}`))} = 1`);
    for (const lie of lies.keys()) if (step > 0) row(`t${step} - z${lie}_${step} + z${lie}_${step - 1} >= 0`);
    for (const [to, wanted] of hands.entries())
      for (const [from, held] of (step === 0 ? [[]] : hands).entries()) {
        const fetched = wanted.filter((tool) => !held.includes(tool)).length;
        const holds = step === 0 ? '' : ` - ${fetched} w${from}_${step - 1}`;
        if (fetched > 0) row(`f${step} - ${fetched} w${to}_${step}${holds} >= ${step === 0 ? 0 : -fetched}`);
      }
  }
  return [
    'Minimize',
    ` changes: ${sum([...steps.slice(1).map((step) => `${turn} t${step}`), ...steps.map((step) => `f${step}`)])}`,
    'Subject To',
    ...rows,
    'Binary',
    ...steps.map((step) =>
      [
        ...work.map((_, at) => ` x${at}_${step}`),
        ...lies.map((_, lie) => ` z${lie}_${step}`),
        ...hands.map((_, hand) => ` w${hand}_${step}`),
      ].join('\n'),
    ),
    'End',
    '',
  ].join('\n');
};
