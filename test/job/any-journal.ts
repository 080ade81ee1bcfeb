/** @module Journals of arbitrary facts, sensible and not, for laws that hold for every journal. */
import fc from 'fast-check';
import type { Fact, JobEvent } from '../../src/job/event.ts';
import { noHash } from '../../src/journal/chain.ts';
import {
  characteristic,
  component,
  eventId,
  fact,
  line,
  number,
  operation,
  order,
  place,
  typed,
  words,
} from './any-words.ts';
import { booking, depthGauge, micrometer } from './bench.ts';

const instrument = fc
  .tuple(
    fc.constantFrom(micrometer, depthGauge),
    fc.constantFrom('mic-25-50', 'depth-0-100', '__proto__'),
    typed,
    typed,
  )
  .map(([one, name, resolution, zero]) => ({ instrument: { ...one, name, resolution, zero } }));

/** Any fact of any kind. */
export const anyFact: fc.Arbitrary<Fact> = fc.oneof(
  fact(
    'booked in',
    words.map((owner) => ({ ...booking, owner })),
  ),
  fact('instrument brought', instrument),
  fact(
    'reading taken',
    fc.record({
      cell: fc.record({
        place,
        characteristic,
        plane: fc.constantFrom('', 'front'),
        axis: fc.constantFrom('', 'vertical'),
      }),
      typed,
      instrument: fc.constantFrom('mic-25-50', 'depth-0-100', 'none'),
    }),
  ),
  fact(
    'slip chances brought',
    fc.record({
      chances: fc.array(
        fc.record({
          slip: fc.constantFrom('thimble turn', 'no zero check', '__proto__'),
          onceIn: fc.constantFrom(0, 1, 20, -3),
        }),
        { maxLength: 3 },
      ),
    }),
  ),
  fact(
    'former overhaul brought',
    fc.record({
      number: words,
      on: fc.constant('2021-05-03'),
      hoursRun: typed,
      cells: fc.array(
        fc.record({
          cell: fc.record({
            place,
            characteristic,
            plane: fc.constantFrom('', 'front'),
            axis: fc.constantFrom('', 'vertical'),
          }),
          anew: fc.boolean(),
          size: typed,
          expanded: typed,
        }),
        { maxLength: 4 },
      ),
    }),
  ),
  fact(
    'scope set',
    fc.record({
      reach: fc.array(fc.oneof(place, fc.constantFrom('head', 'pump', 'main')), { maxLength: 3 }),
      says: words,
    }),
  ),
  fact('work begun', fc.record({ operation })),
  fact('work stopped', fc.record({ operation, why: words })),
  fact(
    'work stopped',
    fc.record({
      operation,
      why: words,
      endedAt: fc.constantFrom('2026-03-02T08:00:30Z', '1999-01-01T00:00:00Z'),
    }),
  ),
  fact('reading struck out', fc.record({ reading: eventId, why: words })),
  fact('doubt answered', fc.record({ doubt: words, why: words })),
  fact('size found', fc.record({ component, size: fc.constantFrom('standard', '0.25', 'x') })),
  fact('size found', fc.record({ component, place, size: fc.constantFrom('standard', '0.25', 'x') })),
  fact(
    'finding noted',
    fc.record({
      place,
      component,
      finding: fc.constantFrom('scored', 'sound'),
      mayGoBack: fc.boolean(),
      says: words,
    }),
  ),
  fact(
    'finding noted',
    fc.record({
      place,
      component,
      finding: fc.constant('blued'),
      mayGoBack: fc.boolean(),
      says: words,
      grade: fc.constantFrom('slight', 'severe'),
      crackTest: fc.record({
        by: fc.constantFrom('dye penetrant', 'pressure'),
        showed: fc.constantFrom('no crack', 'a crack'),
      }),
      hardness: fc.constantFrom('52 HRC', '210 HB'),
    }),
  ),
  fact(
    'picture taken',
    fc.record({
      picture: fc.record({
        hash: fc.constantFrom('a'.repeat(64), '0'.repeat(64)),
        mediaType: fc.constantFrom('image/jpeg', 'image/png'),
        width: fc.nat(20_000),
        height: fc.nat(20_000),
        bytes: fc.nat(9_000_000),
      }),
      of: fc.oneof(
        fc.constant({}),
        fc.record({ place }),
        fc.record({ operation: words }),
        fc.record({ place, finding: eventId }),
      ),
      says: words,
    }),
  ),
  fact('picture struck out', fc.record({ picture: eventId, why: words })),
  fact(
    'shims counted',
    fc.record({ shims: fc.array(fc.record({ thickness: typed, count: fc.nat(9) }), { maxLength: 5 }) }),
  ),
  fact(
    'plan chosen',
    fc.record({ choices: fc.constant([]), cents: fc.integer(), days: number, hours: number }),
  ),
  fact(
    'offer made',
    fc.record({
      number: fc.integer({ min: 1, max: 4 }),
      shop: fc.record({ name: words, address: fc.array(words, { maxLength: 2 }) }),
      plans: fc.array(
        fc.record({
          name: fc.constantFrom('A', 'B', ''),
          title: words,
          choices: fc.constant([]),
          cents: fc.integer(),
          days: number,
          hours: number,
          labour: fc.array(
            fc.record({ says: words, cents: fc.nat(9999), hours: typed, rate: fc.nat(9999) }),
            {
              maxLength: 2,
            },
          ),
        }),
        { maxLength: 3 },
      ),
      taxes: fc.array(fc.record({ name: words, rate: typed }), { maxLength: 2 }),
      currency: fc.constantFrom('EUR', ''),
      validUntil: fc.constantFrom('2026-03-31', '2020-01-01'),
      terms: words,
      token: fc.constantFrom('x'.repeat(32), 'y'.repeat(32)),
    }),
  ),
  fact('owner agreed', fc.record({ name: words, how: words })),
  fact(
    'owner agreed',
    fc.record({
      name: words,
      how: words,
      offer: fc.record({
        number: fc.integer({ min: 0, max: 4 }),
        plan: fc.constantFrom('A', 'B', ''),
        by: fc.constantFrom('link', 'note'),
      }),
    }),
  ),
  fact(
    'order placed',
    fc.record({
      order,
      supplier: words,
      lines: fc.array(
        fc.record({
          line,
          says: words,
          does: fc.constantFrom('machine', 'replace'),
          component,
          size: fc.constantFrom('standard', '0.25', 'x'),
          places: fc.array(place, { maxLength: 3 }),
          count: fc.nat(4),
          cents: fc.integer(),
        }),
        { maxLength: 3 },
      ),
      charges: fc.constant([{ says: 'setting up', cents: 100 }]),
      due: fc.constant('2026-03-20'),
      note: words,
    }),
  ),
  fact(
    'delivery received',
    fc.record({
      order,
      lines: fc.array(fc.record({ line, count: fc.nat(4) }), { maxLength: 3 }),
      note: words,
    }),
  ),
  fact(
    'certificate noted',
    fc.record({
      order,
      line,
      certificate: words,
      crackTest: fc.record({
        by: fc.constantFrom('magnetic particles', 'pressure'),
        showed: fc.constantFrom('no crack', 'a crack'),
      }),
    }),
  ),
  fact(
    'line sent back',
    fc.record({ order, line, count: fc.nat(3), places: fc.array(place, { maxLength: 3 }), why: words }),
  ),
  fact('line accepted', fc.record({ order, line, why: words })),
  fact(
    'part measured',
    fc.record({
      component,
      part: fc.constantFrom('A', 'B', '__proto__'),
      size: fc.constantFrom('standard', '0.25'),
      readings: fc.array(fc.record({ typed, instrument: fc.constantFrom('mic-25-50', 'none') }), {
        minLength: 1,
        maxLength: 3,
      }),
    }),
  ),
  fact('part set aside', fc.record({ component, part: fc.constantFrom('A', '__proto__'), why: words })),
  fact(
    'parts assigned',
    fc.record({
      component,
      places: fc.array(
        fc.record({ place, parts: fc.array(fc.constantFrom('A', 'B', 'C'), { minLength: 1, maxLength: 2 }) }),
        { minLength: 1, maxLength: 3 },
      ),
    }),
  ),
  fact('pack fitted', fc.record({ place, shims: fc.array(typed, { maxLength: 4 }) })),
  fact(
    'ask answered',
    fc.record({ operation, ask: words, place, good: fc.boolean(), says: words, count: fc.nat(9) }),
  ),
  fact(
    'stage tightened',
    fc.record({
      operation,
      fastener: fc.constantFrom('main-cap-bolts', '__proto__'),
      place,
      stage: fc.nat(3),
      bolts: fc.array(fc.constantFrom('1', '2', '3'), { minLength: 1, maxLength: 3 }),
      threadState: fc.constantFrom('dry', 'oiled', 'compound'),
      wrench: fc.constantFrom('mic-25-50', 'none'),
      adapter: fc.record({ wrench: typed, adapter: typed }),
      boltsAre: fc.constantFrom('new', 'used'),
      longest: typed,
      overruled: fc.record({ by: words, why: words }),
      note: words,
    }),
  ),
  fact('operation reopened', fc.record({ operation, why: words })),
  fact(
    'operation done',
    fc.record({
      operation,
      note: words,
      overruled: fc.record({ by: words, why: words, lacking: fc.array(words, { maxLength: 2 }) }),
    }),
  ),
  fact(
    'operation done',
    fc.record({
      operation,
      note: words,
    }),
  ),
  fact(
    'sum noted',
    fc.record({
      operation: fc.constantFrom('lay-crankshaft', 'fit-pumps', '__proto__'),
      sum: fc.constantFrom('clearance', '__proto__', ''),
      place,
      inputs: fc.array(fc.record({ key: fc.constantFrom('bore', 'shaft', '__proto__'), text: words }), {
        maxLength: 3,
      }),
      found: fc.array(fc.record({ key: words, text: words }), { maxLength: 3 }),
      fitted: words,
      note: words,
    }),
  ),
  fact(
    'part homed',
    fc.record(
      { part: place, place, operation: fc.constantFrom('lay-crankshaft', 'none') },
      { requiredKeys: ['part', 'place'] },
    ),
  ),
  fact(
    'part strayed',
    fc.record({
      parts: fc.array(place, { maxLength: 3 }),
      how: fc.constantFrom('lost', 'unmarked', 'swapped'),
      says: words,
    }),
  ),
  fact(
    'home decided',
    fc.record(
      { part: place, place, decidedBy: words, why: words },
      { requiredKeys: ['part', 'decidedBy', 'why'] },
    ),
  ),
  fact('run step logged', fc.record({ speed: typed, load: typed, minutes: number, note: words })),
  fact(
    'run step begun',
    fc.record({ step: fc.integer({ min: 0, max: 4 }), oilPressureAfter: typed, note: words }),
  ),
  fact(
    'run reading taken',
    fc.record({
      step: fc.integer({ min: 0, max: 4 }),
      minute: number,
      gauges: fc.array(
        fc.record({
          gauge: fc.constantFrom('oil-pressure', 'exhaust-temperature', 'load', 'toString'),
          cylinder: fc.integer({ min: 0, max: 3 }),
          typed,
        }),
        { maxLength: 4 },
      ),
      smoke: fc.constantFrom('clear', 'blue'),
      leaks: words,
      note: words,
    }) as never,
  ),
  fact('run reading struck out', fc.record({ reading: eventId, why: words })),
  fact('fault noted', fc.record({ says: words, place, stopsRun: fc.boolean() })),
  fact('fault put right', fc.record({ fault: eventId, done: words })),
  fact('handed over', fc.record({ to: words, note: words })),
);

const { kind: _, ...booked } = booking;

/** An engine booked in, and then anything. */
export const anyJournal: fc.Arbitrary<readonly JobEvent[]> = fc
  .array(anyFact, { maxLength: 40 })
  .map((facts) =>
    [{ kind: 'booked in', ...booked } as Fact, ...facts].map((one, index) => ({
      id: `event-${index + 1}`,
      job: 'job-1',
      sequence: index + 1,
      at: '2026-03-02T08:00:00Z',
      actor: 'Ilse Quarrow',
      bench: 'bench 2',
      version: 1,
      fact: one,
      before: noHash,
      hash: noHash,
    })),
  );
