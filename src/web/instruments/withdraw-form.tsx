/** @module Takes an instrument out of use, or puts it back, with the reason. */
import { useState } from 'react';
import { answer } from '../../quantity/refusal.ts';
import type { Registered } from '../../register/register.ts';
import { Field } from '../shell/field.tsx';
import { Asking } from './asking.tsx';

export const WithdrawForm = ({ registered }: { readonly registered: Registered }) => {
  const [why, setWhy] = useState('');
  const { name } = registered.instrument;
  const kind = registered.withdrawn ? 'put instrument back' : 'withdraw instrument';
  const does = registered.withdrawn ? 'Put back into use' : 'Withdraw from use';
  return (
    <Asking
      name={does}
      does={does}
      said={registered.withdrawn ? `${name} is in use again.` : `${name} is withdrawn.`}
      onDone={() => setWhy('')}
      request={() => answer({ kind, name, why })}
    >
      <Field label="Why" value={why} onChange={setWhy} />
    </Asking>
  );
};
