/** @module Opening again what was signed: why, and what falls with it. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Operation } from '../../engine/engine-type.ts';
import { restingOn } from '../../job/reopened.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { reopenOperation } from './operation-actions.ts';

export const ReopenPart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const act = useAct();
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  if (!job.done.has(operation.name) || !reopenOperation.enabled(job)) return null;
  const resting = [...restingOn(job, operation.name).keys()].filter((name) => name !== operation.name);
  const open = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(reopenOperation, { operation: operation.name, why: why.trim() });
    setRefusal(refused);
    if (refused) return;
    setWhy('');
    announce(`${operation.title}: open again.`);
  };
  return (
    <Aside words="Open it again">
      <form className="column" onSubmit={open}>
        {resting.length === 0 ? (
          <p>Nothing that was signed rests on it.</p>
        ) : (
          <>
            <p>With it falls what was signed, answered and read on top of it:</p>
            <ul>
              {resting.map((name) => (
                <li key={name}>{job.sheet.engine.operations.get(name)?.title}</li>
              ))}
            </ul>
          </>
        )}
        <Field label="Why it is opened again" value={why} onChange={setWhy} />
        <Refused refusal={refusal} />
        <div>
          <Button type="submit">{reopenOperation.label}</Button>
        </div>
      </form>
    </Aside>
  );
};
