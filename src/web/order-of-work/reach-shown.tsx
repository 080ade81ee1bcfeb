/** @module Reaching a place: what must come off, what that spoils, what is fitted and set again. */
import { useState } from 'react';
import type { Operation } from '../../engine/engine-type.ts';
import { reach } from '../../work/reach.ts';
import { useJob } from '../journal/use-desk.tsx';
import { Choice } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { OperationLinks } from './operation-links.tsx';

export const ReachShown = () => {
  const job = useJob();
  const { engine } = job.sheet;
  const [place, setPlace] = useState('');
  const found = place === '' ? undefined : reach(engine, place, new Set(job.done.keys()));
  const minutes = (operations: readonly Operation[]) =>
    operations.reduce((sum, { minutes: own = 0 }) => sum + own, 0);
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
      {found?.kind === 'refused' ? <Refused refusal={found.refusal} /> : null}
      {found?.kind === 'answer' ? (
        <div className="column" role="status">
          {found.value.strip.length === 0 ? (
            <p>The {found.value.title} is open already.</p>
          ) : (
            <>
              <h4>
                {found.value.strip.length} to do first, about {minutes(found.value.strip)} minutes
              </h4>
              <OperationLinks operations={found.value.strip} />
              <p>
                Comes off: {found.value.off.map((part) => part.replaceAll('-', ' ')).join(', ') || 'nothing'}.
              </p>
              <p>
                New ones needed:{' '}
                {[
                  ...found.value.spoilt.map(({ item, count }) => `${count} × ${item.title}`),
                  ...found.value.renew.map(({ title }) => title),
                ].join(', ') || 'none'}
                .
              </p>
              <h4>Fitted and set again afterwards</h4>
              <OperationLinks operations={found.value.again} />
              <p>
                To be proved on the way back:{' '}
                {found.value.prove
                  .map((name) => engine.characteristics.get(name)?.title ?? name)
                  .join(', ') || 'nothing'}
                .
              </p>
            </>
          )}
        </div>
      ) : null}
    </div>
  );
};
