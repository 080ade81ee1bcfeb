/** @module A ring's gap follows its bore by π. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { certain, standardUncertainty, uncertain } from '../quantity/uncertain.ts';
import { reckonByName } from './list.ts';
import { ringGapFromBore } from './ring-gap-from-bore.ts';

describe('a ring gap', () => {
  it('opens by 0.314 mm for a tenth in the bore', () => {
    // source: circumference of a circle, π d
    const { value } = ringGapFromBore(certain(0.3), certain(98), certain(98.1));
    outsideCheck('ring-gap-from-bore', 'circumference of a circle', 'mm', 1e-6)(value, 0.3 + 0.314159);
  });

  it('keeps the length of the ring: gap there and back is the gap', () => {
    fc.assert(
      fc.property(between(0, 2), between(60, 150), between(60, 150), (gap, a, b) => {
        const there = ringGapFromBore(certain(gap), certain(a), certain(b));
        expect(ringGapFromBore(there, certain(b), certain(a)).value).toBeCloseTo(gap, 9);
        expect(Math.PI * b - there.value).toBeCloseTo(Math.PI * a - gap, 9);
      }),
    );
  });

  it('loses what both bores share', () => {
    const bore = (value: number) => uncertain(value, 'calibration', 0.003);
    expect(standardUncertainty(ringGapFromBore(certain(0.3), bore(98), bore(98.1)))).toBe(0);
  });

  it('says when the ends would meet, and refuses bores that are not of one ring', () => {
    const asked = reckonByName('ring-gap-from-bore', { gap: '0.3mm', from: '98.2mm', to: '98.1mm' });
    expect(asked.kind === 'answer' && asked.value.notes[0]).toContain('The ends would meet');
    const refused = reckonByName('ring-gap-from-bore', { gap: '0.3mm', from: '98mm', to: '4in' });
    expect(refused.kind).toBe('answer');
    const other = reckonByName('ring-gap-from-bore', { gap: '0.3mm', from: '98mm', to: '120mm' });
    expect(other.kind === 'refused' && other.refusal.where).toBe('from, to');
  });
});
