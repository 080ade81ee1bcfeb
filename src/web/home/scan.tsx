/** @module A tag taken in: by a scanner that types, by hand, by the camera, or from a picture. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { Field } from '../shell/field.tsx';
import { FileField } from '../shell/file-field.tsx';
import { Camera } from './camera.tsx';
import { pixelsOf, readPicture } from './read-picture.ts';
import { useScanner } from './use-scanner.ts';

const textIn = async (file: File): Promise<string | undefined> => {
  const picture = await createImageBitmap(file).catch(() => undefined);
  const pixels = picture && pixelsOf(picture, picture);
  picture?.close();
  return pixels && readPicture(pixels, 'file');
};

export const Scan = ({
  button,
  onText,
}: {
  /** What is done with it. */
  readonly button: string;
  readonly onText: (text: string) => void;
}) => {
  const [typed, setTyped] = useState('');
  const [unread, setUnread] = useState<string>();
  const taken = (text: string) => {
    setTyped('');
    setUnread(undefined);
    onText(text);
  };
  useScanner(taken);
  const readFile = async (file: File) => {
    const text = await textIn(file);
    if (text === undefined)
      setUnread(
        `No code can be read in ${file.name}. Take it nearer and straight on, or type the number on the tag.`,
      );
    else taken(text);
  };
  return (
    <div className="scan">
      <div className="row">
        <Field
          label="Tag"
          value={typed}
          onChange={setTyped}
          onEnter={() => taken(typed)}
          hint="scan it, or type the number that is on it"
        />
        <Button className="first" onPress={() => taken(typed)}>
          {button}
        </Button>
      </div>
      <div className="row">
        <Camera onText={taken} />
        <FileField label="A picture of the tag" accept="image/*" onFile={(file) => void readFile(file)} />
      </div>
      <p role="alert" className={unread === undefined ? undefined : 'wrong'}>
        {unread}
      </p>
    </div>
  );
};
