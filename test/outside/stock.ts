/** @module Measured stock for fitting, seeded: parts and places in whole micrometres, as question and as plain figures. */
import { uncertain } from '../../src/quantity/uncertain.ts';
import type { FitQuestion } from '../../src/reckon/fit-question.ts';
import { normalBy, seeded } from '../engines/worn-engine.ts';

export interface Stock {
  readonly question: FitQuestion;
  /** Micrometres: the clearance wanted taken off. */
  readonly rooms: readonly number[];
  readonly sizes: readonly number[];
}

/** Clearances from 40 to 80 µm; parts and rooms scatter as grinding leaves them, each known to 1 µm (95 %). */
export const measuredStock = (seed: number, places: number, parts: number, takes: 1 | 2 = 1): Stock => {
  const random = seeded(seed);
  const scattered = (count: number, spread: number): readonly number[] =>
    Array.from({ length: count }, () => Math.round(spread * normalBy(random)));
  const rooms = scattered(places, 15 * takes);
  const sizes = scattered(parts, 12);
  const u = 0.001 / 1.96;
  return {
    rooms,
    sizes,
    question: {
      places: rooms.map((room, at) => ({
        name: `place.${at + 1}`,
        room: uncertain(2 * takes + (60 + room) / 1000, `room ${at}`, u),
        limits: { least: 0.04, greatest: 0.08 },
      })),
      parts: sizes.map((size, at) => ({
        name: `P${at + 1}`,
        size: uncertain(2 + size / 1000, `part ${at}`, u),
      })),
      goes: 'inside',
      takes: takes === 1 ? [''] : ['', ''],
      rule: { kind: 'guarded', conformance: 0.95 },
    },
  };
};

/** Furthest off, µm, that is still proved within: 20 less 1.645 standard uncertainties of all that is measured. */
const furthestOff = (takes: 1 | 2): number => 20 - 1.645 * Math.sqrt(1 + takes) * (1 / 1.96);

/**
 * Python that makes `off`, for each place what each part would be off, µm, and 1000 where it may not go, and with it
 * `serves(most)`, whether parts that are off no more can serve every place.
 */
export const offInPython = ({ rooms, sizes }: Stock): string => `
import numpy as np
from scipy.optimize import linear_sum_assignment
from scipy.sparse import csr_matrix
from scipy.sparse.csgraph import maximum_bipartite_matching
off = abs(np.array([${rooms.join()}])[:, None] - np.array([${sizes.join()}])[None, :])
off = np.where(off <= ${furthestOff(1)}, off, 1000)
serves = lambda most: (maximum_bipartite_matching(csr_matrix(off <= most), perm_type='column') >= 0).all()
`;

/** The same with two parts to a place as a mixed-integer program: least greatest deviation, or least sum up to one. */
export const pairModel = ({ rooms, sizes }: Stock, upTo?: number): string => {
  const kinds = [...new Set(sizes)];
  const counts = kinds.map((kind) => sizes.filter((size) => size === kind).length);
  const uses: string[][] = kinds.map(() => []);
  const serves: string[][] = rooms.map(() => []);
  const worst: string[] = [];
  const terms: string[] = [];
  const binaries: string[] = [];
  for (const [place, room] of rooms.entries())
    for (const [a, first] of kinds.entries())
      for (const [b, second] of kinds.entries()) {
        const off = Math.abs(room - first - second);
        if (b < a || off > Math.min(furthestOff(2), upTo ?? Infinity)) continue;
        const name = `y${place}_${a}_${b}`;
        binaries.push(name);
        serves[place]?.push(name);
        uses[a]?.push(`${a === b ? 2 : 1} ${name}`);
        if (a !== b) uses[b]?.push(`1 ${name}`);
        if (off > 0) {
          terms.push(`${off} ${name}`);
          worst.push(`z - ${off} ${name} >= 0`);
        }
      }
  const rows = [
    ...serves.map((names) => `${names.join(' + ') || '0 z'} = 1`),
    ...uses.flatMap((used, at) => (used.length > 0 ? [`${used.join(' + ')} <= ${counts[at]}`] : [])),
    ...(upTo === undefined ? worst : []),
  ];
  const objective = upTo === undefined ? 'z' : terms.join(' + ') || '0 z';
  return `Minimize\n obj: ${objective}\nSubject To\n${rows.map((row, at) => ` r${at}: ${row}`).join('\n')}\nBinary\n${binaries.map((name) => ` ${name}`).join('\n')}\nEnd\n`;
};

/** One part to a place as a linear program whose optimum is whole by itself: least sum of deviations. */
export const assignmentModel = ({ rooms, sizes }: Stock): string => {
  const uses: string[][] = sizes.map(() => []);
  const terms: string[] = [];
  const serves = rooms.map((room, place) =>
    sizes.flatMap((size, part) => {
      const off = Math.abs(room - size);
      if (off > furthestOff(1)) return [];
      const name = `x${place}_${part}`;
      if (off > 0) terms.push(`${off} ${name}`);
      uses[part]?.push(name);
      return [name];
    }),
  );
  const rows = [
    ...serves.map((names) => `${names.join(' + ')} = 1`),
    ...uses.flatMap((names) => (names.length > 0 ? [`${names.join(' + ')} <= 1`] : [])),
  ];
  return `Minimize\n obj: ${terms.join('\n + ')}\nSubject To\n${rows.map((row, at) => ` r${at}: ${row.replaceAll(' + ', '\n + ')}`).join('\n')}\nEnd\n`;
};
