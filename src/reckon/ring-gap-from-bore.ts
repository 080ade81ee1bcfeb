/** @module The end gap of a piston ring in a bore other than the one in which it was measured. */
import { answer, refuse } from '../quantity/refusal.ts';
import { combine, type Uncertain } from '../quantity/uncertain.ts';
import { quantityOf, type Reckoning, result } from './reckoning.ts';

/**
 * End gap of a ring that goes into another bore: the gap grows by π times what the bore grows.
 *
 * gap = gap measured + π (bore - bore measured in), for a ring that follows its bore all round, so square in it and
 * in a bore that is round there.
 *
 * @param gap   as measured, mm
 * @param from  bore in which it was measured, mm
 * @param to    bore in which it will work, or another height of the same one, mm
 * @returns mm; minus where the ends would meet
 * @source  circumference of a circle: π times the diameter
 * @example ringGapFromBore(certain(0.35), certain(98), certain(98.1)) // 0.664 mm
 */
export const ringGapFromBore = (gap: Uncertain, from: Uncertain, to: Uncertain): Uncertain =>
  combine([
    [1, gap],
    [Math.PI, to],
    [-Math.PI, from],
  ]);

export const ringGapFromBoreReckoning: Reckoning = {
  name: 'ring-gap-from-bore',
  title: 'End gap of a piston ring in another bore than the one it was measured in',
  inputs: [
    {
      kind: 'quantity',
      key: 'gap',
      title: 'end gap as measured, the ring square in the bore',
      dimension: 'length',
      range: '0 and up',
      example: '0.35±0.01mm',
    },
    {
      kind: 'quantity',
      key: 'from',
      title: 'the bore where it was measured: a gauge ring, or the unworn bottom',
      dimension: 'length',
      range: 'above 0',
      example: '98.000±0.005mm',
    },
    {
      kind: 'quantity',
      key: 'to',
      title: 'the bore where it works: worn, or bored to the next size',
      dimension: 'length',
      range: 'above 0, within a tenth of the other bore',
      example: '98.120±0.005mm',
    },
  ],
  formula: 'gap there = gap + π (to − from)',
  source: 'circumference of a circle; that a ring follows its bore: common practice, no source',
  reckon: (values) => {
    const [gap, from, to] = ['gap', 'from', 'to'].map((key) => quantityOf(values, key));
    if (!gap || !from || !to) throw new Error('a ring gap has three inputs');
    if (gap.value < 0) return refuse('a gap less than 0 is out of range', 'gap', 'leave out its sign');
    if (!(from.value > 0 && Math.abs(to.value / from.value - 1) <= 0.1)) {
      return refuse('the two bores are not of one ring', 'from, to', 'check both bores and their units');
    }
    const there = ringGapFromBore(gap, from, to);
    return answer({
      results: { gap: result(there, 'mm'), change: result(combine([[1, there]], -gap.value), 'mm') },
      notes: there.value <= 0 ? ['The ends would meet: the ring must be opened, or is the wrong one.'] : [],
    });
  },
};
