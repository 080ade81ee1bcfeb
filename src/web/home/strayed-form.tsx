/** @module Parts that are lost, unmarked or mixed up: noted by their tags, with what is known of them. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { readTag } from '../../job/home/tag-text.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { notePartStrayed } from './home-actions.ts';

const ways = [
  { value: 'lost', words: 'lost' },
  { value: 'unmarked', words: 'here, but its tag is gone' },
  { value: 'swapped', words: 'mixed up with one another' },
] as const;

export const StrayedForm = () => {
  const job = useJob();
  const act = useAct();
  const [tags, setTags] = useState('');
  const [how, setHow] = useState<string>('lost');
  const [says, setSays] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const note = () => {
    const read = tags.split(/[,;]/).map((typed) => readTag(job, typed));
    const unknown = read.find((one) => one.kind === 'refused');
    const way = ways.find(({ value }) => value === how);
    if (unknown?.kind === 'refused' || way === undefined) return setRefusal(unknown?.refusal);
    const parts = read.flatMap((one) => (one.kind === 'answer' ? [one.value.id] : []));
    const refused = act(notePartStrayed, { parts, how: way.value, says });
    setRefusal(refused);
    if (refused) return;
    setTags('');
    setSays('');
    announce('Noted: a named person decides where they go.');
  };
  return (
    <details>
      <summary>A part is lost, its tag is gone, or parts are mixed up</summary>
      <div className="row">
        <Field label="Which tags" value={tags} onChange={setTags} hint="numbers, with commas between them" />
        <Choice label="What happened" value={how} onChange={setHow} of={ways} />
        <Field label="What is known of it" value={says} onChange={setSays} />
        <Button isDisabled={!notePartStrayed.enabled(job)} onPress={note}>
          {notePartStrayed.label}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </details>
  );
};
