/** @module The plan: from readings to the proved optimum in the program, against command-line solvers on the same model. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { planEngine } from '../src/plan/plan.ts';
import type { PlanQuestion } from '../src/plan/question.ts';
import { hours } from '../src/quantity/brand.ts';
import { highsSolver } from '../src/solver/highs.ts';
import { wornEngineOf } from '../test/engines/many-cylinders.ts';
import { lacking } from '../test/outside/program.ts';
import { type BenchRow, inTurns } from './bench.ts';

export const name = 'plan';

/** Command lines of general solvers: each takes a model in LP format and ends when its optimum is proved. */
const solvers: readonly { readonly command: string; readonly args: (file: string) => readonly string[] }[] = [
  { command: 'glpsol', args: (file) => ['--lp', file, '-o', `${file}.out`] },
  { command: 'cbc', args: (file) => [file, 'solve', 'solution', `${file}.out`] },
];

const isHere = (command: string): boolean => spawnSync('which', [command], { stdio: 'ignore' }).status === 0;

const planBench = async (cylinders: number, folder: string): Promise<readonly BenchRow[]> => {
  const question: PlanQuestion = {
    sheet: wornEngineOf(cylinders),
    findings: [],
    hoursRun: hours(6_000),
    demands: { hours: 4_000 },
  };
  const solve = await highsSolver();
  const models: string[] = [];
  const planned = await planEngine(question, async (model) => {
    models.push(model);
    return solve(model);
  });
  if (planned.kind !== 'plan') throw new Error(`the engine of ${cylinders} cylinders has no plan`);
  const files = models.map((model, at) => {
    const file = join(folder, `plan-${cylinders}-${at}.lp`);
    writeFileSync(file, model);
    return file;
  });
  const choices = models[0]?.match(/^ x\d+$/gm)?.length ?? 0;
  const rows: BenchRow[] = [];
  for (const { command, args } of solvers.filter((solver) => isHere(solver.command))) {
    const { ours, other } = await inTurns(
      () => planEngine(question, solve),
      () => {
        for (const file of files) {
          const { status } = spawnSync(command, args(file), { stdio: 'ignore' });
          if (status !== 0) throw new Error(`${command} ended with code ${status}`);
        }
      },
      5,
    );
    rows.push({
      what: `plan of ${cylinders} cylinders, ${choices} options, readings to proved plan`,
      against: `${command} on the same ${models.length} models`,
      unit: 'ms',
      ours,
      other,
      note: 'ours judges the readings and builds the models too; theirs starts a process for each',
    });
  }
  return rows;
};

export const run = async (): Promise<readonly BenchRow[]> => {
  const lacks = lacking('glpsol');
  if (lacks) throw new Error(lacks);
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-bench-plan-'));
  try {
    return [...(await planBench(6, folder)), ...(await planBench(16, folder))];
  } finally {
    rmSync(folder, { recursive: true });
  }
};
