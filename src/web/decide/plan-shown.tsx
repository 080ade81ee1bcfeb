/** @module One plan: its figures, its lines with their reasons, how long the engine lasts with it, and what was not open. */
import type { ReactNode, RefObject } from 'react';
import { Button } from 'react-aria-components';
import type { EngineType } from '../../engine/engine-type.ts';
import type { Plan } from '../../plan/plan-model.ts';
import { chooseIt } from './decide-actions.ts';
import { EngineLifeShown } from './engine-life-shown.tsx';
import { OneUseShown } from './one-use-shown.tsx';
import { OrderedUnused } from './ordered-unused.tsx';
import { PlanTable } from './plan-table.tsx';
import { hoursText, money, slotWords } from './plan-words.ts';

export const PlanShown = ({
  engine,
  plan,
  heading,
  caption,
  currency,
  onChoose,
  onOffer,
  onBack,
  hoursWanted,
  figures,
  children,
}: {
  readonly engine: EngineType;
  readonly plan: Plan;
  /** Which plan it is, where it is not the cheapest. */
  readonly heading: string | undefined;
  readonly caption: string;
  readonly currency: string;
  readonly onChoose: ((plan: Plan) => void) | undefined;
  /** Puts it into the offer; missing where it cannot be. */
  readonly onOffer: ((plan: Plan) => void) | undefined;
  /** Shows the cheapest again; missing where that is shown. */
  readonly onBack: (() => void) | undefined;
  readonly hoursWanted: number | undefined;
  /** Where the eye and the keys go when a plan was pointed at. */
  readonly figures: RefObject<HTMLParagraphElement | null>;
  /** What it stands among. */
  readonly children: ReactNode;
}) => (
  <div className="column" data-plan={plan.cents}>
    {heading === undefined ? null : <h3>{heading}</h3>}
    <p className="total" tabIndex={-1} ref={figures}>
      <span className="figure">{money(plan.cents, currency)}</span>, {plan.days} days, each part good for{' '}
      {hoursText(plan.hours)}
    </p>
    <div className="row">
      {onChoose ? (
        <Button className="first" onPress={() => onChoose(plan)}>
          {chooseIt.label}
        </Button>
      ) : null}
      {onOffer ? <Button onPress={() => onOffer(plan)}>Put this plan into the offer</Button> : null}
      {onBack ? <Button onPress={onBack}>Back to the cheapest</Button> : null}
    </div>
    {children}
    <PlanTable engine={engine} plan={plan} currency={currency} caption={caption} />
    <OneUseShown plan={plan} currency={currency} />
    <OrderedUnused plan={plan} />
    <EngineLifeShown engine={engine} plan={plan} wanted={hoursWanted} />
    {plan.barred.length === 0 ? null : (
      <details>
        <summary>{plan.barred.length} options were not open, and why</summary>
        <ul>
          {plan.barred.map((one) => (
            <li key={`${one.slot} ${one.says}`}>
              {slotWords(engine, one.slot)}: {one.says}
            </li>
          ))}
        </ul>
      </details>
    )}
  </div>
);
