/** @module Which instruments may be brought. */
import { describe, expect, it } from 'vitest';
import { bookedIn, micrometer, mm } from '../../../test/job/bench.ts';

describe('an instrument', () => {
  it.each([
    ['whose range ends before it begins', { range: { least: mm('50'), greatest: mm('25') } }, 'range'],
    ['without a resolution', { resolution: mm('0') }, 'resolution'],
    ['whose resolution is a torque', { resolution: { text: '1', unit: 'N·m' } }, 'resolution'],
    ['with an error less than none', { permissibleError: mm('-0.001') }, 'permissible error'],
  ])('%s is refused', (_, wrong, where) => {
    expect(bookedIn().refused({ kind: 'bring instrument', instrument: { ...micrometer, ...wrong } })).toMatch(
      new RegExp(`^mic-25-50, ${where} \\|`),
    );
  });

  it('that was set in another is brought after it', () => {
    const setTo = { master: 'ring-30', size: mm('30'), shown: mm('0') };
    const gauge = { ...micrometer, name: 'gauge', kind: 'bore gauge', setTo };
    const ring = { ...micrometer, name: 'ring-30', kind: 'setting ring' };
    const bench = bookedIn();
    expect(bench.refused({ kind: 'bring instrument', instrument: gauge })).toMatch(
      /^gauge \| .*bring ring-30 first/,
    );
    bench.done({ kind: 'bring instrument', instrument: ring });
    bench.done({ kind: 'bring instrument', instrument: gauge });
    expect(bench.open.sheet.instruments.get('gauge')?.setTo).toEqual(setTo);
  });

  it('brought again with its zero checked takes the place of the one before', () => {
    const bench = bookedIn();
    bench.done({ kind: 'bring instrument', instrument: { ...micrometer, zero: mm('0.003') } });
    expect(bench.open.sheet.instruments.get('mic-25-50')?.zero).toEqual(mm('0.003'));
    expect(bench.open.sheet.instruments.size).toBe(2);
  });
});
