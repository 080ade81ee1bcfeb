/** @module A form that asks one thing of the register: its fields, its button, and why it was not done. */
import { type FormEvent, type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Answer, Refusal } from '../../quantity/refusal.ts';
import type { RegisterRequest } from '../../register/command.ts';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { useAsk } from './register-shelf.ts';

export const Asking = ({
  name,
  does,
  said,
  request,
  onDone,
  children,
}: {
  /** Of the form, for those who listen. */
  readonly name: string;
  /** On the button. */
  readonly does: string;
  /** Once it is done. */
  readonly said: string;
  readonly request: () => Answer<RegisterRequest>;
  readonly onDone?: () => void;
  readonly children: ReactNode;
}) => {
  const ask = useAsk();
  const [refusal, setRefusal] = useState<Refusal>();
  const [done, setDone] = useState(false);
  const send = async (event: FormEvent) => {
    event.preventDefault();
    setDone(false);
    const asked = request();
    if (asked.kind === 'refused') return setRefusal(asked.refusal);
    const refused = await ask.mutateAsync(asked.value);
    setRefusal(refused);
    if (refused) return;
    announce(said);
    setDone(true);
    onDone?.();
  };
  return (
    <form className="column" aria-label={name} onSubmit={send}>
      {children}
      <div className="row">
        <Button type="submit" className="first" isDisabled={ask.isPending}>
          {does}
        </Button>
        <p className="faint">{done ? `✓ ${said}` : ''}</p>
      </div>
      <Refused refusal={refusal} />
    </form>
  );
};
