/** @module The lines of one plan: what is done, why, at what cost, in how many days, for how long. */
import type { EngineType } from '../../engine/engine-type.ts';
import { optionWords } from '../../job/planning.ts';
import { besideWords } from '../../plan/cost.ts';
import type { Plan } from '../../plan/plan-model.ts';
import { amount, hoursText, slotWords } from './plan-words.ts';

export const PlanTable = ({
  engine,
  plan,
  currency,
  caption,
}: {
  readonly engine: EngineType;
  readonly plan: Plan;
  readonly currency: string;
  readonly caption: string;
}) => (
  <div className="scroll">
    <table>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">what is done</th>
          <th scope="col">why</th>
          <th scope="col" className="number">
            cost, {currency}
          </th>
          <th scope="col" className="number">
            days
          </th>
          <th scope="col" className="number">
            lasts
          </th>
        </tr>
      </thead>
      <tbody>
        {plan.choices.map((option) => (
          <tr key={option.slot} data-slot={option.slot} data-does={option.does}>
            <th scope="row">
              {slotWords(engine, option.slot)}: {optionWords(option)}
            </th>
            <td>{option.reason}</td>
            <td className="number figure">{amount(option.cents)}</td>
            <td className="number figure">{option.days}</td>
            <td className="number figure">{hoursText(option.hours)}</td>
          </tr>
        ))}
        {plan.setUps.map((setUp) => (
          <tr key={setUp.name}>
            <th scope="row">{besideWords(setUp)}</th>
            <td>
              {setUp.cents < 0 ? 'taken off, since so many are bought' : 'paid once for all that share it'}
            </td>
            <td className="number figure">{amount(setUp.cents)}</td>
            <td className="number">—</td>
            <td className="number">—</td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);
