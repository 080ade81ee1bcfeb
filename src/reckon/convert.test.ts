/** @module A figure is given in another unit, with what it is known to. */
import { describe, expect, it } from 'vitest';
import { outsideCheck } from '../../test/outside-check.ts';
import { reckonByName } from './list.ts';

const ask = (value: string, to: string) => reckonByName('convert', { value, to });

describe('converting', () => {
  // source: definitions, see the unit list; JCGM 100 knows no other way than the factor for an uncertainty
  it.each([
    ['1in', 'mm', { value: 25.4, unit: 'mm' }],
    ['2 9/16 in', 'mm', { value: 65.0875, unit: 'mm' }],
    ['54,980 µm', 'mm', { value: 0.05498, unit: 'mm' }],
    ['68 °F', 'degC', { value: 20, unit: '°C' }],
    ['0 K', '°C', { value: -273.15, unit: '°C' }],
    ['1 bar', 'kPa', { value: 100, unit: 'kPa' }],
    ['1 lbf.ft', 'Nm', { value: 1.3558179483314, unit: 'N·m' }],
    ['1500 1/min', 'Hz', { value: 25, unit: 'Hz' }],
    ['25.4 ± 0.0254 mm', 'in', { value: 1, unit: 'in', u: expect.closeTo(0.001 / 1.959964, 8) }],
    ['25.4 mm ± 0.0254', 'in', { value: 1, unit: 'in', u: expect.closeTo(0.001 / 1.959964, 8) }],
    ['68 ± 1.8 °F', '°C', { value: 20, unit: '°C', u: expect.closeTo(1 / 1.959964, 6) }],
  ])('%s to %s', (value, to, expected) => {
    const asked = ask(value, to);
    expect(asked.kind === 'answer' && asked.value.results).toEqual({ value: expected });
    const got = asked.kind === 'answer' ? Number(asked.value.results.value?.value) : Number.NaN;
    outsideCheck('convert', 'definitions of the units', '%', 1e-9)(got, expected.value);
  });

  it.each([
    ['1in', 'deg', 'deg is a unit of angle, not of length', 'to=deg'],
    ['1in', 'furlong', 'there is no unit furlong', 'to=furlong'],
    ['1', 'mm', 'the unit is missing', 'value=1'],
    ['1 furlong', 'mm', 'there is no unit furlong', 'value=1 furlong'],
    ['x in', 'mm', 'the unit is missing', 'value=x in'],
    ['-500 °F', 'K', '-500 °F is out of range', 'value'],
    ['1 ± in', 'mm', 'the unit is missing', 'value=1 ± in'],
  ])('refuses %s to %s', (value, to, what, where) => {
    const asked = ask(value, to);
    expect(asked.kind === 'refused' && [asked.refusal.what, asked.refusal.where]).toEqual([what, where]);
  });
});
