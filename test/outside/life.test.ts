/** @module How long parts last agrees with draws by numpy and with integrals by scipy, made from what is said of them in words. */
import { describe, expect, it } from 'vitest';
import { type WearSoFar, wearLasts } from '../../src/reckon/remaining-hours.ts';
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
        expect(
          Math.abs((wearLasts(wear, run) ?? Number.NaN) - (drawn[index]?.[at] ?? Number.NaN)),
          `wear ${index} at ${run} h`,
        ).toBeLessThan(0.0011);
      }
    }
  });
});
