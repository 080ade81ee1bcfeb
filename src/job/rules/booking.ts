/** @module May this engine be booked in? */

import { badFigure, blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { isSound } from '../../measure/decision-rule.ts';
import type { RequestOf } from '../command.ts';
import { engineOfJob } from '../engine-of-job.ts';

const badType = (text: string): Trouble => {
  const { engine, troubles } = engineOfJob(text);
  if (engine !== undefined) return undefined;
  const errors = troubles.filter(({ weight }) => weight === 'error');
  const [first] = errors;
  const more = errors.length > 1 ? ` (and ${errors.length - 1} more)` : '';
  return trouble(
    `the engine type has an error: ${first?.what ?? 'it is empty'}${more}`,
    `engine type, line ${first?.line ?? 1}`,
    first?.remedy ?? 'take a whole engine type file',
  );
};

export const bookInTrouble = (asked: RequestOf<'book in'>): Trouble =>
  blank(asked.number, 'job number', 'give the job a number of your own') ??
  blank(asked.owner, 'owner', 'write whose engine it is') ??
  blank(asked.currency, 'currency', 'write the currency of the prices, for example EUR') ??
  badFigure(asked.hoursRun, 'time', 'hours run', { from: 0 }) ??
  badFigure(asked.hoursWanted, 'time', 'hours wanted', { above: 0 }) ??
  (asked.daysWanted !== undefined && !(asked.daysWanted >= 0)
    ? trouble('days wanted are less than none', 'days wanted', 'leave it out, or give days from 0')
    : undefined) ??
  (asked.conformance >= 0.5 && asked.conformance < 1
    ? undefined
    : trouble(
        `a probability of ${asked.conformance} is no rule to judge by`,
        'probability of conformance',
        'take one from 0.5 to below 1; ISO 14253-1 takes 0.95',
      )) ??
  (asked.rule === undefined || isSound(asked.rule)
    ? undefined
    : trouble(
        'a rule with this figure cannot be kept',
        'decision rule',
        'take a probability from 0.5 to below 1, or a ratio of 1 to 100; 4 is usual',
      )) ??
  badType(asked.engineType);
