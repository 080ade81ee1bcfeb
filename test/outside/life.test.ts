/** @module How long parts last agrees with draws by numpy and with integrals by scipy, made from what is said of them in words. */
import { describe, expect, it } from 'vitest';
import { engineLife } from '../../src/plan/engine-life.ts';
import type { Life } from '../../src/plan/life.ts';
import { hours as hoursOf } from '../../src/quantity/brand.ts';
import { type WearSoFar, wearLasts } from '../../src/reckon/remaining-hours.ts';
import { outsideCheck } from '../outside-check.ts';
import { askPython, lacking } from './program.ts';

/** A shaft hardly known and well known, a bore at its limit, one hardly worn, one made to one size, a steady rate. */
const wears: readonly WearSoFar[] = [
  ['smaller', 54.95, 0.004, 54.97, 54.99, 54.93, 6000, 0.25],
  ['smaller', 54.945, 0.0005, 54.97, 54.99, 54.93, 6000, 0.25],
  ['larger', 85.148, 0.003, 85, 85.02, 85.15, 5200, 0.3],
  ['larger', 85.021, 0.003, 85, 85.02, 85.15, 5200, 0.2],
  ['larger', 0.05, 0.009, 0, 0.03, 0.1, 6200, 0.25],
  ['larger', 0.05, 0.009, 0.02, 0.02, 0.1, 6200, 0.5],
  ['smaller', 54.95, 0.002, 54.97, 54.99, 54.93, 6000, 0],
].map(([way, size, uncertainty, least, greatest, limit, run, scatter]) => ({
  wears: way as 'smaller' | 'larger',
  size: Number(size),
  uncertainty: Number(uncertainty),
  made: { least: Number(least), greatest: Number(greatest) },
  limit: Number(limit),
  run: Number(run),
  scatter: Number(scatter),
}));
const hours = [0, 500, 1500, 3000, 5000, 9000, 20_000];

const draws = `
import json, numpy as np
rng = np.random.default_rng(20260214)
n = 4_000_000
hours = ${JSON.stringify(hours)}
out = []
for w in json.loads('${JSON.stringify(wears)}'):
    size = w['size'] + w['uncertainty'] * rng.standard_normal(n)
    made = w['made']['least'] + (w['made']['greatest'] - w['made']['least']) * rng.random(n)
    worn = (made - size) if w['wears'] == 'smaller' else (size - made)
    left = (size - w['limit']) if w['wears'] == 'smaller' else (w['limit'] - size)
    kept = worn > 0
    rate = worn[kept] / w['run'] * np.exp(w['scatter'] * rng.standard_normal(kept.sum()))
    life = left[kept] / rate
    out.append([float((life > h).mean()) for h in hours])
print(json.dumps(out))
`;

describe('how long a worn part lasts', () => {
  it('agrees with four million draws of size, size as made and rate', (context) => {
    context.skip(lacking('scipy') !== undefined, lacking('scipy'));
    const drawn = askPython(draws) as readonly (readonly number[])[];
    for (const [index, wear] of wears.entries()) {
      for (const [at, run] of hours.entries()) {
        // Four standard deviations of a share of so many draws, and the ten-thousandth that the sum allows itself.
        const source = 'four million draws by numpy, seven worn parts';
        outsideCheck(
          'remaining-hours',
          source,
          '1',
          0.0011,
        )(wearLasts(wear, run) ?? Number.NaN, drawn[index]?.[at] ?? Number.NaN);
      }
    }
  });
});

/** Three lives whose hazards keep no proportion: two lognormal ones, one worn part. */
const mixed: readonly Life[] = [
  { kind: 'usual', middle: hoursOf(9000), spread: 0.25, restsOn: "the type's usual life" },
  { kind: 'usual', middle: hoursOf(11_000), spread: 0.5, freedom: 4, restsOn: "this workshop's history" },
  {
    kind: 'worn',
    wear: {
      wears: 'larger',
      size: 0.1,
      uncertainty: 0,
      made: { least: 0.02, greatest: 0.02 },
      limit: 0.2,
      run: 6000,
      scatter: 0.4,
    },
    restsOn: "this engine's wear",
    of: 'clearance',
  },
];

const integrals = `
import json, numpy as np
from scipy import integrate, optimize
from scipy.stats import norm, t
# With size and size as made known, the worn part's life is lognormal about 6000 h x 0.1 / 0.08.
parts = [(lambda x: norm.sf(np.log(x / 9000) / 0.25), lambda x: norm.pdf(np.log(x / 9000) / 0.25) / 0.25 / x),
         (lambda x: t.sf(np.log(x / 11000) / 0.5, 4), lambda x: t.pdf(np.log(x / 11000) / 0.5, 4) / 0.5 / x),
         (lambda x: norm.sf(np.log(x / 7500) / 0.4), lambda x: norm.pdf(np.log(x / 7500) / 0.4) / 0.4 / x)]
def share(i):
    f = lambda u: parts[i][1](np.exp(u)) * np.exp(u) * np.prod([s(np.exp(u)) for j, (s, d) in enumerate(parts) if j != i])
    return integrate.quad(f, np.log(1), np.log(1e6), limit=400, points=[np.log(5000)])[0]
whole = lambda x: np.prod([s(x) for s, d in parts])
at = lambda p: optimize.brentq(lambda x: whole(x) - p, 1, 1e5)
print(json.dumps({'shares': [share(0), share(1), share(2)], 'counted': at(0.9), 'middle': at(0.5)}))
`;

describe('how long an engine lasts', () => {
  it('agrees with scipy on hours and on the share of each part in being first', (context) => {
    context.skip(lacking('scipy') !== undefined, lacking('scipy'));
    const told = askPython(integrals) as {
      readonly shares: readonly number[];
      readonly counted: number;
      readonly middle: number;
    };
    const parts = mixed.map((life, index) => ({ slot: `part ${index}`, component: 'parts', hours: 1, life }));
    const { first, countedOn, middle } = engineLife(parts);
    for (const [index, share] of told.shares.entries()) {
      expect(Math.abs((first.find(({ slot }) => slot === `part ${index}`)?.share ?? 0) - share)).toBeLessThan(
        0.001,
      );
    }
    expect(Math.abs(countedOn - told.counted)).toBeLessThan(1.001);
    expect(Math.abs(middle - told.middle)).toBeLessThan(1.001);
  });
});
