/** @module Ovality and taper of shapes whose form is known exactly. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { characteristics, reading, sheetOf, smallEngine, typed } from '../../test/engines/small-engine.ts';
import type { Characteristic } from '../engine/engine-type.ts';
import { judge } from './judge.ts';
import { cellsOf } from './scheme.ts';

const planes = ['top', 'middle', 'bottom'];
const axes = ['0', '45', '90', '135'];

const made = (name: string, more: Partial<Characteristic>): Characteristic => ({
  name,
  title: name,
  at: 'bore',
  planes: [''],
  axes: [''],
  wears: 'larger',
  ...more,
});

const engine = {
  ...smallEngine,
  characteristics: new Map(
    [
      ...characteristics,
      made('ring', { planes, axes }),
      made('ovality', { derived: { kind: 'range over axes', of: 'ring' } }),
      made('taper', { derived: { kind: 'range over planes', of: 'ring' } }),
    ].map((each) => [each.name, each]),
  ),
};

/** Two-point sizes of a bore whose radius is known for each plane and angle. */
const formOf = (radius: (plane: number, angle: number) => number) => {
  const readings = cellsOf(engine, 'ring', 'bore.1').map(({ plane, axis }) => {
    const angle = (Number(axis) * Math.PI) / 180;
    const at = planes.indexOf(plane);
    const size = radius(at, angle) + radius(at, angle + Math.PI);
    return reading(`bore.1 ring ${plane} ${axis}`, typed(size.toFixed(6)));
  });
  const sheet = sheetOf(readings, { engine });
  const of = (name: string) => judge(sheet, name, 'bore.1').value?.value ?? Number.NaN;
  return { ovality: of('ovality'), taper: of('taper') };
};

describe('two-point form', () => {
  // source: exact construction r = R + a·cos nθ: for even n the diameters range over 4a, for odd n not at all
  it('of an ellipse-like bore (two lobes) is four times the amplitude', () => {
    expect(formOf((_, angle) => 42.5 + 0.01 * Math.cos(2 * angle)).ovality).toBeCloseTo(0.04, 5);
  });

  it('of four lobes is four times the amplitude, seen along axes at 45°', () => {
    expect(formOf((_, angle) => 42.5 + 0.01 * Math.cos(4 * angle)).ovality).toBeCloseTo(0.04, 5);
  });

  it.each([3, 5, 7])('of %i lobes is nothing: two points do not see it', (lobes) => {
    expect(formOf((_, angle) => 42.5 + 0.01 * Math.cos(lobes * angle)).ovality).toBeCloseTo(0, 5);
  });

  it('of a cone is all taper and no ovality', () => {
    const form = formOf((plane) => 42.5 + 0.01 * plane);
    expect(form.taper).toBeCloseTo(0.04, 5);
    expect(form.ovality).toBeCloseTo(0, 5);
  });

  it('of a barrel is the middle less the ends', () => {
    expect(formOf((plane) => 42.5 + (plane === 1 ? 0.03 : 0)).taper).toBeCloseTo(0.06, 5);
  });

  it('is the same for a bore of any size, and never negative', () => {
    const error = fc.integer({ min: -50, max: 50 });
    fc.assert(
      fc.property(fc.array(error, { minLength: 12, maxLength: 12 }), (errors) => {
        const shape = (size: number) =>
          formOf(
            (plane, angle) =>
              size + (errors[plane * 4 + (Math.round((angle * 4) / Math.PI) % 4)] ?? 0) / 1000,
          );
        const [small, large] = [shape(20), shape(60)];
        expect(small.ovality).toBeGreaterThanOrEqual(0);
        expect(small.taper).toBeGreaterThanOrEqual(0);
        expect(large.ovality).toBeCloseTo(small.ovality, 5);
        expect(large.taper).toBeCloseTo(small.taper, 5);
      }),
    );
  });
});
