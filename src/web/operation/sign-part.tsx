/** @module The foot of an operation: what it still lacks, the signature, or how it was signed. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { OperationStanding } from '../../job/holds.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { LackingShown } from './lacking-shown.tsx';
import { doOperation } from './operation-actions.ts';
import { OverrulePart } from './overrule-part.tsx';
import { ReopenPart } from './reopen-part.tsx';
import { signedWords } from './signed-words.ts';

const SignForm = ({
  operation,
  onSigned,
}: Pick<OperationStanding, 'operation'> & { onSigned: () => void }) => {
  const job = useJob();
  const act = useAct();
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const sign = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(doOperation, { operation: operation.name, note: note.trim() });
    setRefusal(refused);
    if (!refused) onSigned();
  };
  return (
    <form className="column" onSubmit={sign}>
      <div className="row">
        <Field label="Note" value={note} onChange={setNote} />
        <Button type="submit" className="first" isDisabled={!doOperation.enabled(job)}>
          {doOperation.label}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </form>
  );
};

export const SignPart = ({
  operation,
  standing,
  onSigned,
}: OperationStanding & { readonly onSigned: () => void }) => (
  <section className="part sign" aria-label="Signature" data-standing={standing.kind}>
    {standing.kind === 'done' ? (
      <>
        <p>✓ {signedWords(standing.signed)}</p>
        <ReopenPart operation={operation} />
      </>
    ) : standing.kind === 'held' ? (
      <>
        <p>
          <strong>✕ Held.</strong> It lacks:
        </p>
        <LackingShown operation={operation} lacking={standing.lacking} />
        <OverrulePart operation={operation} lacking={standing.lacking} onSigned={onSigned} />
      </>
    ) : (
      <SignForm operation={operation} onSigned={onSigned} />
    )}
  </section>
);
