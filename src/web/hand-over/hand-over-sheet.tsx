/** @module Handing over: the record as it prints, its file, and to whom the engine went. */
import { type FormEvent, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { scopeOf } from '../../job/scope.ts';
import { scopeNow } from '../../job/scope-words.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { fileOf, pageOf } from '../../record/record.ts';
import { useAct, useDesk, useJob, useKeeper } from '../journal/use-desk.tsx';
import { useHeldPictures } from '../picture/use-pictures.ts';
import { TightenAgain } from '../run/tighten-again.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { handOver } from './hand-over.ts';

const save = (name: string, text: string) => {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
};

/** What a file system takes everywhere. */
const fileName = (number: string): string => `record-${number.replaceAll(/[^A-Za-z0-9-]+/g, '-')}.json`;

export const HandOverSheet = () => {
  const job = useJob();
  const act = useAct();
  const desk = useDesk(useKeeper());
  const frame = useRef<HTMLIFrameElement>(null);
  const [to, setTo] = useState(job.booked.owner);
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const pictures = useHeldPictures(job);
  const lacking = new Set(job.pictures.map(({ picture }) => picture.hash)).size - pictures.size;
  const page = useMemo(() => pageOf(job, desk.events, pictures), [job, desk.events, pictures]);
  const hand = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(handOver, { to, note });
    setRefusal(refused);
    if (!refused) announce(`Handed over to ${to}.`);
  };
  return (
    <>
      <ThreeAnswers
        where={scopeOf(job).whole ? 'handing over' : `handing over; opened was ${scopeNow(job)} alone`}
        now={
          job.handedOver ? 'print the record, or keep its file' : 'read the record, then hand the engine over'
        }
        right={
          job.handedOver
            ? `handed over to ${job.handedOver.to}, ${job.handedOver.at.slice(0, 10)}`
            : desk.waiting > 0
              ? `not yet sent: ${desk.waiting}`
              : 'the record below recomputes from the journal'
        }
      />
      {job.handedOver ? null : (
        <form className="row" onSubmit={hand} aria-label="Hand over">
          <Field className="grow" label="Handed over to" value={to} onChange={setTo} />
          <Field className="grow" label="Note" value={note} onChange={setNote} />
          <Button type="submit" className="first">
            {handOver.label}
          </Button>
        </form>
      )}
      <Refused refusal={refusal} />
      {lacking > 0 ? (
        <p className="note" role="status">
          {lacking === 1 ? 'One picture has' : `${lacking} pictures have`} not come to this bench: the record
          below says so in {lacking === 1 ? 'its' : 'their'} place. Print or keep it once the store has
          answered.
        </p>
      ) : null}
      <TightenAgain />
      <section className="part" aria-label="Record">
        <div className="row no-print">
          <h2 className="grow">Record</h2>
          <Button onPress={() => frame.current?.contentWindow?.print()}>Print the record</Button>
          <Button onPress={() => save(fileName(job.booked.number), fileOf(job, desk.events, pictures))}>
            Keep the record's file
          </Button>
        </div>
        <iframe ref={frame} className="record" title={`Record of job ${job.booked.number}`} srcDoc={page} />
      </section>
    </>
  );
};
