/** @module The record's parts that found home: what was confirmed where, what strayed, and who decided. */
import { homeWords, stateWords } from '../../job/home/home-words.ts';
import type { Homing } from '../../job/home/homing.ts';
import { partHomesOf } from '../../job/home/part-home.ts';
import type { OpenJob } from '../../job/job.ts';
import { timeText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';

const titleOf = (job: OpenJob, part: string): string =>
  partHomesOf(job).find(({ tag }) => tag.id === part)?.tag.title ?? part;

const told = (job: OpenJob, one: Homing): RecordRow => {
  const signed = `${timeText(one.at)}, ${one.by}`;
  switch (one.kind) {
    case 'part homed':
      return {
        of: `${one.part} homed`,
        cells: [titleOf(job, one.part), `confirmed at ${titleOf(job, one.place)}`, '', signed],
      };
    case 'part strayed':
      return {
        of: `${one.parts.join(' ')} strayed`,
        cells: [one.parts.map((part) => titleOf(job, part)).join(', '), one.how, one.says, signed],
        marked: true,
      };
    case 'home decided':
      return {
        of: `${one.part} decided`,
        cells: [
          titleOf(job, one.part),
          `${one.decidedBy} decided: ${one.place === undefined ? 'another part goes there' : `goes to ${titleOf(job, one.place)}`}`,
          one.why,
          signed,
        ],
        marked: true,
      };
    default:
      return one satisfies never;
  }
};

/** Nothing where no part was confirmed and none strayed. */
export const homeSections = (job: OpenJob): readonly RecordSection[] => {
  if (job.homing.length === 0) return [];
  const left = partHomesOf(job).filter(
    ({ tag, state }) =>
      tag.keeps && state.kind !== 'home' && state.kind !== 'fitted' && state.kind !== 'on the engine',
  );
  return [
    {
      name: 'homes',
      title: 'Parts that went back to their own places',
      says: left.map((home) => `${home.tag.title} (${homeWords(job, home)}): ${stateWords(home)}.`),
      table: {
        heads: ['Part', 'What was noted', 'Why', 'Noted by'],
        rows: job.homing.map((one) => told(job, one)),
      },
      derived: false,
    },
  ];
};
