/** @module What an operation that fits used parts lacks until each of them is confirmed at its own place. */
import type { Operation } from '../../engine/engine-type.ts';
import { stateWords } from '../home/home-words.ts';
import { type PartHome, partHomesOf } from '../home/part-home.ts';
import type { OpenJob } from '../job.ts';
import { type Lacking, lacking, outOfOrder } from './lacking.ts';

const awaitsHome = ({ state }: PartHome): boolean => state.kind === 'off' || state.kind === 'to go back';

/** `piston 1, piston 2 and piston 3`. */
const andList = (names: readonly string[]): string =>
  names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** Parts of an operation that must find their own place again: all that have others like them. */
export const homesAt = (job: OpenJob, { fits, phase }: Operation): readonly PartHome[] =>
  phase === 'strip' ? [] : partHomesOf(job).filter(({ tag }) => tag.keeps && fits.includes(tag.part));

export const lackingHome = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  const homes = homesAt(job, operation);
  const awaiting = homes.filter(awaitsHome).map(({ tag }) => tag.title);
  const strayed = homes.filter(({ state }) => state.kind === 'in question');
  return [
    ...strayed.map((home) =>
      lacking(
        `${home.tag.title} is in question: ${stateWords(home)}`,
        'have a named person decide where it goes',
      ),
    ),
    ...(awaiting.length === 0
      ? []
      : [
          outOfOrder(
            `${andList(awaiting)} ${awaiting.length === 1 ? 'is' : 'are'} not confirmed home`,
            'scan the tag of each at its place',
          ),
        ]),
  ];
};
