/** @module Which picture belongs to which stand-alone sum: one line each. */
import { assignPicture } from './assign.ts';
import { clearancePicture } from './clearance.ts';
import { conversionPicture } from './conversion.ts';
import { endFloatPicture } from './end-float.ts';
import { formPicture } from './form.ts';
import { pistonClearancePicture, ringSideClearancePicture, stemClearancePicture } from './gaps.ts';
import { droopPicture, governorBandPicture } from './governor.ts';
import { fitPressurePicture, gripTimePicture, shrinkFitPicture } from './heat.ts';
import { economicLimitPicture, remainingHoursPicture } from './life.ts';
import { balanceMassesPicture } from './masses.ts';
import { reboreSizePicture, regrindSizePicture } from './next-size.ts';
import { oilFilmPicture } from './oil-film.ts';
import type { Picture } from './picture.ts';
import { fuelConsumptionPicture, powerCorrectionPicture } from './power.ts';
import { pooledPicture, sizePicture } from './readings.ts';
import { ringGapFromBorePicture, ringGapPicture } from './ring-gap.ts';
import { oilPressureCheckPicture, pumpBalancePicture } from './running.ts';
import { shellClearancePicture } from './shell-clearance.ts';
import { shimPackPicture } from './shim-packs.ts';
import { crankAnglePicture, pistonTravelPicture } from './slider-crank.ts';
import { preloadPicture, tightenOrderPicture, torqueAdapterPicture } from './tightening.ts';
import {
  bumpClearancePicture,
  buttonSwapPicture,
  compressionRatioPicture,
  gasketGradePicture,
  topDeadCentrePicture,
} from './top-of-stroke.ts';
import { camLiftPicture, toothShiftPicture, valveClearancePicture } from './valve-gear.ts';
import { guardBandPicture, repeatsNeededPicture, verdictPicture } from './zones.ts';

/** By the name of the sum. */
export const pictures: Readonly<Record<string, Picture>> = {
  'piston-travel': pistonTravelPicture,
  'crank-angle': crankAnglePicture,
  clearance: clearancePicture,
  'shell-clearance': shellClearancePicture,
  'piston-clearance': pistonClearancePicture,
  'stem-clearance': stemClearancePicture,
  'ring-gap': ringGapPicture,
  'ring-side-clearance': ringSideClearancePicture,
  'end-float': endFloatPicture,
  'shim-pack': shimPackPicture,
  convert: conversionPicture,
  size: sizePicture,
  verdict: verdictPicture,
  'guard-band': guardBandPicture,
  'repeats-needed': repeatsNeededPicture,
  'pooled-repeatability': pooledPicture,
  form: formPicture,
  'ring-gap-from-bore': ringGapFromBorePicture,
  'oil-film': oilFilmPicture,
  'shrink-fit': shrinkFitPicture,
  'grip-time': gripTimePicture,
  'fit-pressure': fitPressurePicture,
  'tighten-order': tightenOrderPicture,
  preload: preloadPicture,
  'torque-adapter': torqueAdapterPicture,
  'bump-clearance': bumpClearancePicture,
  'gasket-grade': gasketGradePicture,
  'compression-ratio': compressionRatioPicture,
  'top-dead-centre': topDeadCentrePicture,
  'button-swap': buttonSwapPicture,
  'tooth-shift': toothShiftPicture,
  'valve-clearance-order': valveClearancePicture,
  'cam-lift': camLiftPicture,
  'regrind-size': regrindSizePicture,
  'rebore-size': reboreSizePicture,
  assign: assignPicture,
  'remaining-hours': remainingHoursPicture,
  'economic-limit': economicLimitPicture,
  droop: droopPicture,
  'governor-band': governorBandPicture,
  'power-correction': powerCorrectionPicture,
  'fuel-consumption': fuelConsumptionPicture,
  'pump-balance': pumpBalancePicture,
  'oil-pressure-check': oilPressureCheckPicture,
  'balance-masses': balanceMassesPicture,
};
