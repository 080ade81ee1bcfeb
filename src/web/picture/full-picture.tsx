/** @module One picture as large as the screen allows, with who took it and when, and the way to strike it out. */
import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { TakenPicture } from '../../job/job.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { strikeOutPicture } from './picture-actions.ts';
import { ShownPicture } from './shown-picture.tsx';

export const FullPicture = ({
  taken,
  words,
  onClose,
}: {
  readonly taken: TakenPicture;
  readonly words: string;
  readonly onClose: () => void;
}) => {
  const job = useJob();
  const act = useAct();
  const dialog = useRef<HTMLDialogElement>(null);
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  useEffect(() => dialog.current?.showModal(), []);
  const strike = () => {
    const refused = act(strikeOutPicture, { picture: taken.id, why });
    setRefusal(refused);
    if (refused) return;
    announce('Picture struck out.');
    dialog.current?.close();
  };
  return (
    <dialog ref={dialog} className="picture-large" aria-label={words} onClose={onClose}>
      <figure>
        <ShownPicture picture={taken.picture} alt={words} />
        <figcaption>
          {words}. {taken.by}, {taken.at.slice(0, 16).replace('T', ' ')}
        </figcaption>
      </figure>
      <div className="row">
        <Button className="first" autoFocus onPress={() => dialog.current?.close()}>
          Close the picture
        </Button>
      </div>
      {strikeOutPicture.enabled(job) ? (
        <Aside words="It does not belong here">
          <div className="row">
            <Field className="grow" label="Why it does not count" value={why} onChange={setWhy} />
            <Button onPress={strike}>{strikeOutPicture.label}</Button>
          </div>
          <Refused refusal={refusal} />
        </Aside>
      ) : null}
    </dialog>
  );
};
