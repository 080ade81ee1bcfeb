/** @module The next step of the run-in: what to set, and that it is begun. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { RunInStanding, StepStanding } from '../../job/run/run-in-standing.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { readTyped, typedText, unitTyped } from '../../quantity/typed.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { beginRunStep } from './run-actions.ts';

export const BeginStep = ({
  next,
  standing,
}: {
  readonly next: StepStanding;
  readonly standing: RunInStanding;
}) => {
  const act = useAct();
  const within = useJob().sheet.engine.runIn?.noOilPressureWithin;
  const [seconds, setSeconds] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const begin = (event: FormEvent) => {
    event.preventDefault();
    const text = unitTyped(seconds) === '' ? `${seconds.trim()} s` : seconds;
    const after = standing.starts && seconds.trim() !== '' ? readTyped(text, 'time') : undefined;
    const refused =
      after?.kind === 'refused'
        ? { ...after.refusal, where: 'oil pressure after' }
        : act(beginRunStep, {
            step: next.number,
            note: '',
            ...(after && { oilPressureAfter: after.value }),
          });
    setRefusal(refused);
    if (refused) return;
    setSeconds('');
    announce(`Step ${next.number}, ${next.step.title}, is begun.`);
  };
  return (
    <form className="column" onSubmit={begin} aria-label="Begin the step">
      {standing.starts ? (
        <Field
          label="Seconds from the start until oil pressure showed"
          value={seconds}
          onChange={setSeconds}
          numeric
          {...(within && { hint: `none within ${typedText(within)}: stop the engine at once` })}
        />
      ) : null}
      <Refused refusal={refusal} />
      <div>
        <Button type="submit" className="first">
          {beginRunStep.label}
        </Button>
      </div>
    </form>
  );
};
