/** @module What gaskets, seals and other one-use items add to a plan, named behind their sum. */

import { oneUseCents, oneUseLines, oneUseTitle } from '../../job/order/one-use-lines.ts';
import { choosePlan } from '../../job/planning.ts';
import type { Plan } from '../../plan/plan-model.ts';
import { useJob } from '../journal/use-desk.tsx';
import { money } from './plan-words.ts';

export const OneUseShown = ({ plan, currency }: { readonly plan: Plan; readonly currency: string }) => {
  const lines = oneUseLines(useJob(), choosePlan(plan).choices);
  const cents = oneUseCents(lines);
  return lines.length === 0 ? null : (
    <details data-one-use={cents}>
      <summary>
        <span>
          Beside it {oneUseTitle} add <span className="figure">{money(cents, currency)}</span>:{' '}
          <span className="figure">{money(plan.cents + cents, currency)}</span> in all
        </span>
      </summary>
      <ul>
        {lines.map(({ says, count, cents: each }) => (
          <li key={says}>
            {count} × {says}: <span className="figure">{money(each, currency)}</span>
          </li>
        ))}
      </ul>
    </details>
  );
};
