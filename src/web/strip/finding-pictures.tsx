/** @module Pictures that go with the finding being noted. */
import { Button } from 'react-aria-components';
import type { PictureWithBytes } from '../../picture/picture.ts';
import { DrawnPicture } from '../picture/drawn-picture.tsx';
import { PictureInput } from '../picture/picture-input.tsx';

export const FindingPictures = ({
  drawn,
  onChange,
}: {
  readonly drawn: readonly PictureWithBytes[];
  readonly onChange: (drawn: readonly PictureWithBytes[]) => void;
}) => (
  <section className="column" aria-label="Pictures of the finding">
    {drawn.length === 0 ? null : (
      <ul className="picture-row new-picture">
        {drawn.map((one, at) => (
          <li key={one.picture.hash}>
            <DrawnPicture drawn={one} alt={`Picture ${at + 1} of the finding`} />
            <Button onPress={() => onChange(drawn.filter((other) => other !== one))}>
              Leave out<span className="heard-only"> picture {at + 1}</span>
            </Button>
          </li>
        ))}
      </ul>
    )}
    <PictureInput
      title="of the finding"
      onPicture={(one) =>
        onChange([...drawn.filter(({ picture }) => picture.hash !== one.picture.hash), one])
      }
    />
  </section>
);
