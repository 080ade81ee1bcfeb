/** @module Registers for the store's tests: a micrometer entered, then checked on its zero over and over. */
import { seal } from '../../src/journal/chain.ts';
import { headAt, noHead } from '../../src/journal/head.ts';
import type { RegisterEvent, RegisterFact } from '../../src/register/event.ts';
import type { JournalsToTry } from './journals-contract.ts';

const mm = (text: string) => ({ text, unit: 'mm' });

const entered: RegisterFact = {
  kind: 'instrument entered',
  instrument: {
    name: 'mic-50-75',
    kind: 'outside micrometer',
    range: { least: mm('50'), greatest: mm('75') },
    resolution: mm('0.001'),
    permissibleError: mm('0.004'),
    repeatability: mm('0.001'),
  },
};

const checked = (count: number): RegisterFact => ({
  kind: 'instrument checked',
  name: 'mic-50-75',
  against: 'zero',
  showed: mm(`0.00${count % 5}`),
  good: true,
  note: '',
});

const next = (id: string, before: RegisterEvent | undefined, mark = ''): RegisterEvent => {
  const head = before === undefined ? noHead : headAt(before);
  const sequence = head.sequence + 1;
  const sealed = seal<RegisterFact>({
    id: `${id}-${sequence}${mark}`,
    job: id,
    sequence,
    at: '2026-03-02T08:00:00Z',
    actor: 'Ilse Quarrow',
    bench: 'bench 2',
    version: 1,
    fact: before === undefined ? entered : checked(sequence),
    before: head.hash,
  });
  if (sealed.kind === 'refused') throw new Error(sealed.refusal.what);
  return sealed.value;
};

/** A register's journal of so many events. */
export const registerOf = (id: string, length: number): readonly RegisterEvent[] => {
  const events: RegisterEvent[] = [];
  while (events.length < length) events.push(next(id, events.at(-1)));
  return events;
};

export const registerJournals: JournalsToTry<RegisterEvent> = {
  of: ({ register }) => register,
  journalOf: registerOf,
  next,
};
