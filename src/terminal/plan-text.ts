/** @module A plan as text for the terminal: every component with what is done, why and at what cost. */
import type { EngineType } from '../engine/engine-type.ts';
import { lifeWords } from '../job/life-words.ts';
import type { OneUseLine } from '../job/offer.ts';
import { oneUseCents, oneUseTitle } from '../job/order/one-use-lines.ts';
import { optionWords } from '../job/planning.ts';
import { besideWords } from '../plan/cost.ts';
import { engineLife } from '../plan/engine-life.ts';
import type { Plan } from '../plan/plan-model.ts';
import { formatFigure } from '../quantity/figure.ts';
import { moneyText } from '../record/figure-text.ts';
import { slotTitle } from '../record/sections/named.ts';
import { table } from './table.ts';

const hoursText = (hours: number): string => `${formatFigure(hours, 0)} h`;

/**
 * @param wanted  hours, where any are wanted
 * @param oneUse  what gaskets, seals and the like add
 * @param unused  what was ordered and this plan does not use
 */
export const planText = (
  engine: EngineType,
  plan: Plan,
  currency: string,
  wanted: number | undefined,
  oneUse: readonly OneUseLine[],
  unused: readonly string[],
): string => {
  const rows = plan.choices.map((option) => [
    slotTitle(engine, option.slot),
    optionWords(option),
    moneyText(option.cents, currency),
    formatFigure(option.days, 0),
    hoursText(option.hours),
    option.reason,
  ]);
  const setUps = plan.setUps.map((setUp) => [
    '',
    besideWords(setUp),
    moneyText(setUp.cents, currency),
    '',
    '',
    '',
  ]);
  return [
    table(
      [
        { head: 'Component' },
        { head: 'Decided' },
        { head: 'Cost', right: true },
        { head: 'Days', right: true },
        { head: 'Lasts', right: true },
        { head: 'Why' },
      ],
      [...rows, ...setUps],
    ),
    `\n${planSummary(plan, currency)}\n`,
    ...(oneUse.length === 0 ? [] : [`${oneUseText(plan, oneUse, currency)}\n`]),
    ...unused.map(
      (line) => `Ordered already and not used by this plan: ${line}. Ask whether it can be sent back.\n`,
    ),
    ...lifeWords(engine, plan, engineLife(plan.choices), wanted).map((line) => `${line}\n`),
  ].join('');
};

/** What the plan does not count: `Gaskets … add 9.90 crowns (head gasket 8.00, …), 120.40 crowns in all.` */
const oneUseText = (plan: Plan, lines: readonly OneUseLine[], currency: string): string => {
  const cents = oneUseCents(lines);
  const named = lines.map(({ says, count, cents: each }) => `${count} × ${says} ${moneyText(each, '')}`);
  return `Beside it ${oneUseTitle} add ${moneyText(cents, currency)} (${named.join(', ')}): ${moneyText(plan.cents + cents, currency)} in all.`;
};

/** One line: what it costs, when it is ready, how long it lasts, and that nothing cheaper is sound. */
const planSummary = (plan: Plan, currency: string): string =>
  `Cost ${moneyText(plan.cents, currency)}, ready in ${formatFigure(plan.days, 0)} days, each part good for ${hoursText(plan.hours)}: proved the cheapest sound plan.`;
