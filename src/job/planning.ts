/** @module A job's question to the plan, and the plan it then chooses as the journal keeps it: options with their reasons. */

import { placesOf } from '../measure/scheme.ts';
import type { Demands, Option, Plan } from '../plan/plan-model.ts';
import type { PlanQuestion } from '../plan/question.ts';
import { hours } from '../quantity/brand.ts';
import { amountOf, type Typed } from '../quantity/typed.ts';
import type { RequestOf } from './command.ts';
import { isCracked } from './finding-words.ts';
import type { OpenJob } from './job.ts';
import { arrivalFindings } from './order/arrival-findings.ts';
import { orderedOptions } from './order/ordered-options.ts';
import { scopeOf } from './scope.ts';

const hoursIn = (typed: Typed | undefined): number | undefined => {
  const read = typed && amountOf(typed, 'time');
  return read?.kind === 'answer' ? read.value : undefined;
};

/** What was wanted when the engine was booked in. */
export const demandsOf = ({ booked }: Pick<OpenJob, 'booked'>): Demands => {
  const wanted = hoursIn(booked.hoursWanted);
  return {
    ...(wanted === undefined ? {} : { hours: wanted }),
    ...(booked.daysWanted === undefined ? {} : { days: booked.daysWanted }),
  };
};

/** What this job does not open. */
const leftOutOf = (job: Pick<OpenJob, 'sheet' | 'done' | 'scopes'>): Pick<PlanQuestion, 'leftOut'> => {
  const { whole, open, inQuestion } = scopeOf(job);
  if (whole) return {};
  const { places, characteristics } = job.sheet.engine;
  const judgements = [...characteristics.values()].flatMap((characteristic) =>
    placesOf(job.sheet.engine, characteristic)
      .filter(({ id }) => !inQuestion(characteristic.name, id))
      .map(({ id }) => `${characteristic.name}|${id}`),
  );
  return {
    leftOut: {
      places: new Set([...places.keys()].filter((id) => !open.has(id))),
      judgements: new Set(judgements),
    },
  };
};

/** @param demands  as booked, where nobody asks otherwise */
export const planQuestionOf = (
  job: Pick<OpenJob, 'booked' | 'sheet' | 'findings' | 'orders' | 'done' | 'scopes'>,
  demands: Demands = demandsOf(job),
): PlanQuestion => ({
  sheet: job.sheet,
  findings: [
    ...job.findings.map((found) => ({
      place: found.place,
      component: found.component,
      mayGoBack: found.mayGoBack,
      cracked: isCracked(found),
      overheated: found.finding === 'blued',
      ...(found.hardness === undefined ? {} : { hardness: found.hardness }),
      says: found.says,
    })),
    ...arrivalFindings(job),
  ],
  hoursRun: hours(hoursIn(job.booked.hoursRun) ?? 0),
  demands,
  done: [...job.done.keys()],
  ordered: orderedOptions(job),
  ...leftOutOf(job),
});

/** `machine to 0.25, by Grindle & Wick`. */
export const optionWords = ({ does, size, supplier }: Option): string => {
  const by = supplier === '' ? '' : `, by ${supplier}`;
  switch (does) {
    case 'put back':
      return 'put back';
    case 'machine':
      return `machine to ${size}${by}`;
    case 'sleeve':
      return `sleeve, ${size}${by}`;
    case 'build up':
      return `build up to ${size}${by}`;
    case 'replace':
      return `replace, ${size}${by}`;
    case 'exchange':
      return `exchange for a reconditioned one, ${size}${by}`;
    default:
      return does satisfies never;
  }
};

export const choosePlan = (plan: Plan): RequestOf<'choose plan'> => ({
  kind: 'choose plan',
  choices: plan.choices.map((option) => ({
    slot: option.slot,
    option: option.id,
    says: `${optionWords(option)}: ${option.reason}`,
    cents: option.cents,
  })),
  cents: plan.cents,
  days: plan.days,
  hours: plan.hours,
});
