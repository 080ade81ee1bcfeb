/** @module Everything that was ever written of an instrument, the newest first; a wrong entry is struck out, never taken away. */
import { useState } from 'react';
import { answer } from '../../quantity/refusal.ts';
import type { Entry } from '../../register/register.ts';
import { entryWords } from '../../register/words.ts';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { Asking } from './asking.tsx';

const StrikeOut = ({ id, fact }: Entry) => {
  const [why, setWhy] = useState('');
  return (
    <Aside words="Strike out, if it was written down wrongly">
      <Asking
        name={`Strike out: ${entryWords(fact)}`}
        does="Strike out"
        said="Struck out."
        request={() => answer({ kind: 'strike out entry', entry: id, why })}
      >
        <Field label="Why it does not count" value={why} onChange={setWhy} />
      </Asking>
    </Aside>
  );
};

const mayBeStruck = ({ fact, struckOut }: Entry): boolean =>
  struckOut === undefined && (fact.kind === 'instrument checked' || fact.kind === 'instrument calibrated');

export const History = ({ history }: { readonly history: readonly Entry[] }) => (
  <section className="part" aria-label="History">
    <h2>History</h2>
    <ol className="steps">
      {history.toReversed().map((entry) => (
        <li key={entry.id}>
          <div className="what">
            <p>{entry.struckOut ? <s>{entryWords(entry.fact)}</s> : entryWords(entry.fact)}</p>
            <p className="faint">
              {entry.by}, {entry.at.slice(0, 16).replace('T', ' ')}
            </p>
            {entry.struckOut ? (
              <p>
                ✕ struck out by {entry.struckOut.by}: {entry.struckOut.why}
              </p>
            ) : null}
            {mayBeStruck(entry) ? <StrikeOut {...entry} /> : null}
          </div>
        </li>
      ))}
    </ol>
  </section>
);
