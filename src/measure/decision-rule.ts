/** @module The shop's rule for saying within or outside of a value that is not exactly known. */

import { formatFigure } from '../quantity/figure.ts';

export type DecisionRule =
  /** Proved with a probability, else unsure (ISO 14253-1 takes 0.95 where nothing is agreed). */
  | { readonly kind: 'guarded'; readonly conformance: number }
  /** As measured, where the tolerance is at least so many times the expanded uncertainty; else unsure. */
  | { readonly kind: 'simple'; readonly ratio: number }
  /** Accepted where it conforms with at least this probability, else rejected: shop and owner share what is left. */
  | { readonly kind: 'shared risk'; readonly conformance: number };

/** Whether a rule can be kept: a probability of a half and more, or a ratio that anybody asks for. */
export const isSound = (rule: DecisionRule): boolean =>
  rule.kind === 'simple'
    ? rule.ratio >= 1 && rule.ratio <= 100
    : rule.conformance >= 0.5 && rule.conformance < 1;

export type Decided = 'within' | 'outside' | 'unsure';

/** What a measurement has to say, whichever rule is asked. */
export interface Evidence {
  /** Whether the value as measured lies between its limits. */
  readonly inside: boolean;
  /** Probability that the true value does. */
  readonly conformance: number;
  /** Probability that it lies beyond one of them, the likelier. */
  readonly beyond: number;
  /** Half the width of the 95 % interval, in the unit of the limits. */
  readonly expanded: number;
  /** Distance between the limits; undefined where there is one limit or none. */
  readonly tolerance?: number | undefined;
}

const proved = ({ conformance, beyond }: Evidence, asked: number): Decided => {
  if (conformance >= asked) return 'within';
  return beyond >= asked ? 'outside' : 'unsure';
};

/**
 * What a rule says.
 *
 * - guarded: within where conformance is proved, outside where nonconformance is, else unsure;
 * - simple: by the value as measured, if the tolerance is wide enough against the expanded uncertainty (4 to 1 is
 *   usual), else unsure. One limit alone has no tolerance: there it is guarded at 95 %;
 * - shared risk: never unsure; with 0.5 the same as simple acceptance without a ratio.
 *
 * @param rule      the shop's
 * @param evidence  probabilities 0 to 1, lengths in one unit
 * @returns `within`, `outside` or `unsure`
 * @source  ISO 14253-1:2017; JCGM 106:2012, 8.2 (simple acceptance, shared risk), 8.3 (guarded), 7 (probability)
 * @example decided({ kind: 'simple', ratio: 4 }, { inside: true, conformance: 0.6, beyond: 0.4, expanded: 1, tolerance: 4 }) // 'within'
 */
export const decided = (rule: DecisionRule, evidence: Evidence): Decided => {
  switch (rule.kind) {
    case 'guarded':
      return proved(evidence, rule.conformance);
    case 'simple': {
      if (evidence.tolerance === undefined) return proved(evidence, 0.95);
      if (evidence.tolerance < rule.ratio * evidence.expanded) return 'unsure';
      return evidence.inside ? 'within' : 'outside';
    }
    case 'shared risk':
      return evidence.conformance >= rule.conformance ? 'within' : 'outside';
    default:
      return rule satisfies never;
  }
};

/** The rule in words, for a head of a record or a sheet. */
export const ruleText = (rule: DecisionRule): string => {
  const percent = (share: number): string => `${formatFigure(share * 100, 1)} %`;
  switch (rule.kind) {
    case 'guarded':
      return `within or outside is said where it is so with a probability of ${percent(rule.conformance)} or more; else unsure (ISO 14253-1)`;
    case 'simple':
      return `within or outside is said as measured where the tolerance is at least ${rule.ratio} times the ± of the size; else unsure (simple acceptance, JCGM 106)`;
    case 'shared risk':
      return `within is said where it is so with a probability of ${percent(rule.conformance)} or more, else outside; the risk is shared (JCGM 106)`;
    default:
      return rule satisfies never;
  }
};
