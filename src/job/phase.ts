/** @module The seven phases of a job: what is done in each, what comes next, and in which one the job stands. */
import type { EngineType } from '../engine/engine-type.ts';
import { type Cell, cellKey } from '../measure/reading.ts';
import { entryOrder } from '../measure/scheme.ts';
import { cellTitle } from './cell-title.ts';
import type { Job, OpenJob } from './job.ts';
import { undone } from './undone.ts';

export const phaseNames = ['Book in', 'Strip', 'Measure', 'Decide', 'Build', 'Run', 'Hand over'] as const;
export type PhaseName = (typeof phaseNames)[number];

export interface Phase {
  readonly name: PhaseName;
  readonly state: 'done' | 'begun' | 'ahead';
  /** Steps done, of so many. */
  readonly done: number;
  readonly of: number;
  /** What comes next in it, in words; `''` when nothing is left. */
  readonly next: string;
}

const phase = (name: PhaseName, done: number, of: number, next: string): Phase => {
  const state = done >= of ? 'done' : done > 0 ? 'begun' : 'ahead';
  return { name, state, done, of, next: state === 'done' ? '' : next };
};

/** The cells of an engine never change; 300 of them are asked for at every reading. */
const cellsKnown = new WeakMap<EngineType, readonly { readonly cell: Cell; readonly key: string }[]>();

const everyCell = (engine: EngineType) => {
  const known = cellsKnown.get(engine);
  if (known !== undefined) return known;
  const cells = entryOrder(engine).map((cell) => ({ cell, key: cellKey(cell) }));
  cellsKnown.set(engine, cells);
  return cells;
};

/** The cells still to be read, in the order in which hands go. */
export const cellsToRead = (job: OpenJob): readonly Cell[] =>
  everyCell(job.sheet.engine)
    .filter(({ key }) => !job.sheet.readings.has(key))
    .map(({ cell }) => cell);

const bookIn = (job: Job): Phase =>
  phase('Book in', job.kind === 'open' ? 1 : 0, 1, 'write whose engine it is, which, and why it came');

const strip = (job: OpenJob): Phase => {
  const of = [...job.sheet.engine.operations.values()].filter((one) => one.phase === 'strip').length;
  const left = undone(job, ['strip']);
  return phase('Strip', of - left.length, of, left[0] ?? '');
};

const measure = (job: OpenJob): Phase => {
  const of = everyCell(job.sheet.engine).length;
  const left = cellsToRead(job);
  const [next] = left;
  return phase('Measure', of - left.length, of, next ? `read ${cellTitle(job.sheet.engine, next)}` : '');
};

const decide = (job: OpenJob): Phase => {
  const done = (job.plan === undefined ? 0 : 1) + (job.agreed === undefined ? 0 : 1);
  return phase(
    'Decide',
    done,
    2,
    job.plan === undefined ? 'choose a plan' : 'have the owner agree to the plan',
  );
};

const build = (job: OpenJob): Phase => {
  const { engine } = job.sheet;
  const operations = [...engine.operations.values()].filter((one) => one.phase === 'build').length;
  const pumps = [...engine.places.values()].filter(({ kind }) => kind === engine.pumpTiming?.at);
  const bare = pumps.filter(({ id }) => !job.packs.has(id));
  const left = [...undone(job, ['build']), ...bare.map(({ title }) => `fit the shim pack under ${title}`)];
  // An engine type may list nothing to build: the phase is then done once the owner has agreed.
  const of = operations + pumps.length + 1;
  const agreed = job.agreed === undefined ? 0 : 1;
  return phase('Build', of - 1 - left.length + agreed, of, left[0] ?? 'have the owner agree to the plan');
};

const run = (job: OpenJob): Phase => {
  const operations = [...job.sheet.engine.operations.values()].filter(
    (one) => one.phase === 'set' || one.phase === 'run',
  ).length;
  const left = undone(job, ['set', 'run']);
  const logged = job.runLog.length > 0 ? 1 : 0;
  return phase('Run', operations - left.length + logged, operations + 1, left[0] ?? 'log the run-in');
};

const handOver = (job: OpenJob): Phase =>
  phase('Hand over', job.handedOver === undefined ? 0 : 1, 1, 'print the record and hand the engine over');

/** All seven phases, in order. */
export const phasesOf = (job: Job): readonly Phase[] =>
  job.kind === 'open'
    ? [bookIn(job), strip(job), measure(job), decide(job), build(job), run(job), handOver(job)]
    : [bookIn(job), ...phaseNames.slice(1).map((name) => phase(name, 0, 1, ''))];

/**
 * Where the job stands: in the last phase that has been begun, or, if all of that one is done, in the next one
 * that is not.
 */
export const phaseOf = (job: Job): Phase => {
  const phases = phasesOf(job);
  const last = phases.findLastIndex(({ state, done }) => state === 'begun' || (state === 'done' && done > 0));
  const from = Math.max(0, last);
  return phases.slice(from).find(({ state }) => state !== 'done') ?? (phases.at(-1) as Phase);
};
