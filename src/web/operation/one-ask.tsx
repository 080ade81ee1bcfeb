/** @module One thing that an operation asks: looked at, counted or written down, with the answer that stands. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { AskedAt } from '../../job/asked.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { answerAsk } from './operation-actions.ts';

/** A number of pieces; what is none is left to the journal to refuse. */
const countOf = (text: string): number | undefined =>
  /^\d{1,6}$/.test(text.trim()) ? Number(text) : undefined;

const answerWords = ({ answered }: AskedAt): string =>
  answered === undefined
    ? ''
    : [
        answered.good ? '✓' : '✕ not as it should be',
        ...(answered.count === undefined ? [] : [String(answered.count)]),
        ...(answered.says === '' ? [] : [answered.says]),
        `(${answered.by})`,
      ].join(' ');

const hints = {
  seen: '',
  words: 'what is found; or why it cannot be had',
  count: '',
  reading: 'read it under Measure, or write here why it cannot be had',
  picture: 'take it below, or describe it here in words',
} as const;

export const OneAsk = ({
  operation,
  asked,
  onAnswered,
}: {
  readonly operation: string;
  readonly asked: AskedAt;
  readonly onAnswered: () => void;
}) => {
  const act = useAct();
  const [says, setSays] = useState('');
  const [count, setCount] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const { ask, place, answered } = asked;
  const answer = (good: boolean) => {
    const number = ask.answer === 'count' ? countOf(count) : undefined;
    const refused = act(answerAsk, {
      operation,
      ask: ask.name,
      good,
      says: says.trim(),
      ...(place !== undefined && { place }),
      ...(number !== undefined && { count: number }),
    });
    setRefusal(refused);
    if (refused) return;
    announce(`${asked.says}: written down.`);
    setSays('');
    setCount('');
    onAnswered();
  };
  const write = (event: FormEvent) => {
    event.preventDefault();
    answer(true);
  };
  return (
    <li
      data-ask={`${ask.name}${place === undefined ? '' : ` ${place}`}`}
      data-answered={answered?.good ?? 'no'}
    >
      <form className="what" onSubmit={write}>
        <h4>
          {asked.says}
          {ask.secondPerson ? ' (second person)' : ''}
        </h4>
        {answered ? <p>{answerWords(asked)}</p> : null}
        <div className="row">
          {ask.answer === 'count' ? (
            <Field label="How many" value={count} onChange={setCount} numeric />
          ) : (
            <Field label="In words" value={says} onChange={setSays} hint={hints[ask.answer]} />
          )}
          <Button type="submit" className="first">
            {ask.answer === 'seen' ? 'Seen, as it should be' : answerAsk.label}
            <span className="heard-only">: {asked.says}</span>
          </Button>
          {ask.answer === 'seen' ? (
            <Button onPress={() => answer(false)}>
              Not as it should be<span className="heard-only">: {asked.says}</span>
            </Button>
          ) : null}
        </div>
        <Refused refusal={refusal} />
      </form>
    </li>
  );
};
