/** @module The trade-off that a question stands in: sought once its plan is shown, then drawn and told. */
import { useMemo } from 'react';
import type { Plan } from '../../plan/plan-model.ts';
import { demanding } from '../../plan/what-if.ts';
import type { PlanAsked, Several } from './plan-worker.ts';
import type { PlansPart } from './plans-table.tsx';
import { TradeOffShown } from './trade-off-shown.tsx';
import { usePlanning } from './use-planning.ts';
import { Working } from './working.tsx';

const whyNone = (found: Exclude<Several, { kind: 'trade-off' }>): string =>
  found.kind === 'stopped'
    ? `${found.what}: ${found.remedy}`
    : 'what is left out or fixed rules out every plan, whatever it costs and however long it takes';

const sameFigures = (one: Plan, other: Plan): boolean =>
  one.cents === other.cents && one.days === other.days && one.hours === other.hours;

export const TradeOffPart = ({ engine, question, currency, shown, onShow }: PlansPart) => {
  // Plans that keep the hours, days and cost asked are among those found without asking for them: one chart shows all.
  const asked = useMemo((): PlanAsked => {
    const free = demanding(question.demands, { hours: undefined, days: undefined, cents: undefined });
    return { kind: 'trade-off', question: { ...question, demands: free } };
  }, [question]);
  const { planning, again } = usePlanning(asked);
  const found =
    planning.kind === 'answered' && planning.answer.kind === 'several' ? planning.answer.found : undefined;
  return (
    <section className="column no-print" aria-label="Trade-off">
      <h3>Cost, days and hours against one another</h3>
      {planning.kind === 'answered' ? null : <Working planning={planning} what="Trading off" again={again} />}
      {found?.kind === 'trade-off' ? (
        <TradeOffShown
          engine={engine}
          found={found}
          currency={currency}
          asked={question.demands}
          shown={shown && found.plans.find((one) => sameFigures(one, shown))}
          onShow={onShow}
        />
      ) : null}
      {found && found.kind !== 'trade-off' ? <p>None: {whyNone(found)}.</p> : null}
    </section>
  );
};
