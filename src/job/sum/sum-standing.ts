/** @module How a sum of an operation stands: not reckoned, reckoned with other figures, not as it must be, noted. */
import type { NotedSum, OpenJob } from '../job.ts';
import type { KeptHere } from './keeping.ts';
import { notedAt } from './noted-sum.ts';
import { sumAt } from './sum-at.ts';
import type { SumPlace } from './sum-places.ts';

export type SumStanding =
  | { readonly kind: 'noted'; readonly noted: NotedSum; readonly keeps: readonly KeptHere[] }
  /** What is to be done, in words with their remedy; never empty. */
  | {
      readonly kind: 'not reckoned' | 'changed' | 'amiss';
      readonly noted?: NotedSum;
      readonly keeps: readonly KeptHere[];
      readonly says: readonly string[];
      readonly remedy: string;
    };

const amissRemedy = ({ verdict }: KeptHere): string => {
  switch (verdict) {
    case 'unsure':
      return 'measure what goes into it again, or with a finer instrument, and reckon it again';
    case 'not yet known':
      return 'give the sum all that it takes';
    default:
      return 'put it right, and reckon it again';
  }
};

const amissWords = ({ says, verdict }: KeptHere): string => {
  if (verdict === 'unsure') return `${says}, is too near its limit for how well it is known`;
  return verdict === 'outside' ? `${says}, is outside` : says;
};

/** How a sum stands at one of its places. */
export const sumStanding = (job: OpenJob, at: SumPlace): SumStanding => {
  const here = notedAt(job, at);
  if (!here) {
    const given =
      sumAt(job, at)?.inputs.flatMap((one) => (one.given?.kind === 'first' ? [one.given] : [])) ?? [];
    return {
      kind: 'not reckoned',
      keeps: [],
      says: ['not reckoned'],
      remedy: given[0]?.remedy ?? 'reckon it, and write it into the journal',
    };
  }
  const { noted, keeps, changed } = here;
  if (changed.length > 0)
    return {
      kind: 'changed',
      noted,
      keeps,
      says: changed.map((one) => `reckoned with other figures: ${one}`),
      remedy: 'reckon it again, and write it into the journal',
    };
  const amiss = keeps.filter(({ verdict }) => verdict !== 'within');
  const [first] = amiss;
  return first
    ? { kind: 'amiss', noted, keeps, says: amiss.map(amissWords), remedy: amissRemedy(first) }
    : { kind: 'noted', noted, keeps };
};
