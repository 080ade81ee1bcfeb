/** @module A finding in words: what was seen, how bad it is, and what tests without a limit showed. */
import type { Fact } from './event.ts';

type Told = Pick<
  Extract<Fact, { readonly kind: 'finding noted' }>,
  'finding' | 'grade' | 'crackTest' | 'hardness'
>;

/** Whether a part is cracked: seen by eye, or shown by a test. */
export const isCracked = ({ finding, crackTest }: Told): boolean =>
  finding === 'cracked' || crackTest?.showed === 'a crack';

/**
 * A finding as the record and the sheet write it.
 *
 * @example findingWords({ finding: 'scored', grade: 'slight', hardness: '52 HRC' }) // 'scored, slight; hardness 52 HRC'
 */
export const findingWords = ({ finding, grade, crackTest, hardness }: Told): string =>
  [
    grade === undefined ? finding : `${finding}, ${grade}`,
    ...(crackTest === undefined ? [] : [`crack test by ${crackTest.by}: ${crackTest.showed}`]),
    ...(hardness === undefined ? [] : [`hardness ${hardness}`]),
  ].join('; ');
