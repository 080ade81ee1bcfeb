/** @module Rivals that append to one job at the same moment, round after round. */
import { expect } from 'vitest';
import type { JobEvent } from '../../src/job/event.ts';
import { checkChain } from '../../src/journal/chain.ts';
import type { Store } from '../../src/store/sql-store.ts';
import { journalOf, last, nextReading } from './journal-fixture.ts';

/** One rival wins each round, the others are told so, and the journal has no gap. */
export const race = async (store: Store, rivals: readonly Store[], rounds: number): Promise<void> => {
  const first = journalOf('job-a', 1);
  await store.append('job-a', 0, first);
  let head = last(first);
  for (let round = 0; round < rounds; round += 1) {
    const offers = rivals.map((_, rival) => nextReading('job-a', head, `-${rival}`));
    const answers = await Promise.all(
      rivals.map((one, rival) => one.append('job-a', head.sequence, [offers[rival] as JobEvent])),
    );
    const winners = offers.filter((_, rival) => answers[rival]?.kind === 'appended');
    expect(winners).toHaveLength(1);
    expect(answers.filter(({ kind }) => kind === 'stale')).toHaveLength(rivals.length - 1);
    head = last(winners);
  }
  const kept = await store.readFrom('job-a', 0);
  expect(kept).toHaveLength(rounds + 1);
  expect(last(kept)).toEqual(head);
  expect(checkChain(kept).kind).toBe('answer');
};
