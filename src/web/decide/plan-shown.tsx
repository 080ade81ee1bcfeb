/** @module The plan as it was solved: each line with its reason and cost, and what was not open. */
import { Button } from 'react-aria-components';
import type { EngineType } from '../../engine/engine-type.ts';
import { optionWords } from '../../job/planning.ts';
import { besideWords } from '../../plan/cost.ts';
import type { Plan, Planned } from '../../plan/plan-model.ts';
import { chooseIt } from './decide-actions.ts';
import { EngineLifeShown } from './engine-life-shown.tsx';
import { amount, hoursText, money, slotWords } from './plan-words.ts';

const PlanTable = ({
  engine,
  plan,
  currency,
}: {
  readonly engine: EngineType;
  readonly plan: Plan;
  readonly currency: string;
}) => (
  <div className="scroll">
    <table>
      <caption>Cheapest sound plan: no cheaper one exists</caption>
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

export const PlanShown = ({
  engine,
  planned,
  currency,
  onChoose,
  onOffer,
  seconds,
  hoursWanted,
}: {
  readonly engine: EngineType;
  readonly planned: Planned;
  readonly currency: string;
  readonly seconds: number;
  readonly hoursWanted: number | undefined;
  readonly onChoose: ((plan: Plan) => void) | undefined;
  /** Puts it into the offer; missing where it cannot be. */
  readonly onOffer: ((plan: Plan) => void) | undefined;
}) => {
  switch (planned.kind) {
    case 'plan':
      return (
        <div className="column" data-plan={planned.cents}>
          <p className="total">
            <span className="figure">{money(planned.cents, currency)}</span>, {planned.days} days, each part
            good for {hoursText(planned.hours)}
          </p>
          <div className="row">
            {onChoose ? (
              <Button className="first" onPress={() => onChoose(planned)}>
                {chooseIt.label}
              </Button>
            ) : null}
            {onOffer ? <Button onPress={() => onOffer(planned)}>Put this plan into the offer</Button> : null}
          </div>
          <PlanTable engine={engine} plan={planned} currency={currency} />
          <EngineLifeShown engine={engine} plan={planned} wanted={hoursWanted} />
          {planned.barred.length === 0 ? null : (
            <details>
              <summary>{planned.barred.length} options were not open, and why</summary>
              <ul>
                {planned.barred.map((one) => (
                  <li key={`${one.slot} ${one.says}`}>
                    {slotWords(engine, one.slot)}: {one.says}
                  </li>
                ))}
              </ul>
            </details>
          )}
          <p className="faint">Solved in this browser in {seconds.toFixed(1)} s.</p>
        </div>
      );
    case 'conflict':
      return (
        <div className="refused" data-plan="conflict">
          <p>
            <strong>
              ✕ No plan does all of this: {planned.what}
              {planned.where === '' ? '' : ` (${planned.where})`}.
            </strong>{' '}
            {planned.remedy}.
          </p>
          <p>These do not go together:</p>
          <ul>
            {planned.demands.map((demand) => (
              <li key={demand}>{demand}</li>
            ))}
          </ul>
        </div>
      );
    case 'stopped':
      return (
        <div className="refused" data-plan="stopped">
          <p>
            <strong>✕ No plan: {planned.what}.</strong> {planned.remedy}.
          </p>
        </div>
      );
    case 'not yet':
      return (
        <div className="note" data-plan="not yet">
          <p>
            <strong>No plan yet.</strong> First:
          </p>
          <ul>
            {planned.missing.slice(0, 12).map((words) => (
              <li key={words}>{words}</li>
            ))}
            {planned.missing.length > 12 ? <li>and {planned.missing.length - 12} more</li> : null}
          </ul>
        </div>
      );
    default:
      return planned satisfies never;
  }
};
