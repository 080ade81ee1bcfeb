/** @module The oil film agrees with the same equation discretised otherwise and solved by scipy's sparse solver. */
import { describe, it } from 'vitest';
import { filmFigures } from '../../src/reckon/film-figures.ts';
import { outsideCheck } from '../outside-check.ts';
import { ask, lacking } from './program.ts';

// Even steps of the angle itself, the whole length, cell-centred at no point as ours; the rupture by Newton's method on
// min(p, A p - b) = 0; load by Simpson's rule; two grids and their limit.
const program = `
import json, sys
import numpy as np
from scipy.sparse import csr_matrix, diags, coo_matrix
from scipy.sparse.linalg import spsolve
from scipy.integrate import simpson

def load(eps, ratio, m, n):
  th = np.linspace(0, 2*np.pi, m+1); dz = 1.0/n; dt = th[1]
  H = 1 + eps*np.cos(th)
  idx = lambda i, j: (i-1)*(n-1) + (j-1)
  N = (m-1)*(n-1)
  I, J = np.meshgrid(np.arange(1, m), np.arange(1, n), indexing='ij'); I = I.ravel(); J = J.ravel()
  hp = (1 + eps*np.cos(th[I] + dt/2))**3/dt**2; hm = (1 + eps*np.cos(th[I] - dt/2))**3/dt**2
  hz = (1/(2*ratio))**2*H[I]**3/dz**2
  k = idx(I, J)
  rows = [k]; cols = [k]; vals = [hp + hm + 2*hz]
  for keep, other, v in ((I < m-1, idx(I+1, J), -hp), (I > 1, idx(I-1, J), -hm), (J < n-1, idx(I, J+1), -hz), (J > 1, idx(I, J-1), -hz)):
    rows.append(k[keep]); cols.append(other[keep]); vals.append(v[keep])
  A = coo_matrix((np.concatenate(vals), (np.concatenate(rows), np.concatenate(cols))), shape=(N, N)).tocsr()
  b = 6*eps*np.sin(th[I])
  p = np.zeros(N); active = b > 0
  for _ in range(200):
    D = diags(active.astype(float))
    M = D @ A + diags((~active).astype(float))
    p = spsolve(M.tocsc(), np.where(active, b, 0.0))
    new = (p - (A @ p - b)/A.diagonal()) > 0
    if (new == active).all(): break
    active = new
  P = np.zeros((m+1, n+1)); P[1:m, 1:n] = p.reshape(m-1, n-1)
  line = simpson(P, dx=dz, axis=1)
  along = -simpson(line*np.cos(th), dx=dt); across = simpson(line*np.sin(th), dx=dt)
  return along, across

told = []
for ratio, eps in json.load(sys.stdin):
  (a1, c1), (a2, c2) = load(eps, ratio, 96, 16), load(eps, ratio, 192, 32)
  a, c = a2 + (a2 - a1)/3, c2 + (c2 - c1)/3
  told.append([1/(np.pi*np.hypot(a, c)), float(np.degrees(np.arctan2(c, a)))])
print(json.dumps(told))
`;

const shapes: readonly (readonly [lengthOverDiameter: number, eccentricity: number])[] = [
  [1, 0.2],
  [1, 0.4],
  [1, 0.6],
  [0.5, 0.6],
  [0.5, 0.8],
  [0.25, 0.6],
  [0.25, 0.8],
  [2, 0.5],
];

describe("the Reynolds equation by scipy's sparse solver", () => {
  it('carries the same load at the same attitude', { timeout: 120_000 }, (context) => {
    const lacks = lacking('scipy');
    context.skip(lacks !== undefined, `${lacks}`);
    const told: readonly (readonly [number, number])[] = JSON.parse(
      ask('/usr/bin/python3', ['-c', program], JSON.stringify(shapes)),
    );
    const source = "the Reynolds equation by scipy's sparse solver, 8 bearings";
    for (const [at, [lengthOverDiameter, eccentricity]] of shapes.entries()) {
      const film = filmFigures({ eccentricity, lengthOverDiameter });
      const [sommerfeld, attitude] = told[at] ?? [Number.NaN, Number.NaN];
      outsideCheck('oil-film', `${source}: Sommerfeld number`, '%', 0.3)(film.sommerfeld, sommerfeld);
      outsideCheck('oil-film', `${source}: attitude`, 'deg', 0.2)((film.attitude * 180) / Math.PI, attitude);
    }
  });
});
