/** @module The Reynolds equation on one grid: ours against scipy's sparse solver, and both against the film itself. */
import { filmFigures } from '../src/reckon/film-figures.ts';
import { filmPressure } from '../src/reckon/film-pressure.ts';
import { ask, lacking } from '../test/outside/program.ts';
import type { BenchRow } from './bench.ts';

export const name = 'oil-film';

const [eccentricity, lengthOverDiameter] = [0.7, 0.5];
const times = 20;

// The same finite volumes on the same steps, half the bearing, the rupture found by the same letting go and taking up,
// from the same start; only the linear systems are left to a general sparse solver.
const program = (around: number, across: number): string => `
import time, json
import numpy as np
from scipy.sparse import coo_matrix, diags
from scipy.sparse.linalg import spsolve
eps, ratio, m, n = ${eccentricity}, ${lengthOverDiameter}, ${around}, ${across}
root = np.sqrt(1 - eps**2); step = 2*np.pi/m; edge = 0.5/n
gap = lambda s: root**2/(1 - eps*np.cos(step*s)); stretch = lambda s: root/(1 - eps*np.cos(step*s))
def solve():
  link = gap(np.arange(m) + 0.5)**3/stretch(np.arange(m) + 0.5)/step**2
  side = (1/(2*ratio))**2/edge**2*gap(np.arange(m+1))**3*stretch(np.arange(m+1))
  I, J = np.meshgrid(np.arange(1, m), np.arange(n), indexing='ij'); I = I.ravel(); J = J.ravel()
  k = (I-1)*n + J; w = np.where(J == 0, 0.5, 1.0); N = k.size
  rows = [k]; cols = [k]; vals = [w*(link[I-1] + link[I]) + side[I]*np.where(J == 0, 1.0, 2.0)]
  for keep, other, v in ((I > 1, k-n, -w*link[I-1]), (I < m-1, k+n, -w*link[I]), (J > 0, k-1, -side[I]), (J < n-1, k+1, -side[I])):
    rows.append(k[keep]); cols.append(other[keep]); vals.append(v[keep])
  A = coo_matrix((np.concatenate(vals), (np.concatenate(rows), np.concatenate(cols))), shape=(N, N)).tocsr()
  b = w*(-6*(gap(I + 0.5) - gap(I - 0.5))/step)
  active = I <= m/2
  for _ in range(60):
    M = diags(active.astype(float)) @ A + diags((~active).astype(float))
    p = spsolve(M.tocsc(), np.where(active, b, 0.0))
    new = np.where(active, p >= 0, (b - A @ p) > 1e-12)
    if (new == active).all(): break
    active = new
  return p
solve()
spent = []
for _ in range(${times}):
  start = time.perf_counter(); p = solve(); spent.append(time.perf_counter() - start)
print(json.dumps([sorted(spent)[${times} // 2]*1000, float(p.sum())]))
`;

const middle = (figures: readonly number[]): number =>
  figures.toSorted((a, b) => a - b)[figures.length >> 1] ?? 0;

const timed = (around: number, across: number): { readonly ms: number; readonly sum: number } => {
  let sum = 0;
  const spent = Array.from({ length: times + 5 }, () => {
    const start = performance.now();
    sum = filmPressure({ eccentricity, lengthOverDiameter }, { around, across }).pressures.reduce(
      (all, p) => all + p,
      0,
    );
    return performance.now() - start;
  });
  return { ms: middle(spent.slice(5)), sum };
};

const row = (around: number, across: number): BenchRow => {
  const ours = timed(around, across);
  const [other = Number.NaN, sum = Number.NaN]: readonly number[] = JSON.parse(
    ask('/usr/bin/python3', ['-c', program(around, across)]),
  );
  const apart = Math.abs(ours.sum / sum - 1);
  if (apart > 1e-9) throw new Error(`the two films differ by ${apart}: not the same work`);
  return {
    what: `film pressure on ${around} by ${across} steps, its rupture found`,
    against: "the same volumes by scipy's spsolve",
    unit: 'ms',
    ours: ours.ms,
    other,
    note: 'theirs times itself, without starting Python; the pressures agree to 1e-9',
  };
};

export const run = async (): Promise<readonly BenchRow[]> => {
  const lacks = lacking('scipy');
  if (lacks) throw new Error(lacks);
  const fine = filmFigures({ eccentricity, lengthOverDiameter }, { around: 512, across: 32 }).sommerfeld;
  const usual = filmFigures({ eccentricity, lengthOverDiameter }).sommerfeld;
  return [
    row(64, 8),
    row(128, 12),
    row(256, 24),
    {
      what: 'error of the usual grid in the load carried',
      against: 'half a per cent of the charts',
      unit: '%',
      ours: Math.abs(usual / fine - 1) * 100,
      other: 0.5,
    },
  ];
};
