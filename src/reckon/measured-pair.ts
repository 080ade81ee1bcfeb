/** @module Two measured sizes of which one sits in the other, as sums about their clearance take them. */
import { coverageFactor } from '../quantity/coverage.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { Uncertain } from '../quantity/uncertain.ts';
import { quantityInput } from './inputs.ts';
import { quantityOf, type Values } from './reckoning.ts';
import { withShared } from './shared-error.ts';

interface MeasuredPair {
  readonly outer: Uncertain;
  readonly inner: Uncertain;
}

export const sharedInput = quantityInput(
  'shared',
  'length',
  'the part of both ± that is one and the same error, as where one micrometer served for both: it cancels',
  '0 to the smaller of the two ±',
  '0.002mm',
  { unlessGiven: '0 mm' },
);

/**
 * Both sizes with the error that they share named as one.
 *
 * @internal
 */
export const measuredPair = (values: Values, outerKey: string, innerKey: string): Answer<MeasuredPair> => {
  const outer = quantityOf(values, outerKey);
  const inner = quantityOf(values, innerKey);
  for (const [key, size] of [
    [outerKey, outer],
    [innerKey, inner],
  ] as const) {
    if (!(size.value > 0))
      return refuse(`a ${key} of ${size.value} mm is out of range`, key, 'give its size, above 0');
  }
  const half = quantityOf(values, 'shared').value;
  if (half < 0) return refuse('a shared error less than 0 is out of range', 'shared', 'leave out its sign');
  const shared = half / coverageFactor(0.95, Infinity);
  const parted = [withShared(outer, outerKey, shared), withShared(inner, innerKey, shared)];
  const [ownOuter, ownInner] = parted;
  if (ownOuter === undefined || ownInner === undefined)
    return refuse(
      'the shared error is larger than the ± it is part of',
      'shared',
      `give ${outerKey} and ${innerKey} with a ± that holds the shared part too`,
    );
  return answer({ outer: ownOuter, inner: ownInner });
};
