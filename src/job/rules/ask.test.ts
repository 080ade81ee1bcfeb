/** @module What an operation asks: answered, counted, seen by a second person, before it is signed. */
import { describe, expect, it } from 'vitest';
import { askedBench, stripped } from '../../../test/job/asking.ts';
import { standingOf } from '../holds.ts';

const lift = { kind: 'do operation', operation: 'lift-crankshaft', note: '' } as const;
const lay = { ...lift, operation: 'lay-crankshaft' } as const;
const answered = (operation: string, ask: string, more: object = {}) =>
  ({ kind: 'answer ask', operation, ask, good: true, says: '', ...more }) as const;

describe('an operation that asks', () => {
  it('is held until all that is worth knowing as found is written down, and names each', () => {
    const bench = askedBench();
    const all = bench.refused(lift);
    for (const one of [
      'gallery plugs came out',
      'main bearing 1: Which shells',
      'main bearing 2: Which shells',
      'timing marks',
    ])
      expect(all).toContain(one);
    bench.done(answered('lift-crankshaft', 'plugs-out', { count: 7 }));
    bench.done(
      answered('lift-crankshaft', 'shells', { place: 'main.1', says: 'upper one turned a quarter' }),
    );
    bench.done(answered('lift-crankshaft', 'shells', { place: 'main.2', says: 'none' }));
    expect(bench.refused(lift)).toContain('timing marks');
    bench.done({
      kind: 'take picture',
      picture: { hash: 'a'.repeat(64), mediaType: 'image/png', width: 40, height: 40, bytes: 900 },
      of: { operation: 'lift-crankshaft' },
      says: 'marks',
    });
    bench.done(lift);
  });

  it('lets nothing that was counted out stay out: one plug short is named, before the shaft covers it', () => {
    const bench = stripped();
    bench.done(answered('lay-crankshaft', 'plugs-in', { count: 6 }));
    expect(bench.refused(lay)).toContain('6 counted here, 7 at “Lift the crankshaft”');
    const operation = bench.open.sheet.engine.operations.get('lay-crankshaft');
    const standing = operation && standingOf(bench.open, operation);
    expect(standing?.kind === 'held' && standing.lacking[0]?.remedy).toContain('find the 1 that is missing');
    bench.done(answered('lay-crankshaft', 'plugs-in', { count: 7 }));
    expect(bench.refused(lay)).not.toContain('counted here');
  });

  it('asks a second person, who is another than whoever signs', () => {
    const bench = stripped();
    bench.done(answered('lay-crankshaft', 'plugs-in', { count: 7 }));
    bench.done(answered('lay-crankshaft', 'clean'));
    expect(bench.refused(lay)).toContain('Ilse Quarrow answered what a second person must see');
    bench.done(answered('lay-crankshaft', 'clean'), 'Wat Dunmow');
    bench.done(lay);
  });

  it('is held by what is not as it should be, in the words of whoever looked', () => {
    const bench = stripped();
    expect(bench.refused(answered('lay-crankshaft', 'clean', { good: false }))).toContain(
      'what is not as it should be',
    );
    bench.done(answered('lay-crankshaft', 'clean', { good: false, says: 'swarf in oilway 2' }), 'Wat Dunmow');
    expect(bench.refused(lay)).toContain('swarf in oilway 2');
  });

  it.each([
    ['nothing of that name', answered('lift-crankshaft', 'plugs-outs', { count: 7 }), 'plugs-out'],
    ['no number where it is counted', answered('lift-crankshaft', 'plugs-out'), 'give the number'],
    [
      'a number where it is not',
      answered('lift-crankshaft', 'marks', { count: 1, says: 'x' }),
      'leave the number out',
    ],
    [
      'no place where it is asked at each',
      answered('lift-crankshaft', 'shells', { says: 'none' }),
      'at every place',
    ],
    [
      'a place of another kind',
      answered('lift-crankshaft', 'shells', { place: 'pump.1', says: 'none' }),
      'main.1',
    ],
    ['no words', answered('lift-crankshaft', 'marks'), 'write what is found'],
    ['an operation that is not there', answered('lift-crank', 'plugs-out', { count: 7 }), 'lift-crankshaft'],
  ])('refuses %s', (_, request, says) => {
    expect(askedBench().refused(request)).toContain(says);
  });

  it('takes no answer once it is signed', () => {
    expect(stripped().refused(answered('lift-crankshaft', 'plugs-out', { count: 8 }))).toContain(
      'open the operation again',
    );
  });
});
