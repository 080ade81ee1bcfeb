/** @module What deciding promises for every command, and booking in. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyFact } from '../../test/job/any-journal.ts';
import { agreed, Bench, bookedIn, booking, depthGauge, mm } from '../../test/job/bench.ts';
import { checkChain } from '../journal/chain.ts';
import type { Request } from './command.ts';
import { decide } from './decide.ts';
import { blankJob, replay } from './evolve.ts';
import { factOf, requestKinds } from './read-command.ts';
import { readEvent } from './upcast.ts';

const readingAt = (place: string, characteristic: string, plane = '', axis = 'vertical') =>
  ({
    kind: 'take reading',
    cell: { place, characteristic, plane, axis },
    typed: mm('49.980'),
    instrument: 'mic-25-50',
  }) as const;

describe('booking in', () => {
  it('opens a job with its engine type whole', () => {
    const bench = new Bench();
    const event = bench.done(booking);
    expect(event).toMatchObject({ sequence: 1, version: 1, before: '0'.repeat(64), actor: 'Ilse Quarrow' });
    expect(bench.open.sheet.engine.title).toBe('Sparrowbill 2 generator engine');
  });

  it('comes first: nothing else can be asked of a job that is not there', () => {
    expect(new Bench().refused(readingAt('main.1', 'main-journal-diameter'))).toContain(
      'book the engine in first',
    );
  });

  it('is done once', () => {
    expect(bookedIn().refused(booking)).toContain('booked in already, as 26-031');
  });

  it.each([
    ['a number', { number: ' ' }, 'job number'],
    ['an owner', { owner: '' }, 'owner'],
    ['a currency', { currency: '' }, 'currency'],
    ['hours that can be read', { hoursRun: { text: 'many', unit: 'h' } }, 'hours run'],
    ['hours in a unit of time', { hoursRun: { text: '4200', unit: 'mm' } }, 'hours run'],
    ['hours wanted above none', { hoursWanted: { text: '0', unit: 'h' } }, 'hours wanted'],
    ['days that are not less than none', { daysWanted: -1 }, 'days wanted'],
    ['a rule that can be kept', { conformance: 1 }, 'probability of conformance'],
    ['a rule with a figure', { rule: { kind: 'simple', ratio: 0 } as const }, 'decision rule'],
  ])('needs %s', (_, wrong, where) => {
    expect(new Bench().refused({ ...booking, ...wrong })).toMatch(new RegExp(`^${where} \\|`));
  });

  it('names the first error of an engine type, and the line', () => {
    const broken = booking.engineType.replace('cylinders: 2', 'cylinders: two');
    expect(new Bench().refused({ ...booking, engineType: broken })).toMatch(/^engine type, line 7 \|/);
  });

  it('needs to know who does it', () => {
    const command = {
      id: 'a',
      job: 'job-1',
      at: '2026-03-02T08:00:00Z',
      actor: ' ',
      bench: '',
      request: booking,
    };
    expect(decideOn(command)).toContain('say who you are');
  });
});

const decideOn = (command: Parameters<typeof decide>[1]): string => {
  const answer = decide(blankJob, command);
  return answer.kind === 'refused' ? answer.refusal.remedy : 'accepted';
};

describe('a job whose engine type cannot be read', () => {
  it('takes nothing, and says why', () => {
    const bench = bookedIn();
    const [first] = bench.events;
    if (first?.fact.kind !== 'booked in') throw new Error('a journal begins with a booking in');
    bench.job = replay([{ ...first, fact: { ...first.fact, engineType: 'cylinders: two' } }]);
    expect(bench.refused({ kind: 'hand over', to: 'W. Heron', note: '' })).toContain('cannot be read');
  });
});

describe('a command sent again', () => {
  it('right away is answered with the event that it became', () => {
    const bench = bookedIn();
    const asked = readingAt('main.1', 'main-journal-diameter');
    const first = bench.ask(asked, 'once');
    expect(bench.ask(asked, 'once')).toEqual(first);
    expect(bench.events).toHaveLength(4);
  });

  it('to another job is refused', () => {
    const { job } = bookedIn();
    const answer = decide(job, {
      id: 'a',
      job: 'job-2',
      at: '2026-03-02T08:00:00Z',
      actor: 'Ilse Quarrow',
      bench: 'bench 2',
      request: { kind: 'bring instrument', instrument: depthGauge },
    });
    expect(answer).toMatchObject({ kind: 'refused', refusal: { what: 'this command is for another job' } });
  });

  it('with half a character in it is refused, and not thrown about', () => {
    const bench = bookedIn();
    const { id } = bench.read('main.1', '49.980', 'vertical');
    expect(bench.refused({ kind: 'strike out reading', reading: id, why: 'dirt \ud83d' })).toContain(
      'cannot be kept',
    );
  });

  it('that is longer than a journal keeps is refused, and not cut short', () => {
    const bench = bookedIn();
    const { id } = bench.read('main.1', '49.980', 'vertical');
    expect(bench.refused({ kind: 'strike out reading', reading: id, why: 'x'.repeat(4001) })).toContain(
      '4000',
    );
  });
});

describe('whatever is asked', () => {
  const requestOf = new Map(requestKinds.map((kind) => [factOf({ kind } as Request).kind, kind]));
  const anyRequest = anyFact.map((fact) => ({ ...fact, kind: requestOf.get(fact.kind) }) as Request);

  it('is answered with an event that can be read again and fits the chain, or with a remedy', () => {
    fc.assert(
      fc.property(fc.array(anyRequest, { maxLength: 25 }), (requests) => {
        const bench = agreed();
        for (const request of requests) {
          const answer = bench.ask(request);
          if (answer.kind === 'refused') expect(answer.refusal.remedy).not.toBe('');
        }
        for (const event of bench.events)
          expect(readEvent(JSON.parse(JSON.stringify(event)))).toEqual({ kind: 'answer', value: event });
        expect(checkChain(bench.events).kind).toBe('answer');
        expect(replay(bench.events)).toEqual(bench.job);
      }),
      { numRuns: 60 },
    );
  });
});
