/** @module Whatever instruments, masters, temperatures and repeats a sheet holds, verdicts are numbers and nothing breaks. */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { micrometer, sheetOf, smallEngine, typed } from '../../test/engines/small-engine.ts';
import type { DecisionRule } from './decision-rule.ts';
import type { Instrument } from './instrument.ts';
import { judgeAll } from './judge.ts';
import type { Reading } from './reading.ts';
import { entryOrder } from './scheme.ts';
import { settle } from './settle.ts';

const names = ['mic-50-75', 'gauge', 'ring', 'odd'];
const length = fc
  .oneof(
    fc.constantFrom('0', '0.000', '55', '1e12', '-3', 'x', '', '1e-9'),
    fc.integer({ min: -200, max: 60_000 }).map((n) => (n / 1000).toFixed(3)),
  )
  .map((text) => typed(text));
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });
const given = (fields: Readonly<Record<string, unknown>>) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined));

const instrument = fc
  .record({
    kind: fc.constantFrom('outside micrometer', 'bore gauge', 'setting ring', 'spring tester'),
    resolution: length,
    permissibleError: length,
    repeatability: length,
    zero: maybe(length),
    setTo: maybe(fc.record({ master: fc.constantFrom(...names), size: length, shown: length })),
    correction: maybe(length),
    correctionUncertainty: maybe(length),
    material: maybe(fc.constantFrom('steel', 'aluminium')),
  })
  .map((made) => ({ ...micrometer, ...made }));

const cells = entryOrder(smallEngine);
const heat = maybe(fc.constantFrom('20', '35', '-10', 'hot', '1e9').map((text) => typed(text, '°C')));
const taken = fc.record({
  cell: fc.constantFrom(...cells),
  typed: length,
  instrument: fc.constantFrom(...names),
  temperature: heat,
  instrumentTemperature: heat,
});

const rule = maybe(
  fc.constantFrom<DecisionRule>(
    { kind: 'simple', ratio: 4 },
    { kind: 'shared risk', conformance: 0.5 },
    { kind: 'guarded', conformance: 0.5 },
  ),
);

it('a sheet of anything is judged in numbers, and what would settle it is told', () => {
  fc.assert(
    fc.property(
      fc.array(instrument, { minLength: 4, maxLength: 4 }),
      fc.array(taken, { maxLength: 60 }),
      rule,
      (made, readings, asked) => {
        const register = made.map(
          (each, index) => ({ ...given(each), name: names[index] ?? '' }) as Instrument,
        );
        const sheet = sheetOf(
          readings.map((each, index) => ({ ...given(each), id: `${index}` }) as unknown as Reading),
          { instruments: new Map(register.map((each) => [each.name, each])), ...(asked && { rule: asked }) },
        );
        for (const judged of judgeAll(sheet)) {
          for (const figure of [judged.value?.value, judged.expanded, judged.conformance]) {
            expect(figure === undefined || Number.isFinite(figure)).toBe(true);
          }
          expect(judged.conformance ?? 0.5).toBeGreaterThanOrEqual(0);
          expect(judged.conformance ?? 0.5).toBeLessThanOrEqual(1);
          const proposals = settle(sheet, judged.characteristic, judged.place, register);
          expect(judged.verdict === 'unsure' ? proposals.length > 0 : true).toBe(true);
          for (const { says, minutes } of proposals) {
            expect(says).not.toMatch(/NaN|Infinity|undefined/);
            expect(minutes).toBeGreaterThanOrEqual(0);
          }
        }
      },
    ),
    { numRuns: 300 },
  );
});
