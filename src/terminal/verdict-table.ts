/** @module Verdicts as a table in the terminal, and counted. */
import type { EngineType } from '../engine/engine-type.ts';
import { printedBounds } from '../engine/printed-bounds.ts';
import { figureText, quantityOf, shownIn, spreadText } from '../engine/shown-in.ts';
import type { Doubt, Judged, Verdict } from '../measure/verdict-model.ts';
import { unitsOf } from '../quantity/unit.ts';
import { probabilityText } from '../record/figure-text.ts';
import { plain } from './plain.ts';
import { table } from './table.ts';

const verdicts: readonly Verdict[] = ['within', 'outside', 'unsure', 'not yet known'];

/** Those that something was asked of: what has no limits has no verdict worth counting. */
export const asked = (judged: readonly Judged[]): readonly Judged[] =>
  judged.filter((one) => one.limits !== undefined);

export const counts = (judged: readonly Judged[]): Readonly<Record<Verdict, number>> => {
  const of = (verdict: Verdict) => asked(judged).filter((one) => one.verdict === verdict).length;
  return {
    within: of('within'),
    outside: of('outside'),
    unsure: of('unsure'),
    'not yet known': of('not yet known'),
  };
};

export const countsText = (judged: readonly Judged[]): string => {
  const counted = counts(judged);
  return verdicts.map((verdict) => `${counted[verdict]} ${verdict}`).join(', ');
};

export const verdictTable = (judged: readonly Judged[], { characteristics }: EngineType): string =>
  table(
    [
      { head: 'Place' },
      { head: 'Characteristic' },
      { head: 'Value', right: true },
      { head: 'Spread (95 %)', right: true },
      { head: 'As made' },
      { head: 'Wear limit' },
      { head: 'Conforms', right: true },
      { head: 'Verdict' },
    ],
    judged.map((one) => [
      one.place,
      one.characteristic,
      one.value === undefined
        ? ''
        : figureText(one.value.value, shownIn(characteristics.get(one.characteristic))),
      one.expanded === undefined
        ? ''
        : spreadText(one.expanded, shownIn(characteristics.get(one.characteristic))),
      printedBounds(one.limits, 'new'),
      printedBounds(one.limits, 'wear'),
      one.conformance === undefined ? '' : probabilityText(one.conformance),
      one.limits === undefined
        ? 'no limits given'
        : `${one.verdict}${one.verdict === 'within' && one.asNew ? ', as new' : ''}`,
    ]),
  );

/** Figures in the core's unit, which stands beside them. */
export const judgedJson = (judged: Judged, { characteristics }: EngineType) => ({
  place: judged.place,
  characteristic: judged.characteristic,
  verdict: judged.verdict,
  ...(judged.value && {
    value: judged.value.value,
    unit: unitsOf(quantityOf(characteristics.get(judged.characteristic)))[0],
  }),
  ...(judged.expanded !== undefined && { expanded: judged.expanded }),
  ...(judged.conformance !== undefined && { conformance: judged.conformance }),
  ...(judged.asNew !== undefined && { asNew: judged.asNew }),
  ...(judged.limits && { limits: { new: judged.limits.new, goesBack: judged.limits.goesBack } }),
  missing: judged.missing,
});

/** Each doubt on its line. */
export const doubtLines = (doubts: readonly Doubt[]): readonly string[] =>
  doubts.map((doubt) => plain(`Doubt: ${doubt.says}`));
