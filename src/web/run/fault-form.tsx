/** @module Faults: one is noted with what was found and, once it is known, what was done about it. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Fault } from '../../job/run/attempt.ts';
import { runInStanding } from '../../job/run/run-in-standing.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob, useKeeper } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { noteFault, putFaultRight } from './run-actions.ts';

const bearing = [
  { value: 'run', words: 'on the run: what the engine type says is run again' },
  { value: 'not', words: 'not on the run: it is put right before hand-over' },
];

export const FaultForm = ({ alarmed }: { readonly alarmed: boolean }) => {
  const job = useJob();
  const keeper = useKeeper();
  const act = useAct();
  const [says, setSays] = useState('');
  const [done, setDone] = useState('');
  const [place, setPlace] = useState('');
  const [bears, setBears] = useState('run');
  const [refusal, setRefusal] = useState<Refusal>();
  const note = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(noteFault, {
      says: says.trim(),
      stopsRun: alarmed || bears === 'run',
      ...(place !== '' && { place }),
    });
    setRefusal(refused);
    if (refused) return;
    const fault = keeper.desk().job.head.event?.id ?? '';
    const left = done.trim() === '' ? undefined : act(putFaultRight, { fault, done: done.trim() });
    setRefusal(left);
    announce(done.trim() === '' ? 'Fault noted.' : 'Fault noted, and what was done.');
    setSays('');
    setDone('');
    setPlace('');
  };
  return (
    <form className="column" onSubmit={note} aria-label="Note a fault">
      <div className="two-up">
        <Field label="What was found" value={says} onChange={setSays} />
        <Field label="What was done about it" value={done} onChange={setDone} hint="may follow later" />
        <Choice
          label="Where"
          value={place}
          onChange={setPlace}
          of={[
            { value: '', words: 'the engine as a whole' },
            ...[...job.sheet.engine.places.values()].map(({ id, title }) => ({ value: id, words: title })),
          ]}
        />
        {alarmed ? null : <Choice label="It bears" value={bears} onChange={setBears} of={bearing} />}
      </div>
      <Refused refusal={refusal} />
      <div>
        <Button type="submit" className={alarmed ? 'first' : ''}>
          {noteFault.label}
        </Button>
      </div>
    </form>
  );
};

const OpenFault = ({ fault }: { readonly fault: Fault }) => {
  const act = useAct();
  const [done, setDone] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const right = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(putFaultRight, { fault: fault.id, done: done.trim() });
    setRefusal(refused);
    if (!refused) announce('Written down: it is put right.');
  };
  return (
    <li>
      <form className="what" onSubmit={right}>
        <h4>Not put right: {fault.says}</h4>
        <div className="row">
          <Field className="grow" label="What was done about it" value={done} onChange={setDone} />
          <Button type="submit" className="first">
            {putFaultRight.label}
            <span className="heard-only">: {fault.says}</span>
          </Button>
        </div>
        <Refused refusal={refusal} />
      </form>
    </li>
  );
};

/** Those that wait for what was done, and those that are put right, in words. */
export const Faults = () => {
  const { faults, openFaults } = runInStanding(useJob());
  const right = faults.filter(({ putRight }) => putRight !== undefined);
  return (
    <>
      {openFaults.length === 0 ? null : (
        <ul className="steps">
          {openFaults.map((fault) => (
            <OpenFault key={fault.id} fault={fault} />
          ))}
        </ul>
      )}
      {right.map(({ id, says, putRight }) => (
        <p key={id}>
          ✓ {says}: {putRight?.done} ({putRight?.by})
        </p>
      ))}
    </>
  );
};
