/** @module Valve clearances at their operation, position by position: where to turn, which valve is next, which way its adjuster goes. */
import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { Operation } from '../../engine/engine-type.ts';
import { type ValveToSet, valvesOfJob } from '../../job/valve-setting.ts';
import { cellsOf } from '../../measure/scheme.ts';
import { refusalText } from '../../quantity/refusal.ts';
import { lengthText } from '../../record/figure-text.ts';
import { positionText, valveText } from '../../record/sections/valves.ts';
import { useJob } from '../journal/use-desk.tsx';
import { VerdictWords } from '../shell/verdict-words.tsx';
import { ReadInTurn, useInTurn } from './read-in-turn.tsx';

const OneValve = ({
  valve,
  isNext,
  onRead,
}: {
  readonly valve: ValveToSet;
  readonly isNext: boolean;
  readonly onRead: () => void;
}) => (
  <li className="row" data-valve={valve.place} data-verdict={valve.verdict}>
    <span className="grow">
      {isNext ? <strong>Next: {valveText(valve)}</strong> : valveText(valve)}
      {valve.clearance === undefined ? ', not read yet ' : `, ${lengthText(valve.clearance)} `}
      {valve.clearance === undefined ? null : <VerdictWords verdict={valve.verdict} />}
      {valve.adjust === undefined ? '' : ` Turn the adjuster to ${valve.adjust}, lock it, and read again.`}
    </span>
    <Button onPress={onRead}>
      {valve.clearance === undefined ? 'Read it' : 'Read it again'}
      <span className="heard-only">: {valveText(valve)}</span>
    </Button>
  </li>
);

export const ValveClearancePart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const { engine } = job.sheet;
  const valves = useMemo(() => valvesOfJob(job), [job]);
  const set = valves?.kind === 'answer' ? valves.value : undefined;
  const cellOf = ({ characteristic, place }: ValveToSet) => cellsOf(engine, characteristic, place)[0];
  const inTurn = useInTurn(set?.next && cellOf(set.next));
  const setting = engine.valveSetting;
  if (setting === undefined || ![setting.inlet, setting.exhaust].some((of) => operation.needs.includes(of)))
    return null;
  if (valves?.kind === 'refused') return <p className="caution">{refusalText(valves.refusal)}.</p>;
  if (set === undefined) return null;
  return (
    <section className="part" aria-label="Valve clearances">
      <h3>Position by position</h3>
      <p>
        Engine {setting.engineIs}. {set.within} of {set.of} valves within their limits.
      </p>
      {job.done.has(operation.name) ? null : <ReadInTurn inTurn={inTurn} />}
      <ol className="steps">
        {set.positions.map((position, at) => (
          <li key={position.cylinder} data-position={position.cylinder}>
            <div className="what">
              <h4>
                {at === 0 ? 'Turn' : `Turn on ${position.turn}°`} {setting.turn}: {positionText(position)}
              </h4>
              <ul className="column" style={{ padding: 0 }}>
                {position.valves.map((valve) => (
                  <OneValve
                    key={valve.place}
                    valve={valve}
                    isNext={valve.place === set.next?.place}
                    onRead={() => {
                      const cell = cellOf(valve);
                      if (cell) inTurn.choose(cell);
                    }}
                  />
                ))}
              </ul>
            </div>
          </li>
        ))}
      </ol>
    </section>
  );
};
