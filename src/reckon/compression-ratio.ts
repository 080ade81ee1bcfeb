/** @module Compression ratio from bore, stroke and what is left above the piston. */
import { answer, refuse } from '../quantity/refusal.ts';
import { propagate, type Uncertain } from '../quantity/uncertain.ts';
import { quantityInput } from './inputs.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';

/**
 * Compression ratio: volume at the bottom of the stroke over volume at the top.
 *
 * @param bore     mm
 * @param stroke   mm
 * @param bump     gap between crown and head, mm
 * @param pockets  all other room above the piston (bowl, prechamber, valve pockets), mm³
 * @returns a ratio above 1
 * @source  its definition; Pulkrabek, Engineering Fundamentals of the Internal Combustion Engine, 2
 * @example compressionRatio(86.03, 86.03, 0, 58800) // 9.5
 */
export const compressionRatio = (bore: number, stroke: number, bump: number, pockets: number): number => {
  const area = (Math.PI / 4) * bore ** 2;
  return 1 + (area * stroke) / (area * bump + pockets);
};

export const compressionRatioReckoning: Reckoning = {
  name: 'compression-ratio',
  title: 'Compression ratio from bore, stroke, bump clearance and the bowl',
  inputs: [
    quantityInput('bore', 'length', 'bore', 'above 0', '98.00±0.02mm'),
    quantityInput('stroke', 'length', 'stroke', 'above 0', '110mm'),
    quantityInput('bump', 'length', 'bump clearance, over the whole crown', '0 and up', '0.75±0.05mm'),
    quantityInput(
      'pockets',
      'volume',
      'bowl, prechamber and valve pockets together',
      'above 0',
      '45.0±0.5cm³',
    ),
  ],
  formula: 'ε = 1 + (π/4 B² s) / (π/4 B² bump + pockets)',
  source: 'its definition; Pulkrabek, Engineering Fundamentals of the Internal Combustion Engine, 2',
  reckon: (values) => {
    const inputs = ['bore', 'stroke', 'bump', 'pockets'].map((key) => quantityOf(values, key)) as [
      Uncertain,
      Uncertain,
      Uncertain,
      Uncertain,
    ];
    const [bore, stroke, bump, pockets] = inputs.map(({ value }) => value) as [
      number,
      number,
      number,
      number,
    ];
    if (!(bore > 0 && stroke > 0 && bore < 1e4 && stroke < 1e4))
      return refuse('there is no such cylinder', 'bore, stroke', 'give both above 0');
    if (!(bump >= 0 && pockets >= 0 && bump + pockets > 0))
      return refuse('nothing is left above the piston', 'bump, pockets', 'give the room that is left there');
    const ratio = propagate(([b = 0, s = 0, gap = 0, rest = 0]) => compressionRatio(b, s, gap, rest), inputs);
    if (ratio.kind === 'refused') return ratio;
    const area = (Math.PI / 4) * bore ** 2;
    const cubic = (mm3: number) => ({ value: Number((mm3 / 1000).toPrecision(6)), unit: 'cm³' });
    return answer({
      results: {
        ratio: result(ratio.value, '1'),
        swept: cubic(area * stroke),
        left: cubic(area * bump + pockets),
        'in-the-bump': {
          value: Number(((100 * area * bump) / (area * bump + pockets)).toPrecision(4)),
          unit: '%',
        },
      },
      notes:
        ratio.value.value < 12 || ratio.value.value > 25
          ? ['Diesel engines lie near 14 to 23: a figure or a unit may be wrong.']
          : [],
    });
  },
};
