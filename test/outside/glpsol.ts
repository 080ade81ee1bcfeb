/** @module glpsol behind the same interface as the program's own solver: an independent judge of models in LP text. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { LinearAnswer } from '../../src/plan/plan-model.ts';
import { ask } from './program.ts';

/** `     2 x1           *              0 …`: the number and the name of a column; a long name stands alone. */
const columnLine = /^\s*(\d+) (\S+)(?:\s|$)/;

const namesIn = (printed: string): ReadonlyMap<string, string> => {
  const [, columns = ''] = printed.split('Column name');
  return new Map(
    columns.split('\n').flatMap((line) => {
      const [, number, name] = columnLine.exec(line) ?? [];
      return number && name ? [[number, name]] : [];
    }),
  );
};

const statusOf = (letter: string | undefined, told: string): LinearAnswer['status'] => {
  if (letter === 'o') return 'optimal';
  if (letter === 'n' || /NO (PRIMAL|INTEGER) FEASIBLE SOLUTION/.test(told)) return 'infeasible';
  if (/TIME LIMIT EXCEEDED/.test(told)) return 'stopped';
  throw new Error(`glpsol does not say how it ended: ${told}`);
};

/** @param model  a mixed-integer program in CPLEX LP format */
export const glpsol = (model: string, seconds = 60): LinearAnswer => {
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-glpsol-'));
  try {
    const [file, printed, raw] = ['model.lp', 'printed', 'raw'].map((name) => join(folder, name)) as [
      string,
      string,
      string,
    ];
    writeFileSync(file, model);
    const told = ask('glpsol', ['--lp', file, '-o', printed, '-w', raw, '--tmlim', String(seconds)]);
    const names = namesIn(readFileSync(printed, 'utf8'));
    const lines = readFileSync(raw, 'utf8').split('\n');
    const [, , , , letter, objective] = lines.find((line) => line.startsWith('s mip'))?.split(' ') ?? [];
    const columns = lines
      .filter((line) => line.startsWith('j '))
      .map((line) => line.split(' '))
      .map(([, number = '', value]) => [names.get(number) ?? `column ${number}`, Number(value)] as const);
    return {
      status: statusOf(letter, told),
      objective: Number(objective),
      columns: Object.fromEntries(columns),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
};
