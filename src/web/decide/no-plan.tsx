/** @module Why there is no plan to show: a conflict, work that was not finished, or what must be measured first. */
import type { AskedOfPlan } from '../../job/asked-of-plan.ts';
import type { Demands, Planned } from '../../plan/plan-model.ts';
import { ConflictShown } from './conflict-shown.tsx';

const mostListed = 12;

export const NoPlan = ({
  found,
  asked,
  onDemands,
}: {
  readonly found: Exclude<Planned, { kind: 'plan' }>;
  readonly asked: readonly AskedOfPlan[];
  readonly onDemands: (demands: Demands) => void;
}) => {
  switch (found.kind) {
    case 'conflict':
      return <ConflictShown conflict={found} asked={asked} onDemands={onDemands} />;
    case 'stopped':
      return (
        <div className="refused" data-plan="stopped">
          <p>
            <strong>✕ No plan: {found.what}.</strong> {found.remedy}.
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
            {found.missing.slice(0, mostListed).map((words) => (
              <li key={words}>{words}</li>
            ))}
            {found.missing.length > mostListed ? <li>and {found.missing.length - mostListed} more</li> : null}
          </ul>
        </div>
      );
    default:
      return found satisfies never;
  }
};
