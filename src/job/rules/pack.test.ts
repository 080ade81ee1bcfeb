/** @module Which shims make a pack. */
import { describe, expect, it } from 'vitest';
import { agreed, mm } from '../../../test/job/bench.ts';

describe('a shim pack', () => {
  const shims = (...rows: readonly (readonly [string, number])[]) =>
    ({ kind: 'count shims', shims: rows.map(([text, count]) => ({ thickness: mm(text), count })) }) as const;
  const pack = (place: string, ...texts: readonly string[]) =>
    ({ kind: 'fit pack', place, shims: texts.map(mm) }) as const;

  it('is made of shims that are in the box, those in other pumps not counted', () => {
    const bench = agreed();
    bench.done(shims(['0.50', 2], ['0.10', 1]));
    bench.done(pack('pump.1', '0.50', '0.10'));
    expect(bench.refused(pack('pump.2', '0.50', '0.10'))).toContain('does not hold 0.10 mm');
    bench.done(pack('pump.2', '0.5'));
    expect(bench.refused(pack('pump.2', '0.50', '0.50'))).toContain('does not hold 0.50 mm');
  });

  it('taken out of its pump goes back into the box, also when the box was counted while it was fitted', () => {
    const bench = agreed();
    bench.done(shims(['0.50', 1], ['0.30', 1]));
    bench.done(pack('pump.1', '0.50'));
    bench.done(shims(['0.30', 1]));
    expect(bench.refused(pack('pump.2', '0.50'))).toContain('does not hold');
    bench.done(pack('pump.1', '0.30'));
    bench.done(pack('pump.2', '0.50'));
    expect([...bench.open.packs.keys()]).toEqual(['pump.1', 'pump.2']);
  });

  it('is refused under no pump, with too many shims, or outside what the pump is made for', () => {
    const bench = agreed();
    bench.done(shims(['0.50', 4], ['0.10', 4]));
    expect(bench.refused(pack('main.1', '0.50'))).toContain('pump.1');
    expect(bench.refused(pack('pump.1', '0.10', '0.10', '0.10', '0.10'))).toContain('3 at most');
    expect(bench.refused(pack('pump.1', '0.50', '0.50', '0.50'))).toContain('1.5 mm is outside');
    expect(bench.refused(pack('pump.1', '0.10'))).toContain('from 0.2 mm to 1.2 mm');
    expect(
      bench.refused({ kind: 'fit pack', place: 'pump.1', shims: [{ text: '0.5', unit: 'N' }] }),
    ).toContain('shim pack, fuel pump 1');
  });

  it('is counted by thickness, each once', () => {
    expect(agreed().refused(shims(['0.50', 2], ['0.5', 1]))).toContain('counted twice');
    expect(agreed().refused(shims(['0', 2]))).toContain('not above 0');
  });
});
