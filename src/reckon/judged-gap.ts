/** @module A gap held against the limits of its own engine, where those are given; no limit is taken from elsewhere. */
import { conformanceProbability, verdictOf } from '../measure/guard-band.ts';
import { formatFigure, tidy } from '../quantity/figure.ts';
import { type Answer, answer } from '../quantity/refusal.ts';
import { effectiveFreedom, standardUncertainty, type Uncertain } from '../quantity/uncertain.ts';
import { limitInputs, limitsGiven, misasked } from './limits-given.ts';
import { type Input, quantityOf, type Reckoned, type Values } from './reckoning.ts';

/**
 * The limits of a gap, either of which or both may be left out.
 *
 * @internal
 */
export const gapLimits = (
  what: string,
  examples: { readonly least: string; readonly greatest: string },
): readonly Input[] =>
  limitInputs.map((input): Input => {
    if (input.key !== 'least' && input.key !== 'greatest') return input;
    return { ...input, title: `${input.key} ${what} allowed by the manual`, example: examples[input.key] };
  });

/**
 * Verdict of a gap and how probable it is that it conforms; without limits, that there are none.
 *
 * @internal
 */
export const judgedGap = (values: Values, gap: Uncertain): Answer<Reckoned> => {
  const wrong = misasked(values);
  if (wrong) return { kind: 'refused', refusal: wrong };
  if (!(values.quantities.least ?? values.quantities.greatest))
    return answer({ results: {}, notes: ['No limit was given: take it from the manual of this engine.'] });
  const bounds = limitsGiven(values);
  if (bounds.kind === 'refused') return bounds;
  const u = standardUncertainty(gap);
  const freedom = effectiveFreedom(gap);
  const verdict = verdictOf(gap.value, u, freedom, bounds.value, quantityOf(values, 'conformance').value);
  const conformance = conformanceProbability(gap.value, u, freedom, bounds.value);
  const { least = -Infinity, greatest = Infinity } = bounds.value;
  const off = gap.value < least ? least - gap.value : gap.value - greatest;
  return answer({
    results: {
      verdict: { value: verdict, unit: '' },
      conformance: { value: tidy(conformance), unit: '1' },
    },
    notes: [
      ...(off > 0
        ? [
            `It lies ${formatFigure(off, 3)} mm ${gap.value < least ? 'below the least' : 'above the greatest'} allowed.`,
          ]
        : []),
      ...(u === 0 ? ['No ± was given: what was measured was taken as known exactly.'] : []),
    ],
  });
};
