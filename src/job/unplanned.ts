/** @module What the chosen plan says nothing of, or too much of, since the scope of the job was set anew. */
import { slotsIn } from '../plan/unopened.ts';
import type { OpenJob } from './job.ts';
import { planQuestionOf } from './planning.ts';

const known = new WeakMap<OpenJob, string | undefined>();

const unplannedIn = (job: OpenJob): string | undefined => {
  // Without a scope the plan was refused unless it decided everything.
  if (job.plan === undefined || job.scopes.length === 0) return undefined;
  const slots = slotsIn(planQuestionOf(job));
  const chosen = new Set(job.plan.choices.map(({ slot }) => slot));
  const left = slots.filter(({ name }) => !chosen.has(name));
  const [first] = left;
  if (first !== undefined)
    return `the plan says nothing of ${first.title}${left.length > 1 ? ` and ${left.length - 1} more` : ''}, laid open since`;
  return chosen.size > slots.length
    ? 'the plan decides on parts that this job does not open any more'
    : undefined;
};

/** In words; undefined where the plan decides on just what is in question, or none is chosen. */
export const unplanned = (job: OpenJob): string | undefined => {
  if (!known.has(job)) known.set(job, unplannedIn(job));
  return known.get(job);
};
