/** @module A shim pack against the one needed: how far off in millimetres and in crank angle, and which way. */
import type { PumpTiming } from '../engine/pump-timing.ts';
import { type Millimetres, mm, type Radians, radians } from '../quantity/brand.ts';

/** A pack as it is, against the pack needed; errors are missing as long as the need is not known. */
export interface PackAgainstNeed {
  readonly thickness: Millimetres;
  /** Thickness less needed. */
  readonly error?: Millimetres;
  /** The same as crank angle; positive is early (advanced). */
  readonly timingError?: Radians;
  readonly withinTolerance?: boolean;
}

/** Tolerances and sums of decimals meet to a rounding of the machine: a nanometre. */
const rounding = 1e-6;

/** Crank angle by which a pump comes earlier for each millimetre more of shim; below 0 where shims retard. */
export const earlierPerShim = ({ addingShims, rate }: PumpTiming): number =>
  addingShims === 'retards' ? -rate : rate;

export const packAgainst = (
  timing: PumpTiming,
  thickness: Millimetres,
  needed: Millimetres | undefined,
): PackAgainstNeed => {
  if (needed === undefined) return { thickness };
  const error = mm(thickness - needed);
  return {
    thickness,
    error,
    timingError: radians(earlierPerShim(timing) * error + 0),
    withinTolerance: Math.abs(error) <= timing.tolerance + rounding,
  };
};
