/** @module The words and figures that facts of arbitrary journals are made of, sensible and not. */
import fc from 'fast-check';
import type { Fact } from '../../src/job/event.ts';

export const typed = fc.record({
  text: fc.oneof(
    fc.constantFrom('49.980', '59.40', '0.30', '-1', '1e9', '', '½', '0,5'),
    fc.string({ maxLength: 8 }),
  ),
  unit: fc.oneof(fc.constantFrom('mm', 'in', 'h', 'N·m', '%', ''), fc.string({ maxLength: 4 })),
});
export const place = fc.oneof(
  fc.constantFrom('main.1', 'main.2', 'pump.1', 'pump.2', 'main.0', '__proto__', 'constructor'),
  fc.string({ maxLength: 6 }),
);
export const characteristic = fc.constantFrom(
  'main-journal-diameter',
  'main-journal-ovality',
  'pump-depth',
  'toString',
  '',
);
export const component = fc.constantFrom('mains', 'pumps', 'pistons', '__proto__');
/** Ids of events of the same journal, so that strikes and answers find something now and then. */
export const eventId = fc.integer({ min: 0, max: 40 }).map((index) => `event-${index}`);
export const order = fc.constantFrom('O-1', 'O-2', '__proto__');
export const line = fc.constantFrom('mains:machine:0.25:a', 'pistons:replace:standard:b', 'one-use:seal');
export const operation = fc.constantFrom('lift-crankshaft', 'fit-pumps', 'first-start', '__proto__');
export const words = fc.string({ maxLength: 12 });
export const number = fc.oneof(fc.double({ noNaN: true, noDefaultInfinity: true }), fc.integer());

export const fact = <Kind extends Fact['kind']>(
  kind: Kind,
  body: fc.Arbitrary<Omit<Extract<Fact, { kind: Kind }>, 'kind'>>,
) => body.map((told) => ({ ...told, kind }) as unknown as Fact);
