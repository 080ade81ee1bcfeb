/** @module What was ordered already and a plan does not use: it is not dropped in silence. */
import { orderedUnused } from '../../job/order/ordered-options.ts';
import { choosePlan } from '../../job/planning.ts';
import type { Plan } from '../../plan/plan-model.ts';
import { useJob } from '../journal/use-desk.tsx';

export const OrderedUnused = ({ plan }: { readonly plan: Plan }) => {
  const lines = orderedUnused(useJob(), choosePlan(plan).choices);
  return lines.length === 0 ? null : (
    <div className="note">
      <p>Ordered already and not used by this plan; ask whether it can be sent back:</p>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
};
