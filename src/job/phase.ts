/** @module The seven phases of a job: what is done in each, what comes next, and in which one the job stands. */
import type { Operation } from '../engine/engine-type.ts';
import { cellTitle } from './cell-title.ts';
import type { Job, OpenJob } from './job.ts';
import { standingOffer } from './offer.ts';
import { orderSteps } from './order/order-steps.ts';
import { pumpPlaces } from './pumps.ts';
import { runInStanding } from './run/run-in-standing.ts';
import { operationsIn } from './scope.ts';
import { toMeasure } from './to-measure.ts';
import { undone } from './undone.ts';
import { unplanned } from './unplanned.ts';

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

const phase = (name: PhaseName, of: number, left: readonly string[]): Phase => {
  const done = of - left.length;
  const state = left.length === 0 ? 'done' : done > 0 ? 'begun' : 'ahead';
  return { name, state, done, of, next: left[0] ?? '' };
};

const count = (job: OpenJob, phases: readonly Operation['phase'][]): number =>
  operationsIn(job).filter((one) => phases.includes(one.phase)).length;

const when = (left: boolean, words: string): readonly string[] => (left ? [words] : []);

const measure = (job: OpenJob): Phase => {
  const { of, left } = toMeasure(job);
  return phase(
    'Measure',
    of,
    left.map((cell) => `read ${cellTitle(job.sheet.engine, cell)}`),
  );
};

const decide = (job: OpenJob): Phase => {
  const offer = standingOffer(job);
  const to = offer === undefined || offer.accepted ? 'the plan' : `offer ${offer.number}`;
  const anew = unplanned(job) !== undefined;
  const orders = orderSteps(job);
  return phase('Decide', 2 + orders.of, [
    ...when((job.plan === undefined && offer === undefined) || anew, 'choose a plan'),
    ...when(job.agreed === undefined || anew, `have the owner agree to ${to}`),
    ...orders.left,
  ]);
};

const build = (job: OpenJob): Phase => {
  const pumps = pumpPlaces(job);
  const bare = pumps.filter(({ id }) => !job.packs.has(id));
  return phase('Build', count(job, ['build', 'set']) + pumps.length, [
    ...undone(job, ['build', 'set']),
    ...bare.map(({ title }) => `fit the shim pack under ${title}`),
  ]);
};

const run = (job: OpenJob): Phase => {
  const { steps } = runInStanding(job);
  const left = steps.filter(({ standing }) => standing !== 'passed');
  return phase('Run', count(job, ['run']) + Math.max(1, steps.length), [
    ...undone(job, ['run']),
    ...left.map(({ step }) => `run in: ${step.title}`),
    ...when(steps.length === 0 && job.runLog.length === 0, 'log the run-in'),
  ]);
};

const phasesOfOpen = (job: OpenJob): readonly Phase[] => [
  phase('Book in', 1, []),
  phase('Strip', count(job, ['strip']), undone(job, ['strip'])),
  measure(job),
  decide(job),
  build(job),
  run(job),
  phase('Hand over', 1, when(job.handedOver === undefined, 'print the record and hand the engine over')),
];

/** All seven phases, in order. */
export const phasesOf = (job: Job): readonly Phase[] =>
  job.kind === 'open'
    ? phasesOfOpen(job)
    : phaseNames.map((name) =>
        phase(name, 1, [name === 'Book in' ? 'write whose engine it is, which, and why it came' : '']),
      );

/**
 * Where the job stands: in the last phase in which something has been done, or, when all of that one is done, in the
 * next one that is not. Shops that sign no strip operations are not held at Strip.
 */
export const phaseOf = (job: Job): Phase => {
  const phases = phasesOf(job);
  const last = phases.findLastIndex(({ done }) => done > 0);
  const open = phases.slice(Math.max(0, last)).find(({ state }) => state !== 'done');
  return open ?? (phases.at(-1) as Phase);
};
