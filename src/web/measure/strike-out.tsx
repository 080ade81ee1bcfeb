/** @module Strikes a reading out: it stays in the journal, and no longer counts. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import type { Action } from '../shell/action.ts';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { strikeOut } from './measure-actions.ts';

export const StrikeOut = ({
  reading,
  by = strikeOut,
}: {
  readonly reading: string;
  readonly by?: Action<{ readonly reading: string; readonly why: string }>;
}) => {
  const job = useJob();
  const act = useAct();
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const strike = () => {
    const refused = act(by, { reading, why });
    setRefusal(refused);
    if (!refused) announce('Struck out.');
  };
  return (
    <>
      <div className="row">
        <Field className="grow" label="Why it does not count" value={why} onChange={setWhy} />
        <Button onPress={strike} isDisabled={!by.enabled(job)}>
          {by.label}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </>
  );
};
