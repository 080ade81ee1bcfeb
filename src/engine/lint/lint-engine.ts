/** @module The linter of engine types: what shape alone cannot tell, one rule a file. */
import type { EngineType } from '../engine-type.ts';
import type { Finding } from '../finding.ts';
import { asksAnswerable } from './asks.ts';
import { checkedByTwo } from './checked-by-two.ts';
import { couplingSense } from './coupling-sense.ts';
import { coveredProved } from './covered-proved.ts';
import { derivedSums } from './derived-sums.ts';
import { engineForm } from './engine-form.ts';
import { figuresInDispute } from './figures-in-dispute.ts';
import { fittedAgain } from './fitted-again.ts';
import { fittingInstrument } from './fitting-instrument.ts';
import { fittingTerms } from './fitting-terms.ts';
import { gapsInBores } from './gaps-in-bores.ts';
import { holdPoints } from './hold-points.ts';
import { joints } from './joints.ts';
import { knownNames } from './known-names.ts';
import { limitsInOrder } from './limits-in-order.ts';
import { machiningTerms } from './machining-terms.ts';
import { matchingPlaces } from './matching-places.ts';
import { mixedUnits } from './mixed-units.ts';
import { noDuplicates } from './no-duplicates.ts';
import { offerTerms } from './offer-terms.ts';
import { oneQuantity } from './one-quantity.ts';
import { oneUseRenewed } from './one-use-renewed.ts';
import { orderOfWork } from './order-of-work.ts';
import { printedPairs } from './printed-pairs.ts';
import { pumpTimingFits } from './pump-timing-fits.ts';
import { runInSense } from './run-in-sense.ts';
import { secondSpill } from './second-spill.ts';
import { shimLaw } from './shim-law.ts';
import { shimReach } from './shim-reach.ts';
import { sizeFit } from './size-fit.ts';
import { sizeRoom } from './size-room.ts';
import { sizeSteps } from './size-steps.ts';
import { stretchBolts } from './stretch-bolts.ts';
import { tightenedAgain } from './tightened-again.ts';
import { tightenedBy } from './tightened-by.ts';
import { tightening } from './tightening.ts';
import { valvesSet } from './valves-set.ts';
import { waysOpen } from './ways-open.ts';
import { wearSide } from './wear-side.ts';

/** What is wrong with an engine type in one respect. */
export type Rule = (engine: EngineType) => readonly Finding[];

const ownRules: readonly Rule[] = [
  knownNames,
  noDuplicates,
  engineForm,
  limitsInOrder,
  wearSide,
  mixedUnits,
  printedPairs,
  derivedSums,
  oneQuantity,
  fittingInstrument,
  gapsInBores,
  matchingPlaces,
  sizeSteps,
  sizeRoom,
  sizeFit,
  waysOpen,
  offerTerms,
  couplingSense,
  machiningTerms,
  fittingTerms,
  tightening,
  joints,
  stretchBolts,
  tightenedBy,
  tightenedAgain,
  orderOfWork,
  fittedAgain,
  oneUseRenewed,
  coveredProved,
  asksAnswerable,
  holdPoints,
  pumpTimingFits,
  shimReach,
  shimLaw,
  secondSpill,
  runInSense,
  valvesSet,
  checkedByTwo,
  figuresInDispute,
];

/** Everything that the rules find in an engine type, errors first. */
export const lintEngine = (engine: EngineType, more: readonly Rule[] = []): readonly Finding[] => {
  const findings = [...ownRules, ...more].flatMap((rule) => rule(engine));
  return [
    ...findings.filter(({ weight }) => weight === 'error'),
    ...findings.filter(({ weight }) => weight === 'warning'),
  ];
};
