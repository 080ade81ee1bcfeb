/** @module A place that the job does not go so far as: what going there brings, and the way to have it go so far. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { scopeNow } from '../../job/scope-words.ts';
import type { Beyond } from '../../job/way-to-place.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { timeWords } from '../../work/time-words.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { OperationLinks } from '../order-of-work/operation-links.tsx';
import { setScope } from '../scope/set-scope.ts';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';

const bringsWords = ({ more, wider }: Beyond): string =>
  [
    ...(more.length === 0 ? [] : [`${more.length} operations more, ${timeWords(more)}`]),
    ...(wider.length === 0 ? [] : [`${wider.length} of its own at more places`]),
  ].join(', and ') || 'no operation more';

const GoFurther = ({
  title,
  beyond: { more, wider, signed, reach },
}: {
  readonly title: string;
  readonly beyond: Beyond;
}) => {
  const job = useJob();
  const act = useAct();
  const [says, setSays] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const { also } = job.scopes.at(-1) ?? {};
  const set = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(setScope, { reach, ...(also && { also }), says: says.trim() });
    setRefusal(refused);
    if (!refused) announce(`The job goes as far as ${title}.`);
  };
  return (
    <form className="column" onSubmit={set}>
      <OperationLinks
        operations={[...more, ...wider]}
        beside={(one) => (wider.includes(one) ? 'at more places' : '')}
      />
      {signed.length === 0 ? null : (
        <p className="caution">
          Signed as far as the job went: {signed.map((one) => `“${one.title}”`).join(', ')}. Open them again
          once it goes further.
        </p>
      )}
      <Field
        label="Why it goes further"
        value={says}
        onChange={setSays}
        hint="What was found, or who wants it so. It stands in the record."
      />
      <Refused refusal={refusal} />
      <div>
        <Button type="submit">Have the job go as far as {title}</Button>
      </div>
    </form>
  );
};

export const BeyondShown = ({ title, beyond }: { readonly title: string; readonly beyond: Beyond }) => {
  const job = useJob();
  return (
    <div className="note" data-beyond="yes">
      <p>
        <strong>This job does not go so far.</strong> It reaches {scopeNow(job)}. Going to {title} brings{' '}
        {bringsWords(beyond)}.
      </p>
      {setScope.enabled(job) ? (
        <Aside words="Have the job go so far">
          <GoFurther title={title} beyond={beyond} />
        </Aside>
      ) : null}
    </div>
  );
};
