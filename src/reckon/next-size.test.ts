/** @module The next size that cleans up: the published steps, laws of steps, and what goes with the metal. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { leftOver, nextStep } from './clean-up.ts';
import { reckonByName } from './list.ts';

const inch = 25.4;

const reckoned = (name: string, texts: Readonly<Record<string, string>>) => {
  const asked = reckonByName(name, texts);
  if (asked.kind === 'refused') throw new Error(asked.refusal.what);
  return asked.value;
};

describe('the next undersize', () => {
  // source: TM 5-3805-262-34, p 4-24: journals below 2.748 in are ground to 2.738, 2.728 or 2.718 in, within 0.0005 in
  const steps = '2.738, 2.728, 2.718 in';
  it.each([
    ['2.7479in', '2.738'],
    ['2.7381in', '2.738'],
    ['2.7379in', '2.728'],
    ['2.7279in', '2.718'],
  ])('of a worst journal of %s is the published %s in', (worst, size) => {
    const { results } = reckoned('regrind-size', { worst, 'clean-up': '0in', steps });
    const source = 'TM 5-3805-262-34, p 4-24';
    outsideCheck('regrind-size', source, 'mm', 1e-9)(Number(results.size?.value), Number(size) * inch);
  });

  it('is none below the last published step, and says by how much it falls short', () => {
    const { results, notes } = reckoned('regrind-size', { worst: '2.7175in', 'clean-up': '0in', steps });
    expect(results.size?.value).toBe('none');
    expect(results.short?.value).toBeCloseTo(0.0005 * inch, 9);
    expect(notes[0]).toContain('Renew it');
  });

  it('goes one step further where the uncertain side or the allowance eats what is left', () => {
    // source: arithmetic by hand, 54.790 − 0.050 = 54.740 cleans up exactly, 54.790 − 0.050 − 0.001 does not
    const at = (worst: string) =>
      reckoned('regrind-size', { worst, 'clean-up': '0.05mm', steps: '54.740, 54.490 mm' }).results;
    expect(at('54.790mm').size?.value).toBe(54.74);
    expect(at('54.790mm')['to-spare']?.value).toBe(0);
    expect(at('54.790±0.001mm').size?.value).toBe(54.49);
  });

  it('is none where the hard layer would go', () => {
    const asked = { worst: '54.940mm', 'clean-up': '0.05mm', steps: '54.740 mm', hardened: '0.5mm' };
    // source: by hand, 0.5 − (54.940 − 54.740) / 2 = 0.4
    expect(
      reckoned('regrind-size', { ...asked, 'least-hardened': '0.4mm' }).results['hard-layer-left'],
    ).toEqual({
      value: 0.4,
      unit: 'mm',
    });
    const gone = reckoned('regrind-size', { ...asked, 'least-hardened': '0.41mm' });
    expect(gone.results.size?.value).toBe('none');
    expect(gone.notes[0]).toContain('hard layer');
  });
});

describe('the next oversize', () => {
  it('leaves the wall that it must', () => {
    const asked = { worst: '98.231mm', 'clean-up': '0.05mm', steps: '98.250, 98.500 mm', wall: '6.2±0.1mm' };
    // source: by hand, 6.2 − 0.1 − (98.500 − 98.231) / 2 = 5.9655
    const { results } = reckoned('rebore-size', { ...asked, 'least-wall': '5.5mm' });
    expect(results.size?.value).toBe(98.5);
    outsideCheck(
      'rebore-size',
      'common practice, no source; wall left by hand',
      'mm',
      1e-6,
    )(Number(results['wall-left']?.value), 5.9655);
  });

  it('is asked for with both walls or none', () => {
    const asked = reckonByName('rebore-size', {
      worst: '98.231mm',
      'clean-up': '0.05mm',
      steps: '98.250, 98.500 mm',
      wall: '6.2mm',
    });
    expect(asked.kind === 'refused' && asked.refusal.where).toBe('wall, least-wall');
  });
});

describe('what a step leaves over', () => {
  const question = fc.record({
    size: between(20, 120),
    expanded: between(0, 0.02),
    allowance: between(0, 0.1),
  });

  it('is the same for a shaft as for the bore that mirrors it', () => {
    fc.assert(
      fc.property(question, between(-1, 1), (asked, off) => {
        const shaft = leftOver({ ...asked, machined: 'shaft', finished: asked.size - off });
        expect(leftOver({ ...asked, machined: 'bore', finished: asked.size + off })).toBeCloseTo(shaft, 8);
      }),
    );
  });

  it('chooses the nearest of the steps that clean up, in whatever order they are listed', () => {
    fc.assert(
      fc.property(question, fc.array(between(18, 122), { minLength: 1, maxLength: 6 }), (asked, steps) => {
        for (const machined of ['shaft', 'bore'] as const) {
          const whole = { ...asked, machined };
          const next = nextStep(whole, steps);
          expect(nextStep(whole, steps.toReversed())).toEqual(next);
          const left = steps.map((finished) => leftOver({ ...whole, finished }));
          const clean = left.filter((each) => each >= 0);
          if ('short' in next) {
            expect(clean).toEqual([]);
            expect(next.short).toBe(-Math.max(...left));
          } else expect(next.left).toBe(Math.min(...clean));
        }
      }),
    );
  });
});
