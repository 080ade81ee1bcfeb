/** @module Asks who stands at this bench before anything is written down. */
import { type FormEvent, type ReactNode, useState, useSyncExternalStore } from 'react';
import { Button } from 'react-aria-components';
import { Field } from './field.tsx';
import { signOn, whoChanges, whoNow } from './who.ts';

export const SignOn = ({ children }: { readonly children: ReactNode }) => {
  const who = useSyncExternalStore(whoChanges, whoNow);
  const [actor, setActor] = useState('');
  const [bench, setBench] = useState('bench 1');
  const [wrong, setWrong] = useState<string>();
  if (who.actor !== '') return children;
  const sign = (event: FormEvent) => {
    event.preventDefault();
    if (actor.trim() === '') setWrong('type your name: it is signed under every reading');
    else signOn({ actor: actor.trim(), bench: bench.trim() });
  };
  return (
    <div className="sheet">
      <div className="frame">
        <main className="body" style={{ maxWidth: 560 }}>
          <h1>Who is at this bench?</h1>
          <p>
            Your name stands beside each reading you take. It is kept in this browser; nobody asks a password.
          </p>
          <form onSubmit={sign} className="column">
            <Field label="Your name" name="actor" value={actor} onChange={setActor} wrong={wrong} />
            <Field label="Bench" name="bench" value={bench} onChange={setBench} />
            <Button type="submit" className="first">
              Begin
            </Button>
          </form>
        </main>
      </div>
    </div>
  );
};

export const SignedOn = () => {
  const who = useSyncExternalStore(whoChanges, whoNow);
  return (
    <button type="button" className="signed-on" onClick={() => signOn({ ...who, actor: '' })}>
      <span className="cell-name">fitter (change)</span>
      {who.actor}, {who.bench}
    </button>
  );
};
