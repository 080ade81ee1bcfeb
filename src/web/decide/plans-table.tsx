/** @module Several plans as a table: figures, what changes from one to another in words, and a button that shows each. */
import { Button } from 'react-aria-components';
import type { EngineType } from '../../engine/engine-type.ts';
import { changesAlong } from '../../plan/changes.ts';
import { fallsShort } from '../../plan/falls-short.ts';
import type { Demands, Plan } from '../../plan/plan-model.ts';
import type { PlanQuestion } from '../../plan/question.ts';
import { amount, hoursText } from './plan-words.ts';

/** What each part needs that seeks other plans and shows one of them. */
export interface PlansPart {
  readonly engine: EngineType;
  readonly question: PlanQuestion;
  readonly currency: string;
  readonly shown: Plan | undefined;
  readonly onShow: (plan: Plan, heading: string) => void;
}

export const PlansTable = ({
  engine,
  plans,
  name,
  caption,
  currency,
  asked,
  shown,
  onShow,
}: Omit<PlansPart, 'question'> & {
  readonly plans: readonly Plan[];
  /** What each is called before its number: `plan`, `alternative`. */
  readonly name: string;
  readonly caption: string;
  readonly asked: Demands;
}) => {
  const changes = changesAlong(engine, plans);
  return (
    <div className="scroll">
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{name}</th>
            <th scope="col" className="number">
              cost, {currency}
            </th>
            <th scope="col" className="number">
              days
            </th>
            <th scope="col" className="number">
              lasts
            </th>
            <th scope="col">what changes</th>
          </tr>
        </thead>
        <tbody>
          {plans.map((plan, index) => {
            const change = changes[index - 1];
            const short = fallsShort(plan, asked);
            const title = `${name} ${index + 1}`;
            return (
              <tr key={title} aria-current={plan === shown ? 'true' : undefined}>
                <th scope="row">
                  <Button className="one-line" onPress={() => onShow(plan, title)}>
                    {plan === shown ? '▶ ' : ''}Show {title}
                  </Button>
                </th>
                <td className="number figure">{amount(plan.cents)}</td>
                <td className="number figure">{plan.days}</td>
                <td className="number figure">{hoursText(plan.hours)}</td>
                <td>
                  {change ? `against ${change.against + 1}: ${change.says}` : 'the cheapest of these'}
                  {short.length > 0 ? <strong> ✕ Not as asked: {short.join(', ')}.</strong> : null}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
};
