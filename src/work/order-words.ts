/** @module What an order of work comes to, and what is proved of it, in words. */
import { durationText } from '../quantity/moment.ts';
import type { FewestChanges } from './fewest-changes.ts';
import type { SideBySide } from './side-by-side.ts';

const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** `The engine is turned 3 times, special tools are fetched 7 times: no order does with less.` */
export const changesWords = ({ turns, fetches, atLeast, proved }: FewestChanges): string => {
  const what = `The engine is turned ${counted(turns, 'time')}, special tools are fetched ${counted(fetches, 'time')}`;
  const least = proved
    ? 'no order does with less'
    : `no order does with less than ${counted(atLeast.turns, 'turn')}${
        atLeast.turns === turns ? ` and ${counted(atLeast.fetches, 'fetch', 'fetches')}` : ''
      }; whether this is the best is not proved`;
  return `${what}: ${least}.`;
};

/** `All is done after 10 h 00 min: no way of sharing it is quicker.` */
export const sharedWords = ({ minutes, atLeast, proved }: SideBySide): string => {
  const least = proved
    ? 'no way of sharing it is quicker'
    : `no way of sharing it takes less than ${durationText(atLeast)}; whether this is the quickest is not proved`;
  return `All is done after ${durationText(minutes)}: ${least}.`;
};
