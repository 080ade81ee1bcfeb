/** @module Plans: from readings to the proved optimum, against command-line solvers; growth, many offers, the trade-off. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Sheet } from '../src/measure/sheet.ts';
import { everything } from '../src/plan/best.ts';
import { finderOf } from '../src/plan/finder.ts';
import { modelOf } from '../src/plan/model.ts';
import { optionsOf } from '../src/plan/options.ts';
import { planEngine } from '../src/plan/plan.ts';
import type { Option, Solve } from '../src/plan/plan-model.ts';
import type { PlanQuestion } from '../src/plan/question.ts';
import { slotsOf } from '../src/plan/slot.ts';
import { tradeOffOf } from '../src/plan/trade-off.ts';
import { hours } from '../src/quantity/brand.ts';
import { highsSolver } from '../src/solver/highs.ts';
import { wornEngineOf } from '../test/engines/many-cylinders.ts';
import { lacking } from '../test/outside/program.ts';
import { type BenchRow, inTurns, type Work } from './bench.ts';

export const name = 'plan';

/** Command lines of general solvers: each takes a model in LP format and ends when its optimum is proved. */
const solvers: readonly { readonly command: string; readonly args: (file: string) => readonly string[] }[] = [
  { command: 'glpsol', args: (file) => ['--lp', file, '-o', `${file}.out`] },
  { command: 'cbc', args: (file) => [file, 'solve', 'solution', `${file}.out`] },
];

const isHere = (command: string): boolean => spawnSync('which', [command], { stdio: 'ignore' }).status === 0;

/** Nothing that was reckoned of the readings before is known again. */
const asNew = (sheet: Sheet): Sheet => ({ ...sheet, engine: { ...sheet.engine } });

const questionOn = (sheet: Sheet): PlanQuestion => ({
  sheet,
  findings: [],
  hoursRun: hours(6_000),
  demands: { hours: 4_000 },
});

/** Every offer by as many suppliers, at other prices and days. */
const manySuppliers = (sheet: Sheet, suppliers: number): Sheet => ({
  ...sheet,
  engine: {
    ...sheet.engine,
    offers: sheet.engine.offers.flatMap((offer) =>
      Array.from({ length: suppliers }, (_, index) => ({
        ...offer,
        supplier: `${offer.supplier} ${index + 1}`,
        cents: Math.round(offer.cents * (1 + ((index * 7) % suppliers) * 0.013)),
        days: offer.days + ((index * 5) % 3),
      })),
    ),
  },
});

/** The models that a general solver is handed for a question, one a stage of the choice. */
const modelsOf = async (question: PlanQuestion, solve: Solve): Promise<readonly string[]> => {
  const models: string[] = [];
  const planned = await planEngine(
    question,
    async (model) => {
      models.push(model);
      return solve(model);
    },
    { widest: 0 },
  );
  if (planned.kind !== 'plan') throw new Error('the engine has no plan');
  return models;
};

/** From the options on: the model built and its optimum proved. */
const fromOptions = ({ sheet, demands }: PlanQuestion, options: readonly Option[], solve: Solve): Work => {
  const { engine } = sheet;
  return () => {
    const slots = slotsOf(engine);
    return finderOf(slots, modelOf(engine, slots, [...options], demands), solve)(everything);
  };
};

const againstSolvers = async (
  what: string,
  sheet: Sheet,
  folder: string,
  solve: Solve,
): Promise<readonly BenchRow[]> => {
  const question = questionOn(sheet);
  const files = (await modelsOf(question, solve)).map((model, at) => {
    const file = join(folder, `${what.replaceAll(/\W+/g, '-')}-${at}.lp`);
    writeFileSync(file, model);
    return file;
  });
  const { options } = optionsOf(question);
  const planning = fromOptions(question, options, solve);
  const rows: BenchRow[] = [];
  for (const { command, args } of solvers.filter((solver) => isHere(solver.command))) {
    const theirs = (asked: readonly string[]) => () => {
      for (const file of asked) {
        const { status } = spawnSync(command, args(file), { stdio: 'ignore' });
        if (status !== 0) throw new Error(`${command} ended with code ${status}`);
      }
    };
    const same = `${command} on the same ${files.length} models, to the same plan`;
    const cheapest = `${command} on the first of them, to its cost alone`;
    const row = async (from: string, against: string, work: Work, other: Work): Promise<BenchRow> => ({
      what: `${what}, ${options.length} options, ${from} to proved plan`,
      against,
      unit: 'ms',
      ...(await inTurns(work, other, 7)),
    });
    rows.push(
      await row('options', same, planning, theirs(files)),
      await row('options', cheapest, planning, theirs(files.slice(0, 1))),
      await row('readings', same, () => planEngine(questionOn(asNew(sheet)), solve), theirs(files)),
    );
  }
  return rows;
};

