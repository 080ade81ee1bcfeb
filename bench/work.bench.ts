/** @module The order of work: 500 operations within a frame, and fewest changes against a command-line solver. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Operation } from '../src/engine/engine-type.ts';
import { fewestChanges } from '../src/work/fewest-changes.ts';
import { orderOf } from '../src/work/order.ts';
import { precedenceOf } from '../src/work/precedence.ts';
import { reach } from '../src/work/reach.ts';
import { quillfeather } from '../test/engines/demo-engines.ts';
import { seeded } from '../test/engines/worn-engine.ts';
import { ask, lacking } from '../test/outside/program.ts';
import { bookOf, operation } from '../test/work/any-work.ts';
import { changesModel } from '../test/work/changes-model.ts';
import { type BenchRow, inTurns } from './bench.ts';

export const name = 'order of work';

const frame = 1000 / 60;
const mostSeconds = 20;

/** Each operation after up to three of the thirty before it, every fourth asking for a lie, every fifth for tools. */
const made = (size: number, seed: number): readonly Operation[] => {
  const random = seeded(seed);
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  return Array.from({ length: size }, (_, at) => {
    const after = Array.from({ length: 3 }, () => at - 1 - Math.floor(30 * random())).filter(
      (one) => one >= 0,
    );
    return operation(`op-${at}`, {
      after: [...new Set(after)].map((one) => `op-${one}`),
      ...(random() < 0.25 && { stand: pick(['upright', 'upside-down', 'on-its-side']) }),
      ...(random() < 0.2 && { tools: [pick(['puller', 'beam', 'bar', 'compressor'])] }),
      ...(at === size - 1 && { at: 'main' }),
    });
  });
};

const rows = async (folder: string): Promise<readonly BenchRow[]> => {
  const book = bookOf(made(500, 5));
  const engine = { ...quillfeather(), operations: book };
  const goal = async (what: string, work: () => unknown): Promise<BenchRow> => {
    const { ours } = await inTurns(work, () => undefined);
    return { what, against: 'one frame, 60 a second', unit: 'ms', ours, other: frame };
  };
  const small = made(9, 8).map((one, at) => ({
    ...one,
    stand: ['upright', 'upside-down', 'on-its-side'][at % 3] ?? 'upright',
    after: one.after.slice(0, 1),
  }));
  const found = fewestChanges(precedenceOf(bookOf(small)));
  if (!found.proved) throw new Error('the fewest changes of nine operations are not proved');
  const file = join(folder, 'changes.lp');
  writeFileSync(file, changesModel(small, 100));
  const solver = () => ask('glpsol', ['--lp', file, '--tmlim', `${mostSeconds}`]);
  const told = solver();
  const stopped = /TIME LIMIT EXCEEDED/.test(told);
  const changes = await inTurns(() => fewestChanges(precedenceOf(bookOf(small))), solver, stopped ? 1 : 3);
  return [
    await goal('strip order, 500 operations', () => orderOf(precedenceOf(book))),
    await goal('reach a place, 500 operations', () => reach(engine, 'main.2')),
    {
      what: `fewest changes, 9 operations: ${found.turns} turns, ${found.fetches} fetches, proved`,
      against: 'glpsol on the same work',
      unit: 'ms',
      ...changes,
      ...(stopped && { note: `glpsol was stopped after ${mostSeconds} s, not done` }),
    },
  ];
};

export const run = async (): Promise<readonly BenchRow[]> => {
  const lacks = lacking('glpsol');
  if (lacks) throw new Error(lacks);
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-bench-work-'));
  try {
    return await rows(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
};
