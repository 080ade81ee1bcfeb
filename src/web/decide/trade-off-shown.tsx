/** @module The trade-off: a chart whose plans can be pointed at, and the steps from one to the next in words. */
import { useMemo } from 'react';
import { tradeOffChart } from '../../drawing/trade-off-chart.ts';
import type { EngineType } from '../../engine/engine-type.ts';
import type { Demands, Plan } from '../../plan/plan-model.ts';
import type { TradeOff } from '../../plan/trade-off.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { PlansTable } from './plans-table.tsx';

export const TradeOffShown = ({
  engine,
  found,
  currency,
  asked,
  shown,
  onShow,
}: {
  readonly engine: EngineType;
  readonly found: TradeOff;
  readonly currency: string;
  readonly asked: Demands;
  readonly shown: Plan | undefined;
  readonly onShow: (plan: Plan, heading: string) => void;
}) => {
  const { plans } = found;
  const index = shown ? plans.indexOf(shown) : -1;
  const at = index < 0 ? undefined : index;
  const drawing = useMemo(
    () => tradeOffChart({ plans, currency, asked, shown: at }),
    [plans, currency, asked, at],
  );
  return (
    <>
      <p>
        {plans.length === 1
          ? 'One plan beats all others in cost, days and hours.'
          : `${plans.length} plans, none of which another beats in cost, days and hours together. Point at one to see it in full.`}
      </p>
      <Drawing
        className="trade-off"
        drawing={drawing}
        at={at === undefined ? undefined : String(at)}
        onPlace={(place) => {
          const plan = plans[Number(place)];
          if (plan) onShow(plan, `plan ${Number(place) + 1}`);
        }}
      />
      <details>
        <summary>The same in words: from one plan to the next</summary>
        <PlansTable
          engine={engine}
          plans={plans}
          name="plan"
          caption="Plans of the trade-off, cheapest first"
          currency={currency}
          asked={asked}
          shown={shown}
          onShow={onShow}
        />
      </details>
    </>
  );
};
