/** @module A job goes by the chances of slips that were brought to it, and by no others. */
import { describe, expect, it } from 'vitest';
import { Bench, bookedIn, booking, micrometer } from '../../../test/job/bench.ts';
import { doubtsOf } from '../../measure/doubts.ts';
import { usualPriors } from '../../measure/slips/priors.ts';
import { recordOf } from '../../record/record.ts';
import { openDoubts } from '../hold/proof.ts';

const turned = () => {
  const bench = bookedIn();
  bench.read('main.1', '49.975', 'vertical');
  bench.read('main.1', '49.475', 'horizontal');
  return bench;
};

describe('the chances of slips in a job', () => {
  it('are the usual ones in a job that knows of none', () => {
    expect(bookedIn().open.slipChances).toEqual([]);
    expect(bookedIn().open.sheet.priors ?? usualPriors).toEqual(usualPriors);
  });

  it('are what doubts, hold points and the record go by', () => {
    const bench = turned();
    const [usual] = doubtsOf(bench.open.sheet);
    expect(usual?.slip).toBe('thimble turn');
    bench.done({ kind: 'bring slip chances', chances: [{ slip: 'thimble turn', onceIn: 670 }] });
    const [seldom] = openDoubts(bench.open);
    // A tenth as often, a tenth of the odds: 0.015 is once in 66.7.
    expect((usual?.odds ?? 0) / (seldom?.odds ?? 1)).toBeCloseTo(0.015 * 670, 6);
    const { sections } = recordOf(bench.open, bench.events);
    expect(sections.find(({ name }) => name === 'doubts')?.says).toContain(
      'How often slips happen in this shop: thimble turn once in 670 readings (usually once in 67 readings).',
    );
  });

  it('leave a slip out that the shop does not look for, and take it up again when brought anew', () => {
    const bench = turned();
    bench.done({ kind: 'bring slip chances', chances: [{ slip: 'thimble turn', onceIn: 0 }] });
    expect(doubtsOf(bench.open.sheet).map(({ slip }) => slip)).not.toContain('thimble turn');
    bench.done({ kind: 'bring slip chances', chances: [] });
    expect(doubtsOf(bench.open.sheet).map(({ slip }) => slip)).toContain('thimble turn');
  });

  it('are refused where a shop could not have set them', () => {
    const bench = bookedIn();
    const bring = (...chances: readonly { slip: string; onceIn: number }[]) =>
      bench.refused({ kind: 'bring slip chances', chances });
    expect(bring({ slip: 'thimble turn', onceIn: 2 })).toMatch(/from 4 to/);
    expect(bring({ slip: 'slip of the tongue', onceIn: 20 })).toMatch(/no slip is called/);
    const twice = { slip: 'thimble turn', onceIn: 20 };
    expect(bring(twice, twice)).toMatch(/given twice/);
  });

  it('cannot be brought before the engine is', () => {
    const bench = new Bench();
    expect(bench.refused({ kind: 'bring slip chances', chances: [] })).toMatch(/book the engine in first/);
    bench.done(booking);
    bench.done({ kind: 'bring instrument', instrument: micrometer });
    bench.done({ kind: 'bring slip chances', chances: [] });
  });
});
