/** @module Where a part that strayed goes: decided by a named person, with the reason. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { stateWords } from '../../job/home/home-words.ts';
import { type PartHome, partHomesOf } from '../../job/home/part-home.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Choice, Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { decideHome } from './home-actions.ts';

const another = 'another part';

export const DecideForm = ({ home }: { readonly home: PartHome }) => {
  const job = useJob();
  const act = useAct();
  const { tag } = home;
  const [place, setPlace] = useState(tag.id);
  const [decidedBy, setDecidedBy] = useState('');
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const places = partHomesOf(job)
    .filter((one) => one.tag.part === tag.part)
    .map((one) => ({ value: one.tag.id, words: one.tag.keeps ? one.tag.home : one.tag.title }));
  const decide = () => {
    const refused = act(decideHome, { part: tag.id, ...(place !== another && { place }), decidedBy, why });
    setRefusal(refused);
    if (!refused) announce(`${tag.title}: decided.`);
  };
  return (
    <li data-strayed={tag.id}>
      <h3>
        {tag.title}, tag {tag.number}
      </h3>
      <p>{stateWords(home)}</p>
      <div className="row">
        <Choice
          label={`Where ${tag.title} goes`}
          value={place}
          onChange={setPlace}
          of={[...places, { value: another, words: 'nowhere: another part goes to its place' }]}
        />
        <Field label="Who decides" value={decidedBy} onChange={setDecidedBy} />
        <Field label="By what it was told" value={why} onChange={setWhy} />
        <Button isDisabled={!decideHome.enabled(job)} onPress={decide}>
          {decideHome.label}
          <span className="heard-only">: {tag.title}</span>
        </Button>
      </div>
      <Refused refusal={refusal} />
    </li>
  );
};
