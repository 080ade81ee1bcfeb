/** @module What was read as found, before it was taken apart, proves nothing of the build. */
import { describe, expect, it } from 'vitest';
import { agreed, Bench, booking, depthGauge, micrometer } from '../../../test/job/bench.ts';
import { sparrowbill } from '../../../test/job/sparrowbill.ts';
import { lackingSinceFound } from './as-found.ts';

/** The journals are asked for before the crankshaft is lifted. */
const engineType = sparrowbill.replace(
  'cautions: [Sling it at two journals.] }',
  `cautions: [Sling it at two journals.],
    asks: { journals: { ask: The journals as found, answer: reading, reads: main-journal-diameter, each: true } } }`,
);

const cells = ['main.1', 'main.2'].flatMap((place) =>
  ['vertical', 'horizontal'].map((axis) => [place, axis] as const),
);

const lift = { kind: 'do operation', operation: 'lift-crankshaft', note: '' } as const;

const onTheBench = (): Bench => {
  const bench = new Bench();
  bench.done({ ...booking, engineType });
  bench.done({ kind: 'bring instrument', instrument: micrometer });
  bench.done({ kind: 'bring instrument', instrument: depthGauge });
  return bench;
};

const readAll = (bench: Bench): void => {
  for (const [place, axis] of cells) bench.read(place, '49.975', axis);
};

const left = (bench: Bench): readonly string[] => {
  const operation = bench.open.sheet.engine.operations.get('lay-crankshaft');
  return operation === undefined ? [] : lackingSinceFound(bench.open, operation).map(({ says }) => says);
};

describe('a hold point of the build', () => {
  it('wants to be read again what was read as found, down to the last cell', () => {
    const bench = onTheBench();
    readAll(bench);
    bench.done(lift);
    for (const [at, [place, axis]] of cells.entries()) {
      expect(left(bench)).toHaveLength(1);
      expect(left(bench)[0]).toMatch(/was read as found, before “Lift the crankshaft”/);
      bench.read(place, '49.976', axis);
      if (at === cells.length - 1) expect(left(bench)).toEqual([]);
    }
  });

  it('is content with what was read after the strip alone', () => {
    const bench = onTheBench();
    for (const place of ['main.1', 'main.2'])
      bench.done({
        kind: 'answer ask',
        operation: 'lift-crankshaft',
        ask: 'journals',
        place,
        good: true,
        says: 'read when clean',
      });
    bench.done(lift);
    readAll(bench);
    expect(left(bench)).toEqual([]);
  });

  it('holds the signature until then', () => {
    const bench = onTheBench();
    readAll(bench);
    bench.done(lift);
    for (const { fact } of agreed().events)
      if (fact.kind === 'plan chosen') bench.done({ ...fact, kind: 'choose plan' });
    bench.done({ kind: 'note agreement', name: 'W. Heron', how: 'by telephone' });
    const lay = { kind: 'do operation', operation: 'lay-crankshaft', note: '' } as const;
    expect(bench.refused(lay)).toMatch(/was read as found/);
    readAll(bench);
    bench.done(lay);
  });
});
