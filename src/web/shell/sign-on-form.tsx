/** @module The form in which a person says who stands at this bench. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { Field } from './field.tsx';
import { signOn } from './who.ts';

const SignOnForm = () => {
  const [actor, setActor] = useState('');
  const [bench, setBench] = useState('bench 1');
  const [wrong, setWrong] = useState<string>();
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

export default SignOnForm;
