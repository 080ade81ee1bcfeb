/** @module How long a used part lasts: worked by hand, and the laws of wear that goes on about as it went. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import type { Limits } from '../engine/engine-type.ts';
import { hours, mm } from '../quantity/brand.ts';
import { certain, uncertain } from '../quantity/uncertain.ts';
import { lifeBySize } from './hours-left.ts';
import { countedOn, hoursLasting, type Life, lasts } from './life.ts';

/** A shaft made 54.97 to 54.99, put back down to 54.93. */
const shaft: Limits = {
  new: { least: mm(54.97), greatest: mm(54.99) },
  goesBack: { least: mm(54.93), greatest: mm(54.99) },
  printed: {},
};
/** A face as made flat to 0.03, put back up to 0.10. */
const face: Limits = { new: { greatest: mm(0.03) }, goesBack: { greatest: mm(0.1) }, printed: {} };
const component = { life: hours(9000) };

const shaftLife = (size: number, run: number, u = 0): Life =>
  lifeBySize(uncertain(size, 'size', u), shaft, 'smaller', hours(run), component, 'journal');
const middle = (life: Life): number => hoursLasting(life, 0.5);

describe('how long a used part lasts', () => {
  it('is half the time less than its wear so far carried on, and half the time more', () => {
    // source: by hand; made at 54.98, 0.03 mm in 6000 h leave 0.02 mm for 4000 h
    const known = { ...shaft, new: { least: mm(54.98), greatest: mm(54.98) } };
    expect(middle(lifeBySize(certain(54.95), known, 'smaller', hours(6000), component, ''))).toBeCloseTo(
      4000,
      2,
    );
  });

  it('is counted on for fewer hours the less is known of it', () => {
    expect(countedOn(shaftLife(54.95, 6000, 0.004))).toBeLessThan(countedOn(shaftLife(54.95, 6000, 0.001)));
    expect(
      countedOn(
        lifeBySize(certain(54.95), shaft, 'smaller', hours(6000), { ...component, wearVaries: 0.5 }, ''),
      ),
    ).toBeLessThan(countedOn(shaftLife(54.95, 6000)));
  });

  it('shares out the usual life where the hours run are not known', () => {
    // source: by hand; a third of the wear allowed is left, so a third of 9000 h
    expect(countedOn(shaftLife(54.95, 0))).toBe(3000);
    expect(countedOn(shaftLife(54.93, 0))).toBe(0);
  });

  it('is nothing at the limit and beyond, and that of a new one where nothing is worn', () => {
    expect(countedOn(shaftLife(54.93, 6000))).toBe(0);
    expect(countedOn(shaftLife(54.9, 6000))).toBe(0);
    expect(countedOn(shaftLife(54.995, 6000))).toBe(9000);
  });

  it('is that of a new one where wear goes either way, or no limit says when it ends', () => {
    const either = lifeBySize(certain(54.95), shaft, 'either', hours(6000), component, '');
    expect(countedOn(either)).toBe(9000);
    const unlimited = { ...shaft, goesBack: {} };
    expect(countedOn(lifeBySize(certain(54.95), unlimited, 'smaller', hours(6000), component, ''))).toBe(
      9000,
    );
  });

  it('takes a face to have been made anything from dead flat up', () => {
    const by = (limits: Limits) =>
      countedOn(lifeBySize(certain(0.05), limits, 'larger', hours(7000), { life: hours(20_000) }, ''));
    expect(by(face)).toBe(by({ ...face, new: { least: mm(0), greatest: mm(0.03) } }));
    expect(by(face)).toBeLessThan(by({ ...face, new: { least: mm(0.03), greatest: mm(0.03) } }));
  });

  it('is never likelier than that of a new one, falls with the hours, and is shorter the more is worn', () => {
    const u = fc.constantFrom(0, 0.001, 0.004);
    fc.assert(
      fc.property(between(54.9, 55), between(54.9, 55), between(0, 20_000), u, (one, other, run, within) => {
        const less = shaftLife(Math.max(one, other), run, within);
        const more = shaftLife(Math.min(one, other), run, within);
        expect(countedOn(more)).toBeGreaterThanOrEqual(0);
        expect(countedOn(less)).toBeLessThanOrEqual(9000);
        expect(countedOn(more)).toBeLessThanOrEqual(countedOn(less) + 1);
        for (const h of [0, 500, 3000, 9000]) {
          expect(lasts(less, h + 500)).toBeLessThanOrEqual(lasts(less, h) + 1e-6);
        }
      }),
    );
  });
});
