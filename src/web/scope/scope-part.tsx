/** @module How far this job goes, what it does not open, and how that is changed when something is found. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { scopeNow } from '../../job/scope-words.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { NotOpenedWords } from './not-opened.tsx';
import { ReachChoice } from './reach-choice.tsx';
import { setScope } from './set-scope.ts';

const ScopeForm = () => {
  const job = useJob();
  const act = useAct();
  const last = job.scopes.at(-1);
  const [reach, setReach] = useState<readonly string[]>(last?.reach ?? []);
  const [says, setSays] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const set = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(setScope, {
      reach,
      ...(reach.length > 0 && last?.also && { also: last.also }),
      says: says.trim(),
    });
    setRefusal(refused);
    if (refused) return;
    setSays('');
    announce('It is set how far the job goes.');
  };
  return (
    <form className="column" onSubmit={set}>
      <ReachChoice engine={job.sheet.engine} reach={reach} onChange={setReach} />
      <Field
        label="Why"
        value={says}
        onChange={setSays}
        hint="What was found, or who wants it so. It stands in the record."
      />
      <Refused refusal={refusal} />
      <div>
        <Button type="submit">{setScope.label}</Button>
      </div>
    </form>
  );
};

export const ScopePart = () => {
  const job = useJob();
  return (
    <section id="how-far" className="part" aria-label="How far it goes">
      <h2>How far it goes</h2>
      <p>
        It reaches <strong>{scopeNow(job)}</strong>.
      </p>
      <NotOpenedWords />
      {setScope.enabled(job) ? (
        <Aside words="Go further, or not so far">
          <p>Nothing that is signed or read is lost. What is off already stays in the job.</p>
          <ScopeForm />
        </Aside>
      ) : null}
    </section>
  );
};
