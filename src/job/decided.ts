/** @module What the chosen plan does with a component at a place. */
import type { OpenJob } from './job.ts';

/** `put back`, `machine`, `replace` …; undefined where no plan was chosen, or it says nothing of it. */
export const decided = (job: OpenJob, component: string, place: string): string | undefined => {
  const choice = job.plan?.choices.find(({ slot }) => slot === component || slot === `${component}@${place}`);
  return choice?.option.split(':')[1];
};
