/** @module Going on though something is lacking: a named person's word, with the reason, kept in the record. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Operation } from '../../engine/engine-type.ts';
import type { Lacking } from '../../job/hold/lacking.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct } from '../journal/use-desk.tsx';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { doOperation } from './operation-actions.ts';

export const OverrulePart = ({
  operation,
  lacking,
  onSigned,
}: {
  readonly operation: Operation;
  readonly lacking: readonly Lacking[];
  readonly onSigned: () => void;
}) => {
  const act = useAct();
  const [by, setBy] = useState('');
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  if (lacking.some(({ overrule }) => overrule === 'never'))
    return <p>Nobody may go on without what is lacking here.</p>;
  const overrule = (event: FormEvent) => {
    event.preventDefault();
    const refused = act(doOperation, {
      operation: operation.name,
      note: '',
      overruled: { by: by.trim(), why: why.trim(), lacking: lacking.map(({ says }) => says) },
    });
    setRefusal(refused);
    if (!refused) onSigned();
  };
  return (
    <Aside words="Go on all the same">
      <form className="column" onSubmit={overrule}>
        <p className="caution">
          <strong>Caution:</strong> what is lacking is then broken, or covered unproved. Whoever is named here
          answers for it, and the record says so.
        </p>
        <div className="two-up">
          <Field label="Who answers for it" value={by} onChange={setBy} />
          <Field label="Why" value={why} onChange={setWhy} />
        </div>
        <Refused refusal={refusal} />
        <div>
          <Button type="submit">Sign though it lacks this</Button>
        </div>
      </form>
    </Aside>
  );
};
