/** @module Laws of folding a journal into a job. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyFact, anyJournal } from '../../test/job/any-journal.ts';
import { agreed, booking, mm } from '../../test/job/bench.ts';
import { noHash } from '../journal/chain.ts';
import type { JobEvent } from './event.ts';
import { blankJob, evolve, evolveAll, replay } from './evolve.ts';
import { operationsOf } from './holds.ts';
import type { Job } from './job.ts';
import { phaseOf, phasesOf } from './phase.ts';
import { pumpPacksOf } from './pumps.ts';

const oneByOne = (events: readonly JobEvent[]): Job => events.reduce<Job>(evolve, blankJob);

const eventOf = (fact: JobEvent['fact'], sequence = 1): JobEvent => ({
  id: `event-${sequence}`,
  job: 'job-1',
  sequence,
  at: '2026-03-02T08:00:00Z',
  actor: 'Ilse Quarrow',
  bench: 'bench 2',
  version: 1,
  fact,
  before: noHash,
  hash: noHash,
});

const { kind: _, ...booked } = booking;

describe('a journal', () => {
  it('that makes no sense at all is folded without a throw, and so is what is shown of it', () => {
    fc.assert(
      fc.property(fc.array(anyFact, { maxLength: 30 }), (facts) => {
        const job = replay(facts.map((fact, index) => eventOf(fact, index + 1)));
        expect(job.head.sequence).toBe(facts.length);
        expect(phasesOf(job)).toHaveLength(7);
      }),
      { numRuns: 100 },
    );
  });

  it('that was booked in and then makes no sense is shown without a throw: phases, hold points, pumps', () => {
    fc.assert(
      fc.property(anyJournal, (events) => {
        const job = replay(events);
        if (job.kind !== 'open') throw new Error('it was booked in');
        expect(phaseOf(job).name.length).toBeGreaterThan(0);
        expect(operationsOf(job)).toHaveLength(4);
        expect(pumpPacksOf(job).pumps).toHaveLength(2);
      }),
      { numRuns: 200 },
    );
  });

  it('replayed in parts comes to the same job as replayed whole, and as event by event', () => {
    fc.assert(
      fc.property(anyJournal, fc.nat(), (events, cut) => {
        const at = cut % (events.length + 1);
        const whole = replay(events);
        expect(evolveAll(replay(events.slice(0, at)), events.slice(at))).toEqual(whole);
        expect(oneByOne(events)).toEqual(whole);
      }),
      { numRuns: 200 },
    );
  });

  it('is left alone by what comes after: a job once seen never changes', () => {
    fc.assert(
      fc.property(anyJournal, fc.nat(), (events, cut) => {
        const at = cut % (events.length + 1);
        const before = replay(events.slice(0, at));
        const seen = structuredClone(before);
        evolveAll(before, events.slice(at));
        for (const event of events.slice(at)) evolve(before, event);
        expect(before).toEqual(seen);
      }),
      { numRuns: 100 },
    );
  });

  it('that does not begin with a booking in is unreadable, and says so', () => {
    const job = replay([eventOf({ kind: 'handed over', to: 'W. Heron', note: '' })]);
    expect(job).toMatchObject({ kind: 'unreadable', why: { what: expect.stringContaining('booking in') } });
  });

  it('whose engine type cannot be read is unreadable, and keeps what was booked', () => {
    const job = replay([eventOf({ kind: 'booked in', ...booked, engineType: 'title: [' })]);
    expect(job).toMatchObject({ kind: 'unreadable', booked: { number: '26-031' } });
  });

  it('with a rule that cannot be kept is judged by the usual one', () => {
    const job = replay([eventOf({ kind: 'booked in', ...booked, conformance: 7 })]);
    expect(job).toMatchObject({ kind: 'open', sheet: { conformance: 0.95 } });
  });

  it('with a rule of the shop is judged by that, unless it cannot be kept', () => {
    const ruled = (ratio: number) =>
      replay([eventOf({ kind: 'booked in', ...booked, rule: { kind: 'simple', ratio } })]);
    expect(ruled(4)).toMatchObject({ kind: 'open', sheet: { rule: { kind: 'simple', ratio: 4 } } });
    const job = ruled(-1);
    expect(job.kind === 'open' && job.sheet.rule).toBeUndefined();
  });

  it('keeps two shims apart that differ by a hundredth of a millimetre', () => {
    const bench = agreed();
    bench.done({
      kind: 'count shims',
      shims: [
        { thickness: mm('0.30'), count: 1 },
        { thickness: mm('0.31'), count: 1 },
      ],
    });
    expect(bench.ask({ kind: 'fit pack', place: 'pump.1', shims: [mm('0.3'), mm('0.3')] }).kind).toBe(
      'refused',
    );
    expect(bench.ask({ kind: 'fit pack', place: 'pump.1', shims: [mm('0.3'), mm('0.31')] }).kind).toBe(
      'answer',
    );
  });
});
