/** @module What gaskets, seals and other one-use items add to a plan: named lines, less what is ordered already. */
import type { OpenJob } from '../job.ts';
import type { OneUseLine } from '../offer.ts';
import { type Chosen, decidedBy, oneUseLineOf, oneUseNeeded } from './one-use.ts';
import { orderedCount } from './ordered.ts';

export const oneUseTitle = 'gaskets, seals and other one-use items';

/** Exact, in hundredths, in the order of the engine type. What is ordered already costs nothing more. */
export const oneUseLines = (
  job: Pick<OpenJob, 'sheet' | 'done' | 'orders' | 'scopes'>,
  choices: readonly Chosen[],
): readonly OneUseLine[] =>
  oneUseNeeded(job, decidedBy(choices)).map(({ item, count }) => {
    const left = Math.max(0, count - orderedCount(job, oneUseLineOf(item)));
    const says = left === 0 ? `${item.title}, already ordered, paid` : item.title;
    return { says, count, cents: item.cents * left };
  });

export const oneUseCents = (lines: readonly OneUseLine[]): number =>
  lines.reduce((sum, { cents }) => sum + cents, 0);