/** Time for each option: no more for twenty cylinders than for one. */
const growth = async (solve: Solve): Promise<BenchRow> => {
  const [one, twenty] = [1, 20].map((cylinders) => {
    const question = questionOn(wornEngineOf(cylinders));
    const { options } = optionsOf(question);
    return { count: options.length, plan: fromOptions(question, options, solve) };
  });
  if (!one || !twenty) throw new Error('no engine to be planned');
  // As many options on both sides, so that whatever else the machine does falls on both alike.
  const times = Math.round(twenty.count / one.count);
  const oneOverAndOver = async (): Promise<void> => {
    for (let time = 0; time < times; time += 1) await one.plan();
  };
  const { ours, other } = await inTurns(twenty.plan, oneOverAndOver, 25);
  return {
    what: `plan of 20 cylinders, ${twenty.count} options, options to proved plan, for each option`,
    against: `1 cylinder, ${one.count} options; at 1 or below growth is no worse than linear`,
    unit: 'ms',
    ours: ours / twenty.count,
    other: other / (times * one.count),
  };
};

/** Pistons of three suppliers, whose masses go together by neighbours only, cheaper from a few on; pumps not weighed. */
const balanced = (sheet: Sheet): Sheet => {
  const sets = [
    { mass: { least: 1.236, greatest: 1.241 }, cents: 9_300 },
    { mass: { least: 1.24, greatest: 1.245 }, cents: 9_700 },
    { mass: { least: 1.244, greatest: 1.249 }, cents: 9_100 },
  ];
  const offers = sheet.engine.offers.flatMap((offer) =>
    offer.component === 'pistons'
      ? sets.map((set, index) => ({
          ...offer,
          ...set,
          supplier: `${offer.supplier} ${index + 1}`,
          quantity: [{ from: 2 + index, cents: set.cents - 600 * (index + 1) }],
        }))
      : [offer],
  );
  const couplings = [
    ...sheet.engine.couplings,
    { kind: 'balance', of: 'pistons', most: 0.01 },
    { kind: 'balance', of: 'pumps', most: 0.01 },
  ] as const;
  return { ...sheet, engine: { ...sheet.engine, offers, couplings } };
};

/** Against the general solver within the program, which is asked where the sweep cannot answer. */
const balancedParts = async (cylinders: number, solve: Solve): Promise<BenchRow> => {
  const question = questionOn(balanced(wornEngineOf(cylinders)));
  const { engine } = question.sheet;
  const { options } = optionsOf(question);
  const slots = slotsOf(engine);
  const solverAlone = () =>
    finderOf(slots, modelOf(engine, slots, options, question.demands), solve, { widest: 0 })(everything);
  return {
    what: `plan of ${cylinders} cylinders with parts balanced, ${options.length} options, options to proved plan`,
    against: 'the general solver within the program',
    unit: 'ms',
    ...(await inTurns(fromOptions(question, options, solve), solverAlone, 3)),
  };
};

const wholeTradeOff = async (solve: Solve): Promise<BenchRow> => {
  const sheet = wornEngineOf(6);
  const ask = () => tradeOffOf({ ...questionOn(asNew(sheet)), demands: {} }, solve);
  const found = await ask();
  if (found.kind !== 'trade-off') throw new Error('the engine has no trade-off');
  const { ours } = await inTurns(ask, () => undefined, 5);
  return {
    what: `complete trade-off of 6 cylinders, ${found.plans.length} plans`,
    against: 'one second',
    unit: 'ms',
    ours,
    other: 1_000,
  };
};

export const run = async (): Promise<readonly BenchRow[]> => {
  const lacks = lacking('glpsol');
  if (lacks) throw new Error(lacks);
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-bench-plan-'));
  const solve = await highsSolver();
  try {
    return [
      ...(await againstSolvers('plan of 6 cylinders', wornEngineOf(6), folder, solve)),
      ...(await againstSolvers('plan of 16 cylinders', wornEngineOf(16), folder, solve)),
      ...(await againstSolvers(
        'plan of 6 cylinders, 432 offers',
        manySuppliers(wornEngineOf(6), 12),
        folder,
        solve,
      )),
      await balancedParts(6, solve),
      await balancedParts(20, solve),
      await growth(solve),
      await wholeTradeOff(solve),
    ];
  } finally {
    rmSync(folder, { recursive: true });
  }
};
