/** @module At which size a component's part at a place is fitted now, and at which the plan will have it. */
import { fittedSize } from '../measure/fitted-size.ts';
import { optionAt } from './decided.ts';
import type { OpenJob } from './job.ts';

export interface SizeAt {
  /** As it stands there now: as it came, was found, or was left. */
  readonly fitted: string;
  /** By the plan that was chosen; what goes back stays as it is. Missing where there is no plan. */
  readonly planned?: string;
}

/** The sizes of a component's part at a place: now, and as planned. */
export const sizeAt = (job: Pick<OpenJob, 'sheet' | 'plan'>, component: string, place: string): SizeAt => {
  const fitted = fittedSize(job.sheet, component, place);
  const option = optionAt(job, component, place);
  if (option === undefined) return { fitted };
  return { fitted, planned: option.does === 'put back' ? fitted : option.size };
};

/** The size that is to be built in there: as planned, else as it stands. */
export const sizeToFit = (job: Pick<OpenJob, 'sheet' | 'plan'>, component: string, place: string): string => {
  const { fitted, planned } = sizeAt(job, component, place);
  return planned ?? fitted;
};
