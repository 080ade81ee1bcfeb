/** @module The pressure in the oil film of a plain bearing: the Reynolds equation over the whole bearing, solved exactly on its grid. */

/** A film without units: what hangs on eccentricity and on length over diameter alone. */
export interface FilmShape {
  /** Of the journal in its clearance, 0 to below 1. */
  readonly eccentricity: number;
  /** Length of the bearing over its diameter. */
  readonly lengthOverDiameter: number;
}

export interface FilmGrid {
  /** Steps around, even. */
  readonly around: number;
  /** Steps from the middle of the bearing to its edge. */
  readonly across: number;
}

export interface Film {
  readonly grid: FilmGrid;
  /** Angles from the widest gap in the direction of turning, radians, at the steps around. */
  readonly angles: Float64Array;
  /** Gap over clearance at the steps around. */
  readonly gaps: Float64Array;
  /** Pressure × (clearance / radius)² / (viscosity × angular speed), steps around first, then steps across from the middle. */
  readonly pressures: Float64Array;
  /** Change of angle with the even steps in which the film is cut. */
  readonly stretch: Float64Array;
  /** The same film on half as many steps each way, from which this one was begun. */
  readonly coarser?: Film;
}

/**
 * The film is cut in even steps of the angle by which Sommerfeld made the gap a simple fraction: they lie close where the
 * gap is narrow, so that a bearing near contact needs no finer grid than one that runs in the middle.
 */
const stepsAround = (eccentricity: number, around: number) => {
  const spread = Math.sqrt(1 - eccentricity ** 2);
  const at = (step: number) => {
    const even = (2 * Math.PI * step) / around;
    const below = 1 - eccentricity * Math.cos(even);
    const turned = Math.acos(Math.max(-1, Math.min(1, (Math.cos(even) - eccentricity) / below)));
    return {
      angle: even <= Math.PI ? turned : 2 * Math.PI - turned,
      gap: spread ** 2 / below,
      stretch: spread / below,
    };
  };
  return at;
};

/**
 * Solves a symmetric positive system whose rows reach no further than `band` from the diagonal, in place.
 *
 * @param rows  lower triangle, row by row: diagonal last, `band` entries before it
 * @param right  right side, overwritten by the answer
 */
const solveBanded = (rows: Float64Array, right: Float64Array, band: number): void => {
  const wide = band + 1;
  const count = right.length;
  for (let row = 0; row < count; row += 1) {
    const start = row * wide + band - row;
    const first = Math.max(0, row - band);
    for (let column = first; column < row; column += 1) {
      const other = column * wide + band - column;
      let sum = rows[start + column] as number;
      for (let at = Math.max(first, column - band); at < column; at += 1)
        sum -= (rows[start + at] as number) * (rows[other + at] as number);
      rows[start + column] = sum / (rows[other + column] as number);
    }
    let diagonal = rows[start + row] as number;
    let answer = right[row] as number;
    for (let at = first; at < row; at += 1) {
      const entry = rows[start + at] as number;
      diagonal -= entry * entry;
      answer -= entry * (right[at] as number);
    }
    const root = Math.sqrt(diagonal);
    rows[start + row] = root;
    right[row] = answer / root;
  }
  for (let row = count - 1; row >= 0; row -= 1) {
    const start = row * wide + band - row;
    const answer = (right[row] as number) / (rows[start + row] as number);
    right[row] = answer;
    for (let at = Math.max(0, row - band); at < row; at += 1)
      right[at] = (right[at] as number) - (rows[start + at] as number) * answer;
  }
};

/** Points at which pressure is to be looked for first: where the gap narrows, or where a grid half as fine has found it. */
const firstHeld = ({ around, across }: FilmGrid, coarse: Film | undefined): Uint8Array =>
  Uint8Array.from({ length: (around - 1) * across }, (_, index) => {
    const i = Math.floor(index / across) + 1;
    if (coarse === undefined) return i <= around / 2 ? 1 : 0;
    const half = coarse.grid.across;
    const pressed = (row: number, column: number) =>
      column < half && (coarse.pressures[row * half + column] as number) > 0;
    const row = i / 2;
    const column = Math.floor((index % across) / 2);
    return pressed(Math.floor(row), column) || pressed(Math.ceil(row), column) ? 1 : 0;
  });

/** Grids of fewer points than this are solved from nothing. */
const coarsest = 32;

