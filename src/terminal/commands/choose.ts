/** @module `endfloat choose`: plans a job and notes the plan as chosen. */
import { oneUseLines } from '../../job/order/one-use-lines.ts';
import { orderedUnused } from '../../job/order/ordered-options.ts';
import { choosePlan } from '../../job/planning.ts';
import { answer } from '../../quantity/refusal.ts';
import { answerNo, type Outcome, type TerminalCommand } from '../command.ts';
import { plain } from '../plain.ts';
import { planText } from '../plan-text.ts';
import { demandOptions, hoursWanted, planned } from '../planning.ts';
import { carryOut, inJob, signingOptions } from '../workshop.ts';
import { noPlan } from './plan.ts';

export const choose: TerminalCommand = {
  name: 'choose',
  summary: 'plan a job and note the plan as chosen',
  usage: ['choose JOB'],
  about: 'endfloat plan JOB shows the plan without choosing it. Exit code 1 when there is none.',
  options: [...signingOptions, ...demandOptions],
  words: [1, 1],
  run: (given) =>
    inJob<Outcome>(given, async ({ id, job }, store) => {
      const plan = await planned(given, { sheet: job.sheet, job, warnings: [] });
      if (plan.kind === 'refused') return plan;
      if (plan.value.kind !== 'plan') return noPlan(plan.value);
      const request = choosePlan(plan.value);
      const carried = await carryOut(store, given, id, job, [request]);
      if (carried.kind === 'refused') return carried;
      if (carried.value.kind === 'no') return answerNo(carried.value.refusal);
      const oneUse = oneUseLines(job, request.choices);
      return answer({
        text: `${planText(job.sheet.engine, plan.value, job.booked.currency, hoursWanted(given, job), oneUse, orderedUnused(job, request.choices))}Chosen for ${plain(job.booked.number)}; the owner must agree to it.`,
        json: { done: true, events: carried.value.events },
      });
    }),
};
