/** @module Sizes taken warm, brought to 20 °C, against the guide's end gauge and handbook figures. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { micrometer, reading, sheetOf, smallEngine, typed } from '../../test/engines/small-engine.ts';
import { atReference } from './expansion.ts';
import { judgeCell } from './judge.ts';
import { sizeOf } from './size.ts';

describe('a size at 20 °C', () => {
  it.each([
    // source: 100 mm of steel by 10 °C is 11.5 µm (11.5e-6 per °C, ISO 3650): part warm, instrument at 20 °C
    ['steel', 30, 20, -0.0115],
    // source: aluminium 22 to 23e-6 against a steel tool, both 10 °C up: some 10 to 11.5 µm net
    ['aluminium', 30, 30, -0.01],
    ['steel', 30, 30, 0],
    ['cast iron', 30, 30, 0.0007],
    ['steel', 20, 30, 0.0115],
  ] as const)('of 100 mm of %s at %f °C with the instrument at %f °C', (partOf, part, instrument, moved) => {
    const { factor } = atReference({ part, instrument, partOf });
    expect(100 * (factor - 1)).toBeCloseTo(moved, 4);
  });

  it('agrees to first order with the model of the end gauge', () => {
    // source: JCGM 100:2008, H.1, equation (H.3): l = lS + d - lS (δα θ + αS δθ), with δα = α - αS, δθ = θ - θS
    fc.assert(
      fc.property(between(0, 40), between(0, 40), (part, instrument) => {
        const alpha = { steel: 11.5e-6, aluminium: 21.5e-6 };
        const theta = part - 20;
        const model = 1 - ((alpha.aluminium - alpha.steel) * theta + alpha.steel * (part - instrument));
        const { factor } = atReference({ part, instrument, partOf: 'aluminium' });
        expect(Math.abs(factor - model)).toBeLessThan(4e-7);
      }),
    );
  });

  it('knows the difference of two temperatures better than that of one taken for both', () => {
    const one = atReference({ part: 30, partOf: 'steel' });
    const two = atReference({ part: 30, instrument: 30, partOf: 'steel' });
    expect(two.temperature).toBeLessThan(one.temperature);
    expect(two.factor).toBe(one.factor);
  });

  it('of a part of no stated material is not moved where part and instrument are equally warm', () => {
    const { factor, expansion } = atReference({ part: 35 });
    expect(factor).toBe(1);
    // source: a light alloy (about 23e-6) against steel, rectangular; from memory
    expect(expansion).toBeCloseTo((12e-6 * 15) / Math.sqrt(3), 12);
  });

  it('is known the better the nearer to 20 °C it was taken', () => {
    fc.assert(
      fc.property(between(0, 30), between(0, 30), (a, b) => {
        const [near, far] = a < b ? [a, b] : [b, a];
        const spread = (off: number) => atReference({ part: 20 + off, partOf: 'aluminium' }).expansion;
        expect(spread(far)).toBeGreaterThanOrEqual(spread(near));
      }),
    );
  });
});

describe('a warm reading', () => {
  const warm = {
    ...reading('piston.1 piston-diameter', typed('84.920')),
    temperature: typed('40', '°C'),
  };

  it('of a piston whose material is stated is brought back', () => {
    const size = sizeOf(warm, micrometer, { material: 'aluminium' });
    // 84.92 mm × 10e-6 × 20 °C are 17 µm.
    expect(size.kind === 'answer' && size.value.value).toBeCloseTo(84.92 - 0.017, 4);
  });

  it('has its material from the engine type', () => {
    const piston = smallEngine.characteristics.get('piston-diameter');
    if (!piston) throw new Error('no piston');
    const engine = {
      ...smallEngine,
      characteristics: new Map([
        ...smallEngine.characteristics,
        [piston.name, { ...piston, material: 'aluminium' as const }],
      ]),
    };
    const size = (sheet = sheetOf([warm], { engine })) => judgeCell(sheet, warm.cell).size?.value;
    expect(size()).toBeCloseTo(84.903, 3);
    expect(size(sheetOf([warm]))).toBe(84.92);
  });

  it('takes the temperature of the instrument too, and refuses one that is none', () => {
    const cold = { ...warm, instrumentTemperature: typed('20', '°C') };
    const size = sizeOf(cold, micrometer, { material: 'steel' });
    expect(size.kind === 'answer' && size.value.value).toBeCloseTo(84.92 * (1 - 11.5e-6 * 20), 4);
    expect(sizeOf({ ...warm, instrumentTemperature: typed('cold', '°C') }, micrometer).kind).toBe('refused');
  });
});
