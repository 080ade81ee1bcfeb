/** @module A decision rule as a person types it: `guarded 95 %`, `simple 4`, `shared risk 50 %`. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { amountOf, readTyped } from '../quantity/typed.ts';
import { type DecisionRule, isSound } from './decision-rule.ts';

const remedy = 'write guarded 95 %, simple 4 (tolerance over ±) or shared risk 50 %';

/**
 * Reads a rule.
 *
 * @param text  its name and its figure; a probability from 50 % to below 100 %, a ratio from 1 to 100
 * @returns the rule; refuses a name that is none, and a figure by which nothing can be judged
 * @source  the names are those of JCGM 106:2012, 8.2 and 8.3
 * @example readRule('simple 4') // { kind: 'simple', ratio: 4 }
 */
export const readRule = (text: string): Answer<DecisionRule> => {
  const parts = /^(guarded|simple|shared risk)\s+(\S.{0,20})$/.exec(text.trim());
  const figure = parts && readTyped(parts[2] ?? '', 'ratio');
  const amount = figure?.kind === 'answer' ? amountOf(figure.value, 'ratio') : undefined;
  if (!parts || amount?.kind !== 'answer') {
    return refuse('that is no rule to judge by', text.slice(0, 40), remedy);
  }
  const rule: DecisionRule =
    parts[1] === 'simple'
      ? { kind: 'simple', ratio: amount.value }
      : { kind: parts[1] === 'guarded' ? 'guarded' : 'shared risk', conformance: amount.value };
  return isSound(rule)
    ? answer(rule)
    : refuse('a rule with this figure cannot be kept', text.slice(0, 40), remedy);
};
