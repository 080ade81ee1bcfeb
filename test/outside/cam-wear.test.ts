/** @module A worn lobe compared angle by angle, against cams of published laws whose flanks are found by scipy and whose readings are drawn by numpy. */
import { describe, expect, it } from 'vitest';
import { reckonByName } from '../../src/reckon/list.ts';
import { lobeWear } from '../../src/reckon/lobe-wear.ts';
import { known } from '../known.ts';
import { outsideCheck } from '../outside-check.ts';
import { ask, lacking } from './program.ts';

const cam = `
import json
import numpy as np
from scipy.optimize import brentq
# source: texts on cam design: the rise of simple harmonic and of cycloidal motion, h mm over b degrees
laws = {
  'harmonic': lambda part: (1 - np.cos(np.pi*part))/2,
  'cycloidal': lambda part: part - np.sin(2*np.pi*part)/(2*np.pi),
}
h, b, top = 8.0, 70.0, 100.0
def lift(law, at):
  part = np.clip(1 - np.abs(at - top)/b, 0, 1)
  return h*laws[law](part)
# Wear: a smooth hollow, deepest at its middle, gone at its edges.
def hollow(at, middle, half, depth):
  return np.where(np.abs(at - middle) < half, depth*(1 + np.cos(np.pi*(at - middle)/half))/2, 0.0)
worn = lambda law, at, hollows: lift(law, at) - sum(hollow(at, *one) for one in hollows)
`;

const flanks = `${cam}
told = []
for law in laws:
  for hollows in ([(64.0, 20.0, 0.15)], [(136.0, 18.0, 0.12)], [(66.0, 22.0, 0.20), (134.0, 16.0, 0.08)], [(100.0, 25.0, 0.30)]):
    at = np.arange(20.0, 181.0, 2.0)
    cross = lambda f, low, high: brentq(lambda x: float(f(x)) - 1.0, low, high, xtol=1e-12)
    whole = [cross(lambda x: lift(law, x), 31, 100), cross(lambda x: lift(law, x), 100, 169)]
    now = [cross(lambda x: worn(law, x, hollows), 31, 90), cross(lambda x: worn(law, x, hollows), 110, 169)]
    told.append({ 'whole': lift(law, at).tolist(), 'worn': worn(law, at, hollows).tolist(),
      'opens': now[0] - whole[0], 'closes': whole[1] - now[1],
      'spans': sorted([middle - half, middle + half] for middle, half, _ in hollows),
      'deepest': max(hollows, key=lambda one: one[2])[0] })
print(json.dumps(told))
`;

const drawn = `${cam}
draw = np.random.default_rng(19_058)
at = np.arange(20.0, 181.0, 5.0)
dial, angle = 0.02/1.96, 0.3/1.96
def read(hollows, zero):
  seen = at + zero + draw.normal(0, angle, at.size)
  return np.round(worn('cycloidal', seen, hollows) + draw.normal(0, dial, at.size), 5).tolist()
zero = lambda: draw.normal(0, angle)
print(json.dumps({
  'honest': [[read([], zero()), read([], zero())] for _ in range(400)],
  'worn': [[read([], zero()), read([(70.0, 25.0, 0.25)], zero())] for _ in range(400)],
}))
`;

interface Told {
  readonly whole: readonly number[];
  readonly worn: readonly number[];
  readonly opens: number;
  readonly closes: number;
  readonly spans: readonly (readonly [number, number])[];
  readonly deepest: number;
}

type Pair = readonly [whole: readonly number[], lobe: readonly number[]];

const python = (context: { skip: (when: boolean, why: string) => void }, code: string): unknown => {
  const lacks = lacking('scipy');
  context.skip(lacks !== undefined, `${lacks}`);
  return JSON.parse(ask('/usr/bin/python3', ['-c', code]));
};

describe('a worn lobe', () => {
  it('has lost of its opening, closing and duration what scipy finds on the law itself', (context) => {
    const cases = python(context, flanks) as readonly Told[];
    const source = 'harmonic and cycloidal cams with wear taken off, flanks by scipy’s brentq';
    const check = (what: string) => outsideCheck('cam-lift', `${source}: ${what}`, 'deg', 0.03);
    expect(cases).toHaveLength(8);
    for (const { whole, worn, opens, closes, spans, deepest } of cases) {
      const row = (lifts: readonly number[]) => lifts.map((lift) => lift.toFixed(6)).join(', ');
      const { results } = known(
        reckonByName('cam-lift', {
          lifts: `${row(worn)}; ${row(whole)} mm`,
          from: '20 deg',
          step: '2 deg',
          dial: '0.005 mm',
          'angle-reading': '0.05 deg',
        }),
      );
      expect(results.whole?.value).toBe('lobe 2');
      check('opening')(Number(results['lobe.1.opens-later']?.value), opens);
      check('closing')(Number(results['lobe.1.closes-earlier']?.value), closes);
      check('duration')(Number(results['lobe.1.duration-lost']?.value), opens + closes);
      const { ranges } = lobeWear(whole, worn, 20, 2, { lift: 0.0025, angle: 0.025 }, false);
      expect(ranges.map(({ from, to }) => spans.findIndex(([a, b]) => from > a && to < b))).toEqual(
        spans.map((_, at) => at),
      );
      expect(ranges.some(({ from, to }) => from <= deepest && deepest <= to)).toBe(true);
    }
  });

  it('is told from an honest one among readings that are off by chance', (context) => {
    const { honest, worn } = python(context, drawn) as Readonly<Record<'honest' | 'worn', readonly Pair[]>>;
    const u = { lift: 0.02 / 1.96, angle: 0.3 / 1.96 };
    const told = (pairs: readonly Pair[]) =>
      pairs
        .map(([whole, lobe]) => lobeWear(whole, lobe, 20, 5, u, false))
        .filter(({ ranges }) => ranges.length > 0);
    // At most 5 in 100 honest lobes are doubted; three standard deviations of 400 drawings above that.
    expect(told(honest).length).toBeLessThanOrEqual(20 + 3 * Math.sqrt(400 * 0.05 * 0.95));
    const found = told(worn);
    expect(found.length).toBeGreaterThan(380);
    const beside = found.filter(({ ranges }) => ranges.some(({ from, to }) => from < 40 || to > 100));
    expect(beside.length).toBeLessThanOrEqual(20 + 3 * Math.sqrt(400 * 0.05 * 0.95));
  });
});
