/** @module A force goes through a whole job in its own unit: asked, refused, judged, written down. */
import { describe, expect, it } from 'vitest';
import { instruments } from '../../demo/instruments.ts';
import { judgeAll } from '../../src/measure/judge.ts';
import { foundSection } from '../../src/record/sections/verdicts.ts';
import { judgedJson, verdictTable } from '../../src/terminal/verdict-table.ts';
import { brambleholtText } from '../engines/demo-engines.ts';
import { Bench, booking } from './bench.ts';

const springLoad = {
  kind: 'take reading',
  cell: { place: 'valve.3', characteristic: 'spring-load', plane: '', axis: '' },
  typed: { text: '241', unit: 'N' },
  instrument: 'springs-0-600',
} as const;

const atTheSprings = (): Bench => {
  const bench = new Bench();
  bench.done({ ...booking, engineType: brambleholtText });
  for (const instrument of instruments)
    if (['springs-0-600', 'caliper-0-150'].includes(instrument.name))
      bench.done({ kind: 'bring instrument', instrument });
  return bench;
};

describe('the load of a spring', () => {
  it('is refused in a unit of length, and the units of force are named', () => {
    const said = atTheSprings().refused({ ...springLoad, typed: { text: '241', unit: 'mm' } });
    expect(said).toMatch(/valve 3.*mm is a unit of length, not of force.*give it in N, kN, lbf, kgf/);
  });

  it('is refused with an instrument that measures lengths', () => {
    const said = atTheSprings().refused({ ...springLoad, instrument: 'caliper-0-150' });
    expect(said).toContain('caliper-0-150 is a caliper and measures no force');
  });

  it('is shown in newtons in the terminal and on the record, a length beside it in millimetres', () => {
    const bench = atTheSprings();
    bench.done(springLoad);
    bench.done({
      kind: 'take reading',
      cell: { ...springLoad.cell, characteristic: 'spring-free-length' },
      typed: { text: '47.9', unit: 'mm' },
      instrument: 'caliper-0-150',
    });
    const { sheet } = bench.open;
    const known = judgeAll(sheet).filter(({ value }) => value !== undefined);
    expect(verdictTable(known, sheet.engine)).toMatch(/spring-load +241\.0 N +± \d+\.\d N +236 N to 264 N/);
    expect(known.map((one) => judgedJson(one, sheet.engine).unit)).toEqual(['mm', 'N']);
    const rows = foundSection(bench.open, judgeAll(sheet)).table?.rows.map(({ cells }) => cells.join(' | '));
    expect(rows).toEqual([
      expect.stringMatching(/47\.900 mm \| ± 0\.\d{3} mm/),
      expect.stringMatching(/at least 215 N \| 241\.0 N \| ± \d+\.\d N/),
    ]);
  });
});
