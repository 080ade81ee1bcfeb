/** @module What came of a noted sum, in words short enough for a list. */
import type { KeptHere } from '../../job/sum/keeping.ts';
import { resultTitle } from '../../job/sum/keeping.ts';
import type { SumStanding } from '../../job/sum/sum-standing.ts';

/** A result against what is asked of it: `clearance 0.051 ± 0.006 mm, to be …: within`. */
export const keptText = ({ says, verdict }: KeptHere): string => `${says}: ${verdict}`;

/** What is asked of it and how it stands; the first of what came of it where nothing is asked. */
export const keptWords = ({ noted, keeps }: SumStanding): string => {
  if (keeps.length > 0) return keeps.map(keptText).join('; ');
  const [first] = noted?.found ?? [];
  return first ? `${resultTitle(first.key)} ${first.text}` : 'written down';
};
