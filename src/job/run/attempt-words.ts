/** @module What became of a step that was begun, in words. */
import { typedText } from '../../quantity/typed.ts';
import { gaugeTitle } from './alarm.ts';
import type { Attempt } from './attempt.ts';
import type { TakenReading } from './taken-reading.ts';

export const attemptWords = ({ passed, lacking, ended }: Attempt): string => {
  if (passed) return 'passed';
  if (ended === undefined) return `in hand: ${lacking.join('; ')}`;
  return lacking.length === 0 ? `passed, and counts no longer: ${ended.says}` : `broken off: ${ended.says}`;
};

/** What a reading comes to as a whole. */
export const readingWords = ({ judged, alarms, struckOut }: TakenReading): string => {
  if (struckOut !== undefined) return `struck out by ${struckOut.by}: ${struckOut.why}`;
  const notYet = judged.gauges.filter(({ verdict }) => verdict === 'not yet');
  const said = [
    ...alarms.map(({ says }) => `alarm: ${says}`),
    ...notYet.map((one) => `${gaugeTitle(one)} ${typedText(one.typed)}: ${one.why ?? one.limit}`),
  ];
  return said.length === 0 ? 'within' : said.join('; ');
};
