/** @module Verdicts as a table in the terminal, and counted. */
import type { Doubt, Judged, Verdict } from '../measure/verdict-model.ts';
import { lengthText, probabilityText, spreadText } from '../record/figure-text.ts';
import { printedBounds } from '../record/sections/verdicts.ts';
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

export const verdictTable = (judged: readonly Judged[]): string =>
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
      one.value === undefined ? '' : lengthText(one.value.value),
      one.expanded === undefined ? '' : spreadText(one.expanded),
      printedBounds(one.limits, 'new'),
      printedBounds(one.limits, 'wear'),
      one.conformance === undefined ? '' : probabilityText(one.conformance),
      one.limits === undefined
        ? 'no limits given'
        : `${one.verdict}${one.verdict === 'within' && one.asNew ? ', as new' : ''}`,
    ]),
  );

export const judgedJson = (judged: Judged) => ({
  place: judged.place,
  characteristic: judged.characteristic,
  verdict: judged.verdict,
  ...(judged.value && { value: judged.value.value, unit: 'mm' }),
  ...(judged.expanded !== undefined && { expanded: judged.expanded }),
  ...(judged.conformance !== undefined && { conformance: judged.conformance }),
  ...(judged.asNew !== undefined && { asNew: judged.asNew }),
  ...(judged.limits && { limits: { new: judged.limits.new, goesBack: judged.limits.goesBack } }),
  missing: judged.missing,
});

/** Each doubt on its line. */
export const doubtLines = (doubts: readonly Doubt[]): readonly string[] =>
  doubts.map((doubt) => plain(`Doubt: ${doubt.says}`));
