/** @module Why no plan does all that is asked: what does not go together, with a button beside each demand that lets go of it. */
import { Button } from 'react-aria-components';
import type { AskedOfPlan } from '../../job/asked-of-plan.ts';
import type { Conflict, Demands } from '../../plan/plan-model.ts';
import { announce } from '../shell/announce.ts';

export const ConflictShown = ({
  conflict,
  asked,
  onDemands,
}: {
  readonly conflict: Conflict;
  /** Everything that is asked of the plan. */
  readonly asked: readonly AskedOfPlan[];
  readonly onDemands: (demands: Demands) => void;
}) => (
  <div className="refused column" data-plan="conflict">
    <p>
      <strong>
        ✕ No plan does all of this: {conflict.what}
        {conflict.where === '' ? '' : ` (${conflict.where})`}.
      </strong>{' '}
      {conflict.remedy}.
    </p>
    <p>These do not go together:</p>
    <ul className="steps">
      {conflict.demands.map((demand) => {
        const own = asked.find(({ stands }) => stands === demand);
        return (
          <li key={demand}>
            <span className="what">{own?.says ?? demand}</span>
            {own ? (
              <Button
                onPress={() => {
                  announce(`No longer asked: ${own.says}.`);
                  onDemands(own.lettingGo);
                }}
              >
                Let go of: {own.says}
              </Button>
            ) : null}
          </li>
        );
      })}
    </ul>
  </div>
);
