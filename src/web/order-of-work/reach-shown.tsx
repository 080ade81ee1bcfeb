/** @module A place to reach, chosen from a list: what has to come off. */
import { useState } from 'react';
import { useJob } from '../journal/use-desk.tsx';
import { WayShown } from '../place/way-shown.tsx';
import { Choice } from '../shell/field.tsx';

export const ReachShown = () => {
  const { engine } = useJob().sheet;
  const [place, setPlace] = useState('');
  return (
    <div className="column">
      <Choice
        label="Place to reach"
        value={place}
        onChange={setPlace}
        of={[
          { value: '', words: 'choose one …' },
          ...[...engine.places.values()].map(({ id, title }) => ({ value: id, words: title })),
        ]}
      />
      {place === '' ? null : <WayShown place={place} />}
    </div>
  );
};
