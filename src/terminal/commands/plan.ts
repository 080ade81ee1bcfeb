/** @module `endfloat plan`: the cheapest sound plan for the whole engine, or what stands in its way. */
import type { Planned } from '../../plan/plan-model.ts';
import { type Answer, answer, refusalText } from '../../quantity/refusal.ts';
import type { Given, Outcome, TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { planText } from '../plan-text.ts';
import { demandOptions, hoursWanted, planned } from '../planning.ts';
import { mendLine } from '../row-lines.ts';
import { type SheetSource, sheetOf, sheetOptions } from '../sheet-source.ts';

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

const outcomeOf = (given: Given, found: Planned, { sheet, job, warnings }: SheetSource): Answer<Outcome> => {
  if (found.kind !== 'plan') return noPlan(found);
  return answer({
    text: planText(sheet.engine, found, job?.booked.currency ?? '', hoursWanted(given, job)),
    json: found,
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
    { name: 'hours-run', value: 'N', says: 'with files: hours that the engine has run' },
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
    const found = await planned(given, sourced.value);
    return found.kind === 'refused' ? found : outcomeOf(given, found.value, sourced.value);
  },
};
