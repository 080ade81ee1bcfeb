/** @module Journals for the store's tests: the demonstration engine booked in, then reading after reading. */
import { readFileSync } from 'node:fs';
import type { Fact, JobEvent } from '../../src/job/event.ts';
import { noHash, seal } from '../../src/journal/chain.ts';
import type { JournalsToTry } from './journals-contract.ts';

const engineType = readFileSync(new URL('../../demo/engines/quillfeather-3w.yaml', import.meta.url), 'utf8');

export const booking: Fact = {
  kind: 'booked in',
  number: '26-014',
  engineType,
  owner: 'Tolliver Marsh Drainage Board',
  plate: 'QF3W-00417',
  hoursRun: { text: '6120', unit: 'h' },
  complaint: 'smokes, slow to start',
  currency: 'EUR',
  conformance: 0.95,
};

/** Readings of one journal over and over: as long a journal as is asked for. */
const reading = (index: number): Fact => ({
  kind: 'reading taken',
  cell: {
    place: `main.${(index % 4) + 1}`,
    characteristic: 'main-journal-diameter',
    plane: index % 8 < 4 ? 'front' : 'rear',
    axis: index % 16 < 8 ? 'vertical' : 'horizontal',
  },
  typed: { text: (54.9 + (index % 90) / 1000).toFixed(3), unit: 'mm' },
  instrument: 'mic-50-75',
});

/** An event after another one, or a job's first. `mark` tells rivals apart. */
export const eventAfter = (job: string, before: JobEvent | undefined, fact: Fact, mark = ''): JobEvent => {
  const sequence = (before?.sequence ?? 0) + 1;
  const sealed = seal({
    id: `${job}-${sequence}${mark}`,
    job,
    sequence,
    at: `2026-03-02T08:${String(Math.floor(sequence / 60) % 60).padStart(2, '0')}:${String(sequence % 60).padStart(2, '0')}Z`,
    actor: 'Ilse Quarrow',
    bench: 'bench 2',
    version: 1,
    fact,
    before: before?.hash ?? noHash,
  });
  if (sealed.kind === 'refused') throw new Error(sealed.refusal.what);
  return sealed.value;
};

/** A journal of so many events. */
export const journalOf = (job: string, length: number): readonly JobEvent[] => {
  const events: JobEvent[] = [];
  for (let index = 0; index < length; index += 1)
    events.push(eventAfter(job, events.at(-1), index === 0 ? booking : reading(index)));
  return events;
};

/** The next reading of a job. */
export const nextReading = (job: string, before: JobEvent, mark = ''): JobEvent =>
  eventAfter(job, before, reading(before.sequence), mark);

export const jobJournals: JournalsToTry<JobEvent> = {
  of: (store) => store,
  journalOf,
  next: (job, before, mark) =>
    before === undefined ? eventAfter(job, before, booking, mark) : nextReading(job, before, mark),
};

export const last = <Event>(events: readonly Event[]): Event => {
  const event = events.at(-1);
  if (event === undefined) throw new Error('the journal has events');
  return event;
};
