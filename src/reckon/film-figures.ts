/** @module What an oil film carries, leaks and drags, in the figures without units by which bearings are compared. */
import { type Film, type FilmGrid, type FilmShape, filmPressure } from './film-pressure.ts';

export interface FilmFigures {
  /** (radius / clearance)² × viscosity × revolutions per second / (load / projected area). */
  readonly sommerfeld: number;
  /** From the load's line to the narrowest gap, in the direction of turning, radians. */
  readonly attitude: number;
  /** (radius / clearance) × coefficient of friction at the journal, the whole turn dragging. */
  readonly friction: number;
  /** Flow into the film / (radius × clearance × revolutions per second × length). */
  readonly flow: number;
  /** Part of that flow that leaves at the edges. */
  readonly sideFlow: number;
  /** Load / projected area / greatest pressure. */
  readonly evenness: number;
}

const radiusOverLength = ({ lengthOverDiameter }: FilmShape): number => 1 / (2 * lengthOverDiameter);

/** The top of the parabola through a greatest value and its neighbours on evenly cut ground. */
const crest = (before: number, at: number, after: number): number => {
  const bend = before - 2 * at + after;
  return bend < 0 ? at - (after - before) ** 2 / (8 * bend) : at;
};

/** Each with an error that falls by four as the steps are halved. */
const figuresOf = (shape: FilmShape, film: Film): FilmFigures => {
  const { grid, angles, gaps, stretch, pressures } = film;
  const { around, across } = grid;
  const step = (2 * Math.PI) / around;
  const edge = 0.5 / across;
  const pressure = (i: number, j: number) => (j >= across ? 0 : (pressures[i * across + j] as number));
  /** Over both halves of the bearing; what is summed is nought at the edge. */
  const overLength = (value: (j: number) => number) => {
    let sum = value(0) / 2;
    for (let j = 1; j < across; j += 1) sum += value(j);
    return 2 * edge * sum;
  };
  let [along, athwart, shear, leak] = [0, 0, 0, 0];
  let highest = 0;
  for (let i = 0; i < around; i += 1) {
    const [angle, gap, width] = [angles[i] as number, gaps[i] as number, (stretch[i] as number) * step];
    const carried = overLength((j) => pressure(i, j)) * width;
    along -= carried * Math.cos(angle);
    athwart += carried * Math.sin(angle);
    shear += width / gap;
    leak += ((4 * pressure(i, across - 1) - pressure(i, across - 2)) / (2 * edge)) * gap ** 3 * width;
    if (pressure(i, 0) > pressure(highest, 0)) highest = i;
  }
  const load = Math.hypot(along, athwart);
  // Flow past the widest gap: what the journal drags in less what the pressure ahead holds back.
  const rise = overLength((j) => 4 * pressure(1, j) - pressure(2, j)) / (2 * step * (stretch[0] as number));
  const widest = gaps[0] as number;
  const flow = Math.PI * (widest - (widest ** 3 * rise) / 6);
  const side = (Math.PI / 3) * radiusOverLength(shape) ** 2 * leak;
  // H/2 ∂p/∂θ over the turn, by parts: the pressure is nought at both ends, and dH/dθ = −ε sin θ.
  const pull = (shape.eccentricity / 2) * athwart;
  const most = crest(pressure(highest - 1, 0), pressure(highest, 0), pressure(highest + 1, 0));
  return {
    sommerfeld: 1 / (Math.PI * load),
    attitude: Math.atan2(athwart, along),
    friction: (shear + pull) / load,
    flow,
    sideFlow: side / flow,
    // Load over projected area is load / 2 in these units.
    evenness: load / 2 / most,
  };
};

const usualGrid: FilmGrid = { around: 128, across: 12 };

/**
 * What a film carries, leaks and drags, by two grids of which one is twice as fine, and the value to which both tend.
 *
 * @param shape  eccentricity 0.02 to 0.98, length over diameter 0.1 to 4
 * @param grid   the finer of the two grids; steps that four divides
 * @returns figures without units, with an error of some parts in a thousand at most on the usual grid
 * @source  extrapolation by L. F. Richardson; the figures are those of A. A. Raimondi and J. Boyd (1958)
 * @example filmFigures({ eccentricity: 0.6, lengthOverDiameter: 1 }).sommerfeld // 0.121
 */
export const filmFigures = (shape: FilmShape, grid: FilmGrid = usualGrid): FilmFigures => {
  const film = filmPressure(shape, grid);
  const half = { around: grid.around / 2, across: grid.across / 2 };
  const fine = figuresOf(shape, film);
  const coarse = figuresOf(shape, film.coarser ?? filmPressure(shape, half));
  const limit = (key: keyof FilmFigures): number => fine[key] + (fine[key] - coarse[key]) / 3;
  return {
    sommerfeld: limit('sommerfeld'),
    attitude: limit('attitude'),
    friction: limit('friction'),
    flow: limit('flow'),
    sideFlow: limit('sideFlow'),
    evenness: limit('evenness'),
  };
};
