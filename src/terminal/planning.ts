/** @module The plan asked for on the command line: demands from options, the solver opened, progress shown. */
import { demandsOf, planQuestionOf } from '../job/planning.ts';
import { type Alternatives, alternativesOf } from '../plan/alternatives.ts';
import type { Effort } from '../plan/effort.ts';
import { planEngine } from '../plan/plan.ts';
import type { Demands, Planned, Solve } from '../plan/plan-model.ts';
import type { PlanQuestion } from '../plan/question.ts';
import { type TradeOff, tradeOffOf } from '../plan/trade-off.ts';
import { hours } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { highsSolver } from '../solver/highs.ts';
import { type Given, lastValue, type OptionSpec } from './command.ts';
import { plain } from './plain.ts';
import { showing } from './progress.ts';
import type { SheetSource } from './sheet-source.ts';
import { askingWhatIf } from './what-if.ts';

export const demandOptions: readonly OptionSpec[] = [
  { name: 'hours-wanted', value: 'N', says: 'hours that the engine is to last' },
  { name: 'days', value: 'N', says: 'days in which it is to be ready' },
  { name: 'cost', value: 'N', says: 'what it may cost at most' },
  {
    name: 'fix',
    value: 'SLOT=OPTION',
    many: true,
    says: 'an option that a person has decided, by the ids under --json',
  },
];

export type PlansFound = TradeOff | Alternatives | Exclude<Planned, { kind: 'plan' }>;

const numberIn = (given: Given, option: string): Answer<number | undefined> => {
  const text = lastValue(given, option);
  if (text === undefined) return answer(undefined);
  return /^\d{1,9}(\.\d{1,2})?$/.test(text)
    ? answer(Number(text))
    : refuse(
        `${plain(text)} is not a number`,
        `--${option}`,
        'write it in figures, with a point, without a unit',
      );
};

const fixedBy = (given: Given): Answer<Readonly<Record<string, string>> | undefined> => {
  const pairs = (given.values.get('fix') ?? []).map((pair) => {
    const at = pair.indexOf('=');
    return [pair.slice(0, Math.max(at, 0)), pair.slice(at + 1)] as const;
  });
  if (pairs.length === 0) return answer(undefined);
  const bad = pairs.find(([slot, option]) => slot === '' || option === '');
  return bad
    ? refuse('it is not SLOT=OPTION', '--fix', 'take both from the plan under --json')
    : answer(Object.fromEntries(pairs));
};

/** What is demanded: by options, else as booked. */
const demands = (given: Given, booked: Demands): Answer<Demands> => {
  const wanted = numberIn(given, 'hours-wanted');
  const days = numberIn(given, 'days');
  const cost = numberIn(given, 'cost');
  const fixed = fixedBy(given);
  if (wanted.kind === 'refused') return wanted;
  if (days.kind === 'refused') return days;
  if (cost.kind === 'refused') return cost;
  if (fixed.kind === 'refused') return fixed;
  return answer({
    ...booked,
    ...(wanted.value !== undefined && { hours: wanted.value }),
    ...(days.value !== undefined && { days: days.value }),
    ...(cost.value !== undefined && { cents: Math.round(cost.value * 100) }),
    ...(fixed.value !== undefined && { fixed: fixed.value }),
  });
};

/** Hours wanted where a plan was found: by option, else as booked. */
export const hoursWanted = (given: Given, job: SheetSource['job']): number | undefined => {
  const asked = numberIn(given, 'hours-wanted');
  const booked = job && demandsOf(job).hours;
  return asked.kind === 'answer' ? (asked.value ?? booked) : booked;
};

const questionOf = (given: Given, { sheet, job }: SheetSource): Answer<PlanQuestion> => {
  const asked = demands(given, job ? demandsOf(job) : {});
  if (asked.kind === 'refused') return asked;
  if (job) return askingWhatIf(given, planQuestionOf(job, asked.value));
  const run = numberIn(given, 'hours-run');
  if (run.kind === 'refused') return run;
  return askingWhatIf(given, {
    sheet,
    findings: [],
    hoursRun: hours(run.value ?? 0),
    demands: asked.value,
  });
};

/** Asks for plans of one kind or another, with progress shown. */
const asked = async <T>(
  given: Given,
  source: SheetSource,
  label: string,
  ask: (question: PlanQuestion, solve: Solve, effort: Effort) => Promise<T>,
): Promise<Answer<T>> => {
  const question = questionOf(given, source);
  if (question.kind === 'refused') return question;
  return answer(
    await showing(label, given.world, async (progress) =>
      ask(question.value, await highsSolver(), { progress }),
    ),
  );
};

export const planned = (given: Given, source: SheetSource): Promise<Answer<Planned>> =>
  asked(given, source, 'Planning', planEngine);

export const tradedOff = (given: Given, source: SheetSource): Promise<Answer<PlansFound>> =>
  asked(given, source, 'Trading off', tradeOffOf);

/** Plans that cost no more than so much above the best. */
export const alternatives = async (given: Given, source: SheetSource): Promise<Answer<PlansFound>> => {
  const within = numberIn(given, 'within');
  if (within.kind === 'refused') return within;
  const cents = Math.round((within.value ?? 0) * 100);
  return asked(given, source, 'Planning', (question, solve, effort) =>
    alternativesOf(question, cents, solve, effort),
  );
};
