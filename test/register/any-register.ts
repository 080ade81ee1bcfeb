/** @module Arbitrary facts of a register, sensible and not, for laws that hold for every journal of one. */
import fc from 'fast-check';
import { noHash } from '../../src/journal/chain.ts';
import { type RegisterEvent, type RegisterFact, registerId } from '../../src/register/event.ts';
import { mic } from './shop.ts';

const typed = fc.record({
  text: fc.oneof(
    fc.constantFrom('0.001', '-0.002', '50.000', '1e9', '', '½', '0,5'),
    fc.string({ maxLength: 6 }),
  ),
  unit: fc.oneof(fc.constantFrom('mm', 'in', 'N·m', '°C', ''), fc.string({ maxLength: 3 })),
});
const name = fc.constantFrom('mic-50-75', 'mic-50-75', 'bore-1', '__proto__', 'constructor');
const words = fc.string({ maxLength: 10 });
const day = fc.oneof(fc.constantFrom('2026-03-02', '2025-01-31', '2027-02-28', '2026-02-30', ''), words);
/** Some kinds of instruments, known and not. */
const kind = fc.constantFrom('outside micrometer', 'bore gauge', 'torque wrench', 'setting ring', 'sundial');

/** Any fact of any kind. */
export const anyRegisterFact: fc.Arbitrary<RegisterFact> = fc.oneof(
  fc.record({
    kind: fc.constant('instrument entered' as const),
    instrument: fc
      .record({ name, kind, resolution: typed, zero: typed })
      .chain((odd) => fc.constantFrom({ ...mic, name: odd.name }, { ...mic, ...odd })),
  }),
  fc
    .record({
      kind: fc.constant('instrument checked' as const),
      name,
      against: words,
      size: typed,
      showed: fc.oneof(fc.constant({ text: '0.002', unit: 'mm' }), typed),
      good: fc.boolean(),
      note: words,
    })
    .chain(({ size, ...rest }) => fc.constantFrom(rest, { ...rest, size })),
  fc.record({
    kind: fc.constant('instrument calibrated' as const),
    name,
    certificate: words,
    on: day,
    due: day,
    foundGood: fc.boolean(),
    correction: typed,
    uncertainty: typed,
    note: words,
  }),
  fc.record({ kind: fc.constant('instrument withdrawn' as const), name, why: words }),
  fc.record({ kind: fc.constant('instrument put back' as const), name, why: words }),
  fc.record({
    kind: fc.constant('slip chance set' as const),
    slip: fc.constantFrom('thimble turn', 'no zero check', '__proto__'),
    onceIn: fc.constantFrom(0, 1, 20, -3, 1e9),
    why: words,
  }),
  fc.record({
    kind: fc.constant('slip chance left as usual' as const),
    slip: fc.constantFrom('thimble turn', 'constructor'),
    why: words,
  }),
  fc.record({
    kind: fc.constant('entry struck out' as const),
    entry: fc.integer({ min: 0, max: 30 }).map((at) => `entry-${at}`),
    why: words,
  }),
  fc.record({
    kind: fc.constant('workshop described' as const),
    workshop: fc.record({
      name: words,
      address: fc.array(words, { maxLength: 3 }),
      currency: words,
      taxes: fc.array(fc.record({ name: words, rate: typed }), { maxLength: 2 }),
      labour: fc.array(fc.record({ says: words, cents: fc.nat(10_000) }), { maxLength: 2 }),
      validDays: fc.integer({ min: -1, max: 400 }),
      terms: words,
    }),
  }),
);

/** A fact as it lies in a journal, in its place. */
export const inJournal = (fact: RegisterFact, index: number): RegisterEvent => ({
  id: `entry-${index + 1}`,
  job: registerId,
  sequence: index + 1,
  at: '2026-03-02T08:00:00Z',
  actor: 'Ilse Quarrow',
  bench: 'bench 2',
  version: 1,
  fact,
  before: noHash,
  hash: noHash,
});
