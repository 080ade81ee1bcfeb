/** @module The bolts were pulled in another order than the one prescribed: which, who answers for it, why. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { RequestOf } from '../../job/command.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';

export const OtherOrder = ({
  left,
  note,
}: {
  /** Bolts of the stage in the order prescribed. */
  readonly left: readonly string[];
  readonly note: (asked: Pick<RequestOf<'tighten stage'>, 'bolts' | 'overruled'>) => Refusal | undefined;
}) => {
  const [order, setOrder] = useState('');
  const [by, setBy] = useState('');
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const bolts = order.split(/[\s,;]+/).filter((bolt) => bolt !== '');
    setRefusal(note({ bolts, overruled: { by: by.trim(), why: why.trim() } }));
  };
  return (
    <Aside words="Pulled in another order">
      <form className="column" onSubmit={submit}>
        <p className="caution">
          <strong>Caution:</strong> another order may warp what it holds. Whoever is named here answers for
          it, and the record says so.
        </p>
        <div className="two-up">
          <Field
            label="Order as pulled"
            value={order}
            onChange={setOrder}
            hint={`names, such as ${left.join(' ')}`}
          />
          <Field label="Who answers for the order" value={by} onChange={setBy} />
          <Field label="Why in this order" value={why} onChange={setWhy} />
        </div>
        <Refused refusal={refusal} />
        <div>
          <Button type="submit">Note this order</Button>
        </div>
      </form>
    </Aside>
  );
};
