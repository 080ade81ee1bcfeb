/** @module What of a job is still to be worked, in its precedence, and which parts of it are away. */
import type { Operation } from '../engine/engine-type.ts';
import { type OpenNow, openNow } from '../work/open-now.ts';
import { type Precedence, precedenceOf } from '../work/precedence.ts';
import type { OpenJob } from './job.ts';
import { openLines } from './order/open-lines.ts';
import { scopeOf } from './scope.ts';

type Phases = readonly Operation['phase'][];

/** The operations of some phases that this job takes in and nobody has signed. */
export const workLeft = (job: OpenJob, phases: Phases): Precedence => {
  const { operations } = scopeOf(job);
  return precedenceOf(
    job.sheet.engine.operations,
    ({ name, phase }) => phases.includes(phase) && operations.has(name) && !job.done.has(name),
  );
};

/** Kinds of place whose parts were sent for and are not here. */
const partsAway = (job: OpenJob): ReadonlySet<string> =>
  new Set(
    openLines(job)
      .filter(({ left }) => left > 0)
      .flatMap(({ line }) => job.sheet.engine.components.get(line.component ?? '')?.at ?? []),
  );

/** What of some phases can be done now, while parts are away. */
export const openNowOf = (job: OpenJob, phases: Phases): OpenNow => {
  const { operations } = scopeOf(job);
  const all = precedenceOf(job.sheet.engine.operations, ({ name }) => operations.has(name));
  const { open, waiting } = openNow(all, new Set(job.done.keys()), partsAway(job));
  return {
    open: open.filter(({ phase }) => phases.includes(phase)),
    waiting: waiting.filter(({ operation: { phase } }) => phases.includes(phase)),
  };
};
