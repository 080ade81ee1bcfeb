/** @module A size weighed against its limits by the shop's rule. */
import type { Limits } from '../engine/engine-type.ts';
import { coverageFactor } from '../quantity/coverage.ts';
import { effectiveFreedom, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { type Decided, type DecisionRule, decided } from './decision-rule.ts';
import { tailsBeyond } from './guard-band.ts';

/** Half the width of an interval is told for this coverage, whatever conformance is asked for. */
const coverage = 0.95;

export interface Weighed {
  readonly expanded: number;
  readonly conformance: number;
  readonly verdict: Decided;
}

const anything: Limits['goesBack'] = {};

export const liesIn = (value: number, { least, greatest }: Limits['new']): boolean =>
  (least === undefined || value >= least) && (greatest === undefined || value <= greatest);

/** Distance between the limits for going back; undefined where there is one or none. */
const toleranceOf = ({ least, greatest }: Limits['goesBack']): number | undefined =>
  least === undefined || greatest === undefined ? undefined : greatest - least;

/**
 * Half width, probability and verdict of a size.
 *
 * @param size    in mm
 * @param limits  undefined where the manual gives none
 * @param rule    the shop's
 * @param joint   probability of conformance where it was worked out better than from the size alone
 * @returns verdict by the rule; `within` where there are no limits
 * @source  JCGM 106:2012, 7 and 8; ISO 14253-1:2017
 */
export const weigh = (
  size: Uncertain,
  limits: Limits | undefined,
  rule: DecisionRule,
  joint?: number,
): Weighed => {
  const u = standardUncertainty(size);
  const freedom = effectiveFreedom(size);
  const expanded = u === 0 ? 0 : u * coverageFactor(coverage, freedom);
  if (!limits) return { expanded, conformance: 1, verdict: 'within' };
  const bounds = limits.goesBack ?? anything;
  const { below, above } = tailsBeyond(size.value, u, freedom, bounds);
  const conformance = joint ?? Math.min(1, Math.max(0, 1 - below - above));
  const verdict = decided(rule, {
    inside: liesIn(size.value, bounds),
    conformance,
    beyond: Math.max(below, above),
    expanded,
    tolerance: toleranceOf(bounds),
  });
  return { expanded, conformance, verdict };
};
