/** @module What the chosen plan does with a component at a place. */
import type { OpenJob } from './job.ts';

/** `put back`, `machine`, `replace` …; undefined where no plan was chosen, or it says nothing of it. */
export const decided = (job: OpenJob, component: string, place: string): string | undefined =>
  optionAt(job, component, place)?.does;

/** What is done, and to which size. */
export const optionAt = (
  { plan }: Pick<OpenJob, 'plan'>,
  component: string,
  place: string,
): { readonly does: string; readonly size: string } | undefined => {
  const choice = plan?.choices.find(({ slot }) => slot === component || slot === `${component}@${place}`);
  // As options are named: slot, what is done, size, supplier.
  const [, does, size] = choice?.option.split(':') ?? [];
  return does === undefined ? undefined : { does, size: size ?? '' };
};
