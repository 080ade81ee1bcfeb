/** @module The pictures of a place, an operation or a finding: small side by side, large when pressed, and a new one. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { PictureOf } from '../../job/event.ts';
import type { TakenPicture } from '../../job/job.ts';
import { isPictureOf, pictureOfWords } from '../../job/picture-of.ts';
import { useJob } from '../journal/use-desk.tsx';
import { Aside } from '../shell/aside.tsx';
import { FullPicture } from './full-picture.tsx';
import { takePicture } from './picture-actions.ts';
import { ShownPicture } from './shown-picture.tsx';
import { TakePicture } from './take-picture.tsx';
import './picture.css';

export const PicturesOf = ({ of, title }: { readonly of: PictureOf; readonly title: string }) => {
  const job = useJob();
  const [full, setFull] = useState<TakenPicture>();
  const { findings, sheet } = job;
  const pictures = job.pictures.filter((picture) => isPictureOf(picture, of, findings));
  const words = (picture: TakenPicture) =>
    [pictureOfWords(sheet.engine, findings, picture.of), picture.says]
      .filter((part) => part !== '')
      .join(': ');
  return (
    <div className="column">
      {pictures.length === 0 ? null : (
        <ul className="picture-row" aria-label={`Pictures: ${title}`}>
          {pictures.map((one) => (
            <li key={one.id}>
              <Button className="picture-small" onPress={() => setFull(one)}>
                <ShownPicture picture={one.picture} alt={`Picture of ${words(one)}. Show it large`} />
              </Button>
              <span className="faint">
                {one.says === '' ? '' : `${one.says}, `}
                {one.by}
              </span>
            </li>
          ))}
        </ul>
      )}
      {takePicture.enabled(job) ? (
        <Aside
          words={
            <>
              Add a picture<span className="heard-only"> of {title}</span>
            </>
          }
        >
          <TakePicture of={of} title={title} />
        </Aside>
      ) : null}
      {full ? <FullPicture taken={full} words={words(full)} onClose={() => setFull(undefined)} /> : null}
    </div>
  );
};
