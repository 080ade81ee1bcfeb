/** @module Shell clearance: worked by hand, half the undersize to a wall, and what cancels. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { certain, standardUncertainty, uncertain } from '../quantity/uncertain.ts';
import { reckonByName } from './list.ts';
import { shellBore } from './shell-clearance.ts';

const reckoned = (texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName('shell-clearance', texts);
  if (asked.kind === 'refused') throw new Error(asked.refusal.what);
  return asked.value;
};

describe('the clearance of a journal in its shells', () => {
  it('is the housing less both walls and the journal', () => {
    const { results } = reckoned({ housing: '59.010mm', wall: '1.985±0.002mm', journal: '54.982mm' });
    const check = outsideCheck(
      'shell-clearance',
      'by hand: 59.010 − 2 × 1.985 − 54.982 = 0.058 mm',
      'mm',
      1e-9,
    );
    check(Number(results.clearance?.value), 0.058);
    // source: JCGM 100, 5.1.3: both walls share one error, 2 × 0.002 / 1.96
    expect(results.clearance?.u).toBeCloseTo(0.00204, 5);
  });

  it('is the same once journal and shells go under size together: half of it to each wall', () => {
    // 0.130 in and 2.5000 − 2 × 0.130 − 2.2380 = 0.0020 in, by hand from that rule
    const { results } = reckoned({
      housing: '2.5000in',
      wall: '0.1250in',
      journal: '2.2380in',
      undersize: '0.010in',
    });
    const check = outsideCheck(
      'shell-clearance',
      'TM 9-2815-205-24, p 0097-6: a wall grows by half the undersize',
      'mm',
      1e-9,
    );
    check(Number(results.wall?.value), 0.13 * 25.4);
    check(Number(results.clearance?.value), 0.002 * 25.4);
    fc.assert(
      fc.property(between(50, 80), between(1, 3), between(0, 1), (housing, wall, under) => {
        const standard = shellBore(certain(housing), certain(wall), certain(0), certain(0)).value;
        const ground = shellBore(certain(housing), certain(wall), certain(under), certain(0)).value;
        expect(standard - ground).toBeCloseTo(under, 9);
      }),
    );
  });

  it('counts the error of a wall twice, since both were read with one instrument', () => {
    const bore = shellBore(
      uncertain(59, 'gauge', 0.002),
      uncertain(1.985, 'ball', 0.001),
      certain(0),
      certain(0),
    );
    expect(standardUncertainty(bore)).toBeCloseTo(Math.hypot(0.002, 0.002), 9);
  });

  it('says when the shells are the wrong ones, and refuses walls that fill the housing', () => {
    const wrong = reckoned({ housing: '59.010mm', wall: '2.110mm', journal: '54.982mm' });
    expect(wrong.notes[0]).toContain('the wrong shells');
    const asked = reckonByName('shell-clearance', { housing: '3mm', wall: '2mm', journal: '1mm' });
    expect(asked.kind === 'refused' && asked.refusal.where).toBe('housing, wall');
  });
});
