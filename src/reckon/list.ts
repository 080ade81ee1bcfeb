/** @module The stand-alone sums by name: one line each. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { assignReckoning } from './assign-reckoning.ts';
import { balanceMassesReckoning } from './balance-masses.ts';
import { bumpClearanceReckoning } from './bump-clearance.ts';
import { buttonSwapReckoning } from './button-swap.ts';
import { camLiftReckoning } from './cam-lift.ts';
import { clearanceReckoning } from './clearance.ts';
import { compressionRatioReckoning } from './compression-ratio.ts';
import { convertReckoning } from './convert.ts';
import { crankAngleReckoning } from './crank-angle.ts';
import { droopReckoning } from './droop.ts';
import { economicLimitReckoning } from './economic-limit.ts';
import { endFloatReckoning } from './end-float.ts';
import { fitPressureReckoning } from './fit-pressure.ts';
import { formReckoning } from './form.ts';
import { fuelConsumptionReckoning } from './fuel-consumption.ts';
import { gasketGradeReckoning } from './gasket-grade.ts';
import { reckonTyped } from './given.ts';
import { governorBandReckoning } from './governor-band.ts';
import { gripTimeReckoning } from './grip-time.ts';
import { guardBandReckoning } from './guard-band.ts';
import { reboreSizeReckoning, regrindSizeReckoning } from './next-size.ts';
import { oilFilmReckoning } from './oil-film-reckoning.ts';
import { oilPressureCheckReckoning } from './oil-pressure-check.ts';
import { pistonClearanceReckoning } from './piston-clearance.ts';
import { pistonTravelReckoning } from './piston-travel.ts';
import { pooledRepeatabilityReckoning } from './pooled-repeatability.ts';
import { powerCorrectionReckoning } from './power-correction.ts';
import { preloadReckoning } from './preload.ts';
import { pumpBalanceReckoning } from './pump-balance.ts';
import type { Reckoned, Reckoning } from './reckoning.ts';
import { remainingHoursReckoning } from './remaining-hours-reckoning.ts';
import { repeatsNeededReckoning } from './repeats-needed.ts';
import { ringGapReckoning } from './ring-gap.ts';
import { ringGapFromBoreReckoning } from './ring-gap-from-bore.ts';
import { ringSideClearanceReckoning } from './ring-side-clearance.ts';
import { shellClearanceReckoning } from './shell-clearance.ts';
import { shimPackReckoning } from './shim-pack-reckoning.ts';
import { shrinkFitReckoning } from './shrink-fit.ts';
import { sizeReckoning } from './size.ts';
import { stemClearanceReckoning } from './stem-clearance.ts';
import { tightenOrderReckoning } from './tighten-order.ts';
import { toothShiftReckoning } from './tooth-shift.ts';
import { topDeadCentreReckoning } from './top-dead-centre.ts';
import { torqueAdapterReckoning } from './torque-adapter.ts';
import { valveClearanceReckoning } from './valve-clearance-order.ts';
import { verdictReckoning } from './verdict.ts';

export const reckonings: readonly Reckoning[] = [
  pistonTravelReckoning,
  crankAngleReckoning,
  clearanceReckoning,
  shellClearanceReckoning,
  pistonClearanceReckoning,
  stemClearanceReckoning,
  ringGapReckoning,
  ringSideClearanceReckoning,
  endFloatReckoning,
  shimPackReckoning,
  convertReckoning,
  sizeReckoning,
  verdictReckoning,
  guardBandReckoning,
  repeatsNeededReckoning,
  pooledRepeatabilityReckoning,
  formReckoning,
  ringGapFromBoreReckoning,
  oilFilmReckoning,
  shrinkFitReckoning,
  gripTimeReckoning,
  fitPressureReckoning,
  tightenOrderReckoning,
  preloadReckoning,
  torqueAdapterReckoning,
  bumpClearanceReckoning,
  gasketGradeReckoning,
  compressionRatioReckoning,
  topDeadCentreReckoning,
  buttonSwapReckoning,
  toothShiftReckoning,
  valveClearanceReckoning,
  camLiftReckoning,
  regrindSizeReckoning,
  reboreSizeReckoning,
  assignReckoning,
  remainingHoursReckoning,
  economicLimitReckoning,
  droopReckoning,
  governorBandReckoning,
  powerCorrectionReckoning,
  fuelConsumptionReckoning,
  pumpBalanceReckoning,
  oilPressureCheckReckoning,
  balanceMassesReckoning,
];

/** What `reckon NAME --json` prints. */
export interface ReckonedByName extends Reckoned {
  readonly name: string;
  /** As typed, and what was taken where nothing was given. */
  readonly inputs: Readonly<Record<string, string>>;
}

/**
 * Does a sum by its name.
 *
 * @param name   as the list has it
 * @param texts  inputs by key, with units
 * @returns results with units and notes; refuses an unknown sum, unknown, missing or unreadable inputs,
 *          and figures out of the sum's range
 * @source  that of the sum named
 * @example reckonByName('piston-travle', {}) // refused
 */
export const reckonByName = (
  name: string,
  texts: Readonly<Record<string, string>>,
): Answer<ReckonedByName> => {
  const reckoning = reckonings.find((known) => known.name === name);
  if (reckoning === undefined) {
    const names = reckonings.map((known) => known.name).join(', ');
    return refuse(`there is no sum ${name.slice(0, 40)}`, name.slice(0, 40), `choose one of ${names}`);
  }
  const typed = reckonTyped(reckoning, texts);
  if (typed.kind === 'refused') return typed;
  return answer({ name, inputs: typed.value.texts, ...typed.value.reckoned });
};
