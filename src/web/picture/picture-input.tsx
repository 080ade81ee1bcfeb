/** @module A picture from the tablet's camera or from a file: two ways to the same thing. */
import { useId, useState } from 'react';
import type { PictureWithBytes } from '../../picture/picture.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { Refused } from '../shell/refused.tsx';
import { shrunk } from './shrink.ts';
import './picture.css';

const kinds = 'image/jpeg,image/png,image/webp';

const Way = ({
  words,
  camera = false,
  title,
  onFile,
}: {
  readonly words: string;
  readonly camera?: boolean;
  readonly title: string;
  readonly onFile: (file: File) => void;
}) => {
  const id = useId();
  return (
    <span className="picture-way">
      <input
        id={id}
        type="file"
        accept={kinds}
        {...(camera ? { capture: 'environment' as const } : {})}
        onChange={({ target }) => {
          const file = target.files?.[0];
          // The same file may be chosen again.
          target.value = '';
          if (file) onFile(file);
        }}
      />
      <label htmlFor={id} className="button">
        {words}
        <span className="heard-only">: {title}</span>
      </label>
    </span>
  );
};

export const PictureInput = ({
  title,
  onPicture,
}: {
  /** What the picture is to be of. */
  readonly title: string;
  readonly onPicture: (picture: PictureWithBytes) => void;
}) => {
  const [refusal, setRefusal] = useState<Refusal>();
  const choose = async (file: File) => {
    const picture = await shrunk(file);
    setRefusal(picture.kind === 'refused' ? picture.refusal : undefined);
    if (picture.kind === 'answer') onPicture(picture.value);
  };
  return (
    <>
      <div className="row">
        <Way words="Take a picture" camera title={title} onFile={(file) => void choose(file)} />
        <Way words="Picture from a file" title={title} onFile={(file) => void choose(file)} />
      </div>
      <Refused refusal={refusal} />
    </>
  );
};
