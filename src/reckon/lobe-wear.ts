/** @module Where a cam's lobe has fallen behind another, angle by angle, as far as dial and protractor can tell. */
import { coverageFactor } from '../quantity/coverage.ts';

/** One standard uncertainty each of what is read. */
export interface LobeReading {
  /** Of a lift, its zero on the base circle in it, mm. */
  readonly lift: number;
  /** Of an angle, degrees. */
  readonly angle: number;
}

export interface FallenRange {
  /** Angles of the first and the last reading that fell behind, degrees. */
  readonly from: number;
  readonly to: number;
}

export interface LobeWear {
  /** By which the lobe is turned late in its readings, degrees: no wear. */
  readonly turned: number;
  readonly ranges: readonly FallenRange[];
  /** mm; where the fall is surest. */
  readonly most: { readonly at: number; readonly fall: number; readonly u: number };
}

/** Between the readings by the cubic through the two before and the two behind; level beyond the ends. */
const liftAt = (lifts: readonly number[], at: number): number => {
  const first = Math.max(0, Math.min(lifts.length - 4, Math.floor(at) - 1));
  const near = lifts.slice(first, first + 4);
  if (at <= 0) return near[0] ?? 0;
  if (at >= lifts.length - 1) return lifts.at(-1) ?? 0;
  return near.reduce(
    (sum, lift, own) =>
      sum +
      near.reduce(
        (part, _, other) => (other === own ? part : (part * (at - first - other)) / (own - other)),
        lift,
      ),
    0,
  );
};

const slopeAt = (lifts: readonly number[], index: number): number =>
  ((lifts[Math.min(lifts.length - 1, index + 1)] ?? 0) - (lifts[Math.max(0, index - 1)] ?? 0)) / 2;

/** Settings tried to either side of none. */
const settings = 40;

/** A fall of so many standard uncertainties is wear for the setting of the lobe, and tells nothing of its zero. */
const wornFrom = 3;

/**
 * Where one lobe lies below another.
 *
 * Both were read from a zero of their own, so that the lobe may stand turned by what two zeros can differ. It is turned
 * to where the sum of (fall / u)² and of (turn / its own u)² is least, a fall of more than three u counting as wear and no
 * further, while a rise counts in full: wear lowers and never raises. What is left at a
 * reading is a fall where it is more than its uncertainty covers; the factor is that of 95 times in 100 for all readings
 * together, for among many one is off by chance.
 *
 * @param whole    lifts of the lobe that is held to be whole, mm, at even steps
 * @param lobe     lifts of the other, mm, at the same steps
 * @param from     angle of the first, degrees
 * @param step     between two, degrees, above 0
 * @param reading  standard uncertainties; angles above 0 or 0
 * @param exact    whether the whole lobe was not read but is the manual's
 * @returns ranges of readings that fell behind, and the surest fall with its standard uncertainty
 * @source  first-order propagation, JCGM 100:2008; one-sided test shared out over all readings (C. E. Bonferroni)
 * @example lobeWear([0, 1, 3, 4, 3, 1, 0], [0, 1, 3, 4, 2.5, 1, 0], 0, 10, { lift: 0.01, angle: 0.1 }, false).ranges[0]?.from // 40 deg
 */
export const lobeWear = (
  whole: readonly number[],
  lobe: readonly number[],
  from: number,
  step: number,
  reading: LobeReading,
  exact: boolean,
): LobeWear => {
  const count = Math.min(whole.length, lobe.length);
  const readings = exact ? 1 : 2;
  const slopes = Array.from({ length: count }, (_, index) => slopeAt(whole, index) / step);
  const spread = slopes.map((slope) =>
    Math.sqrt(readings * (reading.lift ** 2 + (slope * reading.angle) ** 2)),
  );
  const falls = (turned: number): readonly number[] =>
    spread.map((_, index) => liftAt(whole, index - turned / step) - (lobe[index] ?? 0));
  const zeros = reading.angle * Math.sqrt(readings);
  const cost = (turned: number): number =>
    falls(turned).reduce(
      (sum, fall, index) => {
        const square = (fall / (spread[index] || 1)) ** 2;
        return sum + (fall > 0 ? Math.min(square, wornFrom ** 2) : square);
      },
      (turned / (zeros || 1)) ** 2,
    );
  const widest = wornFrom * zeros;
  let [turned, least] = [0, cost(0)];
  for (let at = -settings; at <= settings; at += 1) {
    const tried = (at / settings) * widest;
    const costs = cost(tried);
    if (costs < least) [turned, least] = [tried, costs];
  }
  const left = falls(turned);
  // How well the turn is known: by the two zeros, and by each reading that is not worn.
  const sound = slopes.map((slope, index) =>
    (left[index] ?? 0) > wornFrom * (spread[index] ?? 0) ? 0 : (slope / (spread[index] || 1)) ** 2,
  );
  const ofTurn = zeros === 0 ? 0 : 1 / Math.sqrt(zeros ** -2 + sound.reduce((sum, one) => sum + one, 0));
  const u = spread.map((own, index) => Math.hypot(own, (slopes[index] ?? 0) * ofTurn));
  const factor = coverageFactor(1 - 0.1 / count, Infinity);
  const behind = left.map((fall, index) => fall > factor * (u[index] ?? 0));
  const ranges: FallenRange[] = [];
  for (const [index, is] of behind.entries()) {
    if (!is) continue;
    const at = from + index * step;
    const open = behind[index - 1] ? ranges.pop() : undefined;
    ranges.push({ from: open?.from ?? at, to: at });
  }
  const sureness = left.map((fall, index) => fall / (u[index] || 1));
  const surest = sureness.indexOf(Math.max(...sureness));
  return {
    turned,
    ranges,
    most: { at: from + surest * step, fall: left[surest] ?? 0, u: u[surest] ?? 0 },
  };
};
