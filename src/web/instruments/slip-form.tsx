/** @module Sets how often a slip happens in this shop, leaves it out, or leaves it as usual again; with why. */
import { useState } from 'react';
import { chanceWords, isAskedOrNot } from '../../measure/slips/priors.ts';
import type { KnownSlip } from '../../measure/slips/slip.ts';
import { type Answer, answer, refuse } from '../../quantity/refusal.ts';
import type { RegisterRequest } from '../../register/command.ts';
import { Choice, Field } from '../shell/field.tsx';
import { Asking } from './asking.tsx';

const often = 'once in so many';
const looked = 'look for it';
const not = 'do not look for it';
const usual = 'as usual';

const typedCount = (text: string, { name, of }: KnownSlip): Answer<number> =>
  /^\d{1,9}$/.test(text.trim())
    ? answer(Number(text))
    : refuse('this is not a whole number', `${name}, once in so many ${of}`, 'write for example 20');

export const SlipForm = ({ slip }: { readonly slip: KnownSlip }) => {
  const [how, setHow] = useState(isAskedOrNot(slip) ? looked : often);
  const [count, setCount] = useState('');
  const [why, setWhy] = useState('');
  const request = (): Answer<RegisterRequest> => {
    if (how === usual) return answer({ kind: 'leave slip chance as usual', slip: slip.name, why });
    const onceIn = how === often ? typedCount(count, slip) : answer(how === looked ? 1 : 0);
    return onceIn.kind === 'refused'
      ? onceIn
      : answer({ kind: 'set slip chance', slip: slip.name, onceIn: onceIn.value, why });
  };
  return (
    <Asking
      name={`How often: ${slip.name}`}
      does="Set it"
      said={`${slip.name} is set.`}
      request={request}
      onDone={() => setWhy('')}
    >
      <Choice
        label="How often it happens here"
        value={how}
        onChange={setHow}
        of={[
          isAskedOrNot(slip)
            ? { value: looked, words: looked }
            : { value: often, words: `once in so many ${slip.of}` },
          { value: not, words: not },
          { value: usual, words: `as usual, ${chanceWords(slip, slip.chance)}` },
        ]}
      />
      {how === often ? (
        <Field label={`Once in so many ${slip.of}`} value={count} onChange={setCount} numeric />
      ) : null}
      <Field label="Why" value={why} onChange={setWhy} />
    </Asking>
  );
};
