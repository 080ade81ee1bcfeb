/** @module What every solver handed to the core must do, on problems whose optimum is published. */
import { describe, expect, it } from 'vitest';
import type { Solve } from '../../src/plan/plan-model.ts';
import { eightByEight } from '../eight-by-eight.ts';
import { knapsacks } from './knapsacks.ts';

const sum = (terms: readonly string[]): string => terms.join('\n + ');

const model = (objective: string, rows: readonly string[], binary: readonly string[], more = ''): string =>
  `${objective}\nSubject To\n${rows.map((row, at) => ` r${at}: ${row}`).join('\n')}\n${more}Binary\n${binary.map((name) => ` ${name}`).join('\n')}\nEnd\n`;

interface Assignment {
  readonly name: string;
  readonly costs: readonly (readonly number[])[];
  readonly best: number;
  /** The one best column of each row, counted from 1. */
  readonly columns: readonly number[];
}

const assignments: readonly Assignment[] = [
  { name: 'eight by eight', ...eightByEight },
  {
    // source: documentation of scipy.optimize.linear_sum_assignment
    name: 'three by three',
    costs: [
      [4, 1, 3],
      [2, 0, 5],
      [3, 2, 2],
    ],
    best: 5,
    columns: [2, 1, 3],
  },
];

const assignmentRows = (costs: Assignment['costs']): readonly string[] => [
  ...costs.map((row, at) => `${sum(row.map((_, column) => `x${at}_${column}`))} = 1`),
  ...costs.map((_, column) => `${sum(costs.map((__, row) => `x${row}_${column}`))} = 1`),
];
const assignmentColumns = (costs: Assignment['costs']): readonly string[] =>
  costs.flatMap((row, at) => row.map((_, column) => `x${at}_${column}`));

export const solverContract = (name: string, open: () => Promise<Solve>): void => {
  describe(`${name} as the solver of plans`, () => {
    it.each(knapsacks)('packs knapsack $name to its published optimum', async (knapsack) => {
      const { capacity, weights, values, best, items } = knapsack;
      const names = values.map((_, at) => `x${at}`);
      const weight = sum(weights.map((each, at) => `${each} x${at}`));
      const value = sum(values.map((each, at) => `${each} x${at}`));
      const solve = await open();
      const solved = await solve(model(`Maximize\n value: ${value}`, [`${weight} <= ${capacity}`], names));
      expect(solved.status).toBe('optimal');
      expect(solved.objective).toBeCloseTo(best, 6);
      expect(Object.keys(solved.columns).sort()).toEqual([...names].sort());
      const taken = names.flatMap((column, at) => ((solved.columns[column] ?? 0) > 0.5 ? [at + 1] : []));
      expect(taken).toEqual(items);
    });

    it.each(assignments)('assigns $name at the published cost', async ({ costs, best, columns }) => {
      const cost = sum(costs.flatMap((row, at) => row.map((each, column) => `${each} x${at}_${column}`)));
      const solve = await open();
      const solved = await solve(
        model(`Minimize\n cost: ${cost}`, assignmentRows(costs), assignmentColumns(costs)),
      );
      expect(solved.status).toBe('optimal');
      expect(solved.objective).toBeCloseTo(best, 6);
      const chosen = costs.map(
        (row, at) => row.findIndex((_, column) => (solved.columns[`x${at}_${column}`] ?? 0) > 0.5) + 1,
      );
      expect(chosen).toEqual(columns);
    });

    it('makes the greatest cost least by a column that is no choice', async () => {
      // source: the eight by eight above, all 40320 assignments tried
      const costs = assignments[0]?.costs ?? [];
      const rows = costs.map(
        (row, at) => `${sum(row.map((each, column) => `${each} x${at}_${column}`))} - t <= 0`,
      );
      const solve = await open();
      const solved = await solve(
        model('Minimize\n worst: t', [...assignmentRows(costs), ...rows], assignmentColumns(costs)),
      );
      expect(solved).toMatchObject({ status: 'optimal' });
      expect(solved.columns.t).toBeCloseTo(16, 6);
    });

    it('says infeasible where nothing adds up', async () => {
      // source: by hand; powers of two up to 32 make 63 at most
      const names = [1, 2, 4, 8, 16, 32].map((_, at) => `x${at}`);
      const total = sum(names.map((column, at) => `${2 ** at} ${column}`));
      const solve = await open();
      expect((await solve(model('Minimize\n none: 0 x0', [`${total} = 100`], names))).status).toBe(
        'infeasible',
      );
      expect((await solve(model('Minimize\n none: 0 x0', [`${total} = 63`], names))).status).toBe('optimal');
    });

    it('finds what adds up where something does', async () => {
      // source: by hand; 15 + 22 + 16, 22 + 14 + 9 + 8 and 15 + 14 + 16 + 8 are all the ways to 53
      const sizes = [15, 22, 14, 26, 32, 9, 16, 8];
      const names = sizes.map((_, at) => `x${at}`);
      const total = sum(sizes.map((size, at) => `${size} x${at}`));
      const solve = await open();
      const { columns } = await solve(model(`Minimize\n count: ${sum(names)}`, [`${total} = 53`], names));
      const taken = sizes.filter((_, at) => (columns[`x${at}`] ?? 0) > 0.5);
      expect(taken).toEqual([15, 22, 16]);
    });

    it('finds a way through rows of which simplifying leaves nothing', async () => {
      // source: by hand; c alone keeps every row. HiGHS 1.15.1 gave up on it unless told not to simplify.
      const rows = [
        'a - s <= 0',
        'b + d <= 1',
        'd - s <= 0',
        'b - w <= 0',
        'f - u <= 0',
        'f - v <= 0',
        'g - w <= 0',
        'c + h + k <= 1',
        'c + h + k >= 1',
        'h - v <= 0',
        'k - z <= 0',
        'f + g - a <= 0',
        'h + k - a <= 0',
        's + w <= 1',
        'a - b - d <= 0',
        'a - f - g <= 0',
        'a - h - k <= 0',
        '1500 u + 2500 v + 2000 z <= 3000.5',
      ];
      const binary = ['a', 's', 'b', 'd', 'w', 'f', 'u', 'v', 'g', 'c', 'h', 'k', 'z'];
      const solve = await open();
      const { status, columns } = await solve(model('Minimize\n least: 0 t', rows, binary));
      expect(status).toBe('optimal');
      expect(binary.filter((column) => (columns[column] ?? 0) > 0.5)).toContain('c');
    });

    it('never takes rubbish for a model that is solved', async () => {
      const solve = await open();
      await expect(solve('this is no model')).rejects.toThrow();
    });
  });
};
