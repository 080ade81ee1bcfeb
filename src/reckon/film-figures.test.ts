/** @module The film's figures against the published charts, the short bearing, and what must hold of any film. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { between } from '../../test/between.ts';
import { outsideCheck } from '../../test/outside-check.ts';
import { type FilmFigures, filmFigures } from './film-figures.ts';
import { filmPressure } from './film-pressure.ts';

const degrees = ({ attitude }: FilmFigures): number => (attitude * 180) / Math.PI;

/** Length over diameter, eccentricity; Sommerfeld number, attitude, friction, flow, side flow over flow, evenness. */
const charts: readonly (readonly [number, number, string])[] = [
  [1, 0.1, '1.33 79.5 26.4 3.37 0.150 0.540'],
  [1, 0.2, '0.631 74.02 12.8 3.59 0.280 0.529'],
  [1, 0.4, '0.264 63.10 5.79 3.99 0.497 0.484'],
  [1, 0.6, '0.121 50.58 3.22 4.33 0.680 0.415'],
  [1, 0.8, '0.0446 36.24 1.70 4.62 0.842 0.313'],
  [1, 0.9, '0.0188 26.45 1.05 4.74 0.919 0.247'],
  [0.5, 0.1, '4.31 81.62 85.6 3.43 0.173 0.523'],
  [0.5, 0.2, '2.03 74.94 40.9 3.72 0.318 0.506'],
  [0.5, 0.6, '0.319 48.14 8.10 4.85 0.730 0.365'],
  [0.5, 0.8, '0.0923 33.31 3.26 5.41 0.874 0.267'],
  [0.5, 0.9, '0.0313 23.66 1.60 5.69 0.939 0.206'],
  [0.25, 0.1, '16.2 82.31 322 3.45 0.180 0.515'],
  [0.25, 0.2, '7.57 75.18 153 3.76 0.330 0.489'],
  [0.25, 0.4, '2.83 60.86 61.1 4.37 0.567 0.415'],
  [0.25, 0.6, '1.07 46.72 26.7 4.99 0.746 0.334'],
  [0.25, 0.9, '0.0736 21.85 3.50 5.91 0.945 0.180'],
];

describe('a film beside the charts', () => {
  /*
   * source: A. A. Raimondi and J. Boyd, A Solution for the Finite Journal Bearing and Its Application to Analysis and
   * Design (1958), full bearing. Their machine left them grids of a few hundred points: where the tests differ by more
   * than half a per cent, a general sparse solver agrees with ours (test/outside/oil-film.test.ts).
   */
  const charted = 'A. A. Raimondi and J. Boyd (1958), L/D 1, 1/2, 1/4';
  it.each(charts)(
    'of length %f diameters at eccentricity %f is theirs',
    (lengthOverDiameter, eccentricity, row) => {
      const [sommerfeld = 0, attitude = 0, friction = 0, flow = 0, sideFlow = 0, evenness = 0] = row
        .split(' ')
        .map(Number);
      const film = filmFigures({ eccentricity, lengthOverDiameter });
      outsideCheck('oil-film', `${charted}: Sommerfeld number`, '%', 1.5)(film.sommerfeld, sommerfeld);
      outsideCheck('oil-film', `${charted}: attitude`, 'deg', 0.6)(degrees(film), attitude);
      outsideCheck('oil-film', `${charted}: friction`, '%', 1)(film.friction, friction);
      outsideCheck('oil-film', `${charted}: flow`, '%', 0.2)(film.flow, flow);
      outsideCheck('oil-film', `${charted}: side flow`, '%', 0.6)(film.sideFlow, sideFlow);
      outsideCheck('oil-film', `${charted}: greatest pressure`, '%', 2.6)(film.evenness, evenness);
    },
  );

  it('carries as theirs within half a per cent in all but three rows', () => {
    const off = charts.filter(([lengthOverDiameter, eccentricity, row]) => {
      const { sommerfeld } = filmFigures({ eccentricity, lengthOverDiameter });
      return Math.abs(sommerfeld / Number(row.split(' ')[0]) - 1) > 0.005;
    });
    expect(off.map(([length, eccentricity]) => [length, eccentricity])).toEqual([
      [1, 0.4],
      [0.5, 0.8],
      [0.25, 0.6],
    ]);
  });

  it('of a very short bearing is the closed form', () => {
    // source: F. W. Ocvirk (1953): S = (1 − ε²)² / ((L/D)² π ε √(π² (1 − ε²) + 16 ε²)), tan φ = π √(1 − ε²) / 4 ε
    for (const eccentricity of [0.2, 0.5]) {
      const short = 0.05;
      const rest = 1 - eccentricity ** 2;
      const root = Math.sqrt(Math.PI ** 2 * rest + 16 * eccentricity ** 2);
      const film = filmFigures({ eccentricity, lengthOverDiameter: short });
      const ocvirk = 'F. W. Ocvirk (1953), short bearing, L/D 1/20';
      outsideCheck(
        'oil-film',
        ocvirk,
        '%',
        0.5,
      )(film.sommerfeld, rest ** 2 / (short ** 2 * Math.PI * eccentricity * root));
      outsideCheck(
        'oil-film',
        `${ocvirk}: attitude`,
        'deg',
        0.3,
      )(degrees(film), (Math.atan2(Math.PI * Math.sqrt(rest), 4 * eccentricity) * 180) / Math.PI);
    }
  });
});

describe('any film', () => {
  const shapes = fc.record({ eccentricity: between(0.05, 0.95), lengthOverDiameter: between(0.2, 2) });

  it('pulls nowhere, and ends where it ruptures', () => {
    fc.assert(
      fc.property(shapes, (shape) => {
        const { pressures } = filmPressure(shape, { around: 64, across: 8 });
        expect(pressures.every((pressure) => pressure >= 0 && Number.isFinite(pressure))).toBe(true);
        expect(pressures.slice(0, 8).every((pressure) => pressure === 0)).toBe(true);
        expect(pressures.at(-1)).toBe(0);
      }),
      { numRuns: 40 },
    );
  });

  it('carries more and lies nearer the load’s line the further the journal moves out', () => {
    fc.assert(
      fc.property(between(0.05, 0.9), between(0.2, 2), (eccentricity, lengthOverDiameter) => {
        const here = filmFigures({ eccentricity, lengthOverDiameter });
        const further = filmFigures({ eccentricity: eccentricity + 0.05, lengthOverDiameter });
        expect(further.sommerfeld).toBeLessThan(here.sommerfeld);
        expect(further.attitude).toBeLessThan(here.attitude);
        expect(here.sideFlow).toBeGreaterThan(0);
        expect(here.sideFlow).toBeLessThan(1);
      }),
      { numRuns: 25 },
    );
  });

  it('loses at its edges what comes in and is not carried past its end', () => {
    // What is left at the rupture is a full gap of oil moving with the journal: inflow − π ∫ H there.
    const shape = { eccentricity: 0.6, lengthOverDiameter: 1 };
    const film = filmPressure(shape, { around: 512, across: 24 });
    const { across } = film.grid;
    let past = 0;
    for (let j = 0; j < across; j += 1) {
      const column = film.gaps.map((_, i) => film.pressures[i * across + j] ?? 0);
      past += (film.gaps[column.findLastIndex((pressure) => pressure > 0)] ?? 0) * (j === 0 ? 0.5 : 1);
    }
    const figures = filmFigures(shape);
    const kept = (Math.PI * (past + 0.5 * (1 - shape.eccentricity))) / across;
    expect(figures.flow * (1 - figures.sideFlow)).toBeCloseTo(kept, 1);
  });
});
