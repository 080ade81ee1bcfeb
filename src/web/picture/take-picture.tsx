/** @module Taking a picture of one thing: chosen, looked at, said what it shows, kept. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { PictureOf } from '../../job/event.ts';
import type { PictureWithBytes } from '../../picture/picture.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useKeeper } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { DrawnPicture } from './drawn-picture.tsx';
import { keepPicture, takePicture } from './picture-actions.ts';
import { PictureInput } from './picture-input.tsx';

export const TakePicture = ({ of, title }: { readonly of: PictureOf; readonly title: string }) => {
  const keeper = useKeeper();
  const [drawn, setDrawn] = useState<PictureWithBytes>();
  const [says, setSays] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const begin = (picture: PictureWithBytes | undefined) => {
    setDrawn(picture);
    setSays('');
    setRefusal(undefined);
  };
  const keep = async () => {
    if (!drawn) return;
    const refused = await keepPicture(keeper, drawn, of, says);
    if (refused) {
      setRefusal(refused);
      return;
    }
    begin(undefined);
    announce(`Picture kept: ${title}.`);
  };
  return drawn === undefined ? (
    <PictureInput title={title} onPicture={begin} />
  ) : (
    <div className="new-picture">
      <DrawnPicture drawn={drawn} alt={`Picture to be kept: ${title}`} />
      <div className="column grow">
        <Field label="What it shows" value={says} onChange={setSays} />
        <Refused refusal={refusal} />
        <div className="row">
          <Button className="first" autoFocus onPress={() => void keep()}>
            {takePicture.label}
          </Button>
          <Button onPress={() => begin(undefined)}>Not this one</Button>
        </div>
      </div>
    </div>
  );
};
