/** @module Several plans side by side as text: their figures, and in words what changes from one to another. */
import type { Alternatives } from '../plan/alternatives.ts';
import type { Step } from '../plan/changes.ts';
import type { TradeOff } from '../plan/trade-off.ts';
import { formatFigure } from '../quantity/figure.ts';
import { moneyText } from '../record/figure-text.ts';
import { table } from './table.ts';

const closing = (found: TradeOff | Alternatives): string => {
  if (found.kind === 'alternatives')
    return `They differ in what is done, not only in who does it.${found.more ? ' There are more.' : ''}`;
  const last = found.plans.at(-1);
  const such = last ? `, --days ${last.days} --hours-wanted ${last.hours} for the last` : '';
  return `No other plan beats one of these in cost, days and hours. To take one, ask for its days and hours${such}.`;
};

/**
 * @param changes  to each plan but the first
 * @param oneUse   what gaskets, seals and the like add to each, in hundredths
 */
export const plansText = (
  found: TradeOff | Alternatives,
  changes: readonly Step[],
  currency: string,
  oneUse: readonly number[],
): string => {
  const rows = found.plans.map((plan, index) => {
    const change = changes[index - 1];
    return [
      `${index + 1}`,
      moneyText(plan.cents, currency),
      moneyText(oneUse[index] ?? 0, currency),
      formatFigure(plan.days, Number.isInteger(plan.days) ? 0 : 1),
      `${formatFigure(plan.hours, 0)} h`,
      change ? `against ${change.against + 1}: ${change.says}` : 'the cheapest',
    ];
  });
  const heads = [
    { head: 'Plan', right: true },
    { head: 'Cost', right: true },
    { head: 'Gaskets, seals', right: true },
    { head: 'Days', right: true },
    { head: 'Lasts', right: true },
    { head: 'What changes' },
  ];
  return `${table(heads, rows)}\n${closing(found)}\n`;
};