/**
 * Pressure over the film of a bearing that is fed along the line of its widest gap and loaded steadily.
 *
 * ∂/∂θ (H³ ∂p/∂θ) + (R / L)² ∂/∂ζ (H³ ∂p/∂ζ) = 6 dH/dθ with H = 1 + ε cos θ; no pressure at the edges, at the
 * feed and where the film has ruptured: there it ends without a slope (the Reynolds condition), which is to say that
 * pressure is nowhere below nought and that nothing flows out of nothing. Finite volumes, symmetric about the
 * middle; the film's end is found by letting go of every point that would pull and taking up every point that would be
 * pressed, until none changes.
 *
 * @param shape  eccentricity 0 to 0.99, length over diameter 0.05 to 10
 * @param grid   steps around (even, 16 and up) and from the middle to the edge (2 and up)
 * @returns pressures on the grid, without units
 * @source  O. Reynolds (1886); H. W. Swift and W. Stieber on the film's end; angle of A. Sommerfeld (1904)
 * @example filmPressure({ eccentricity: 0.6, lengthOverDiameter: 1 }, { around: 64, across: 8 }).pressures.length // 520
 */
export const filmPressure = (shape: FilmShape, grid: FilmGrid): Film => {
  const { around, across } = grid;
  const at = stepsAround(shape.eccentricity, around);
  const band = across;
  const wide = band + 1;
  const count = (around - 1) * across;
  const step = (2 * Math.PI) / around;
  const edge = 0.5 / across;
  const axial = (1 / (2 * shape.lengthOverDiameter)) ** 2 / edge ** 2;
  // Half of the middle row belongs to the other half of the bearing: so the system stays symmetric.
  const weight = (j: number) => (j === 0 ? 0.5 : 1);
  const link = Float64Array.from({ length: around }, (_, i) => {
    const { gap, stretch } = at(i + 0.5);
    return gap ** 3 / stretch / step ** 2;
  });
  const middle = Array.from({ length: around + 1 }, (_, i) => at(i));
  const side = middle.map(({ gap, stretch }) => axial * gap ** 3 * stretch);
  const push = Float64Array.from({ length: around }, (_, i) =>
    i === 0 ? 0 : (-6 * (at(i + 0.5).gap - at(i - 0.5).gap)) / step,
  );

  const pressures = new Float64Array((around + 1) * across);
  const half = { around: around / 2, across: across / 2 };
  const nested = around > coarsest && around % 4 === 0 && across % 2 === 0;
  const coarser = nested ? filmPressure(shape, half) : undefined;
  const held = firstHeld(grid, coarser);
  const rows = new Float64Array(count * wide);
  const right = new Float64Array(count);
  for (let round = 0; round < 60; round += 1) {
    rows.fill(0);
    right.fill(0);
    for (let index = 0; index < count; index += 1) {
      const i = Math.floor(index / across) + 1;
      const j = index % across;
      const start = index * wide;
      if (!held[index]) {
        rows[start + band] = 1;
        continue;
      }
      const back = (link[i - 1] as number) * weight(j);
      const ahead = (link[i] as number) * weight(j);
      const outward = side[i] as number;
      rows[start + band] = back + ahead + outward + (j === 0 ? 0 : outward);
      if (i > 1 && held[index - across]) rows[start] = -back;
      if (j > 0 && held[index - 1]) rows[start + band - 1] = (rows[start + band - 1] as number) - outward;
      right[index] = (push[i] as number) * weight(j);
    }
    solveBanded(rows, right, band);
    pressures.fill(0);
    for (let index = 0; index < count; index += 1)
      if (held[index]) pressures[index + across] = right[index] as number;
    let changed = false;
    for (let index = 0; index < count; index += 1) {
      const i = Math.floor(index / across) + 1;
      const j = index % across;
      const own = index + across;
      if (held[index]) {
        if ((pressures[own] as number) < 0) {
          held[index] = 0;
          changed = true;
        }
        continue;
      }
      const pressed =
        (push[i] as number) * weight(j) +
        weight(j) *
          ((link[i - 1] as number) * (pressures[own - across] as number) +
            (link[i] as number) * (pressures[own + across] as number)) +
        (side[i] as number) *
          ((j > 0 ? (pressures[own - 1] as number) : 0) +
            (j < across - 1 ? (pressures[own + 1] as number) : 0));
      if (pressed > 1e-12) {
        held[index] = 1;
        changed = true;
      }
    }
    if (!changed) break;
  }
  return {
    grid,
    angles: Float64Array.from(middle, ({ angle }) => angle),
    gaps: Float64Array.from(middle, ({ gap }) => gap),
    stretch: Float64Array.from(middle, ({ stretch }) => stretch),
    pressures,
    ...(coarser !== undefined && { coarser }),
  };
};
