/** @module `endfloat plan`: the cheapest sound plan for the whole engine, or what stands in its way. */
import { oneUseCents, oneUseLines } from '../../job/order/one-use-lines.ts';
import { orderedUnused } from '../../job/order/ordered-options.ts';
import { choosePlan } from '../../job/planning.ts';
import { changesAlong } from '../../plan/changes.ts';
import type { Plan, Planned } from '../../plan/plan-model.ts';
import { type Answer, answer, refusalText, refuse } from '../../quantity/refusal.ts';
import type { Given, Outcome, TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { planText } from '../plan-text.ts';
import {
  alternatives,
  demandOptions,
  hoursWanted,
  type PlansFound,
  planned,
  tradedOff,
} from '../planning.ts';
import { plansText } from '../plans-text.ts';
import { mendLine } from '../row-lines.ts';
import { type SheetSource, sheetOf, sheetOptions } from '../sheet-source.ts';
import { whatIfOptions } from '../what-if.ts';

export const noPlan = (found: Exclude<Planned, { kind: 'plan' }>): Answer<Outcome> => {
  if (found.kind !== 'not yet') {
    return answer({
      text: '',
      json: found,
      warnings: [
        `endfloat: ${plain(refusalText(found))}`,
        ...(found.kind === 'conflict' ? found.demands : []).map((demand) => `  ${plain(demand)}`),
      ],
      no: true,
    });
  }
  return answer({
    text: '',
    json: found,
    warnings: [
      'endfloat: no plan yet (plan): these must come first:',
      ...found.missing.map((missing) => `  ${plain(missing)}`),
    ],
    no: true,
  });
};

/** With what gaskets, seals and the like add to it. */
const priced = ({ sheet, job }: SheetSource, plan: Plan) => ({
  ...plan,
  oneUse: oneUseLines(
    job ?? { sheet, done: new Map(), orders: new Map(), scopes: [] },
    choosePlan(plan).choices,
  ),
});

const outcomeOf = (given: Given, found: Planned, source: SheetSource): Answer<Outcome> => {
  if (found.kind !== 'plan') return noPlan(found);
  const { sheet, job, warnings } = source;
  const json = priced(source, found);
  return answer({
    text: planText(
      sheet.engine,
      found,
      job?.booked.currency ?? '',
      hoursWanted(given, job),
      json.oneUse,
      job ? orderedUnused(job, choosePlan(found).choices) : [],
    ),
    json,
    warnings,
  });
};

/** Several plans side by side. */
const plansOutcome = (found: PlansFound, source: SheetSource): Answer<Outcome> => {
  if (found.kind !== 'trade-off' && found.kind !== 'alternatives') return noPlan(found);
  const { sheet, job, warnings } = source;
  const plans = found.plans.map((each) => priced(source, each));
  const changes = changesAlong(sheet.engine, found.plans);
  return answer({
    text: plansText(
      found,
      changes,
      job?.booked.currency ?? '',
      plans.map(({ oneUse }) => oneUseCents(oneUse)),
    ),
    json: { ...found, plans, changes },
    warnings,
  });
};

export const plan: TerminalCommand = {
  name: 'plan',
  summary: 'find the cheapest sound plan for the whole engine, proved the cheapest',
  usage: ['plan ENGINE-FILE READINGS-FILE', 'plan JOB'],
  about: 'Exit code 1 when there is none: what conflicts, or what must be measured first, is named.',
  options: [
    ...sheetOptions,
    ...demandOptions,
    ...whatIfOptions,
    { name: 'hours-run', value: 'N', says: 'with files: hours that the engine has run' },
    {
      name: 'trade-off',
      says: 'every plan that no other beats in cost, days and hours, with what changes from one to the next',
    },
    { name: 'within', value: 'MONEY', says: 'what else could be done for so much more than the best plan' },
  ],
  words: [1, 2],
  run: async (given) => {
    const sourced = await sheetOf(given);
    if (sourced.kind === 'refused') return sourced;
    if (sourced.value.kind === 'no') return answer(sourced.value.outcome);
    const { rowsLeftOut, warnings } = sourced.value;
    // Decided on the whole engine or not at all.
    if (rowsLeftOut !== undefined)
      return answer({
        text: '',
        json: { usable: false },
        warnings: [...warnings, mendLine(rowsLeftOut)],
        no: true,
      });
    const tradeOff = given.switches.has('trade-off');
    if (tradeOff && given.values.has('within'))
      return refuse('each asks for other plans', '--trade-off, --within', 'give one of them at a time');
    if (tradeOff || given.values.has('within')) {
      const several = await (tradeOff ? tradedOff : alternatives)(given, sourced.value);
      return several.kind === 'refused' ? several : plansOutcome(several.value, sourced.value);
    }
    const found = await planned(given, sourced.value);
    return found.kind === 'refused' ? found : outcomeOf(given, found.value, sourced.value);
  },
};
