/** @module Time at an operation: begin, stop with what interrupts it, how long it took so far and whom. */
import { type FormEvent, useEffect, useState, useSyncExternalStore } from 'react';
import { Button } from 'react-aria-components';
import type { Operation } from '../../engine/engine-type.ts';
import { timesOf } from '../../job/time.ts';
import { durationText, minutesBetween } from '../../quantity/moment.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { whoChanges, whoNow } from '../shell/who.ts';
import { beginWork, stopWork } from './work-actions.ts';

const now = (): string => new Date().toISOString();

/** The moment, told anew twice a minute as long as something runs. */
const useNow = (running: boolean): string => {
  const [moment, setMoment] = useState(now);
  useEffect(() => {
    setMoment(now());
    if (!running) return;
    const timer = setInterval(() => setMoment(now()), 30_000);
    return () => clearInterval(timer);
  }, [running]);
  return moment;
};

export const TimePart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const act = useAct();
  const { actor } = useSyncExternalStore(whoChanges, whoNow);
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const known = timesOf(job).get(operation.name);
  const running = known?.running ?? [];
  const moment = useNow(running.length > 0);
  const time = timesOf(job, moment).get(operation.name);
  const done = job.done.has(operation.name);
  if (done && time === undefined) return null;
  const own = running.find(({ by }) => by === actor);
  const begin = () => {
    const refused = act(beginWork, { operation: operation.name });
    setRefusal(refused);
    if (!refused) announce('Time runs.');
  };
  const stop = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(stopWork, { operation: operation.name, why: why.trim() });
    setRefusal(refused);
    if (refused) return;
    setWhy('');
    announce('Time stopped.');
  };
  return (
    <section className="part" aria-label="Time">
      <h3>Time</h3>
      <p>
        {time === undefined
          ? 'Nobody has begun it yet.'
          : `${durationText(time.minutes)} by the clock, ${durationText(time.personMinutes)} of all hands: ${time.people.map(({ by, minutes }) => `${by} ${durationText(minutes)}`).join(', ')}.`}
        {operation.minutes === undefined
          ? ''
          : ` The engine type says about ${durationText(operation.minutes)}.`}
      </p>
      {running.map(({ by, from }) => (
        <p key={by}>
          <strong>Runs:</strong> {by}, for {durationText(Math.max(0, minutesBetween(from, moment)))}
        </p>
      ))}
      {(time?.interruptions ?? []).map(({ by, at, why: reason }) => (
        <p key={`${at} ${by}`} className="faint">
          {by} stopped at {at.slice(11, 16)}: {reason}
        </p>
      ))}
      {done || !beginWork.enabled(job) ? null : own === undefined ? (
        <div>
          <Button onPress={begin}>{beginWork.label}: time runs</Button>
        </div>
      ) : (
        <form className="row" onSubmit={stop}>
          <Field label="What interrupts it" value={why} onChange={setWhy} />
          <Button type="submit">{stopWork.label}</Button>
        </form>
      )}
      <Refused refusal={refusal} />
    </section>
  );
};
