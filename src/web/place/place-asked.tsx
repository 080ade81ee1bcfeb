/** @module A place of the engine that somebody asks of: what has to come off to reach it, and what is known there. */
import { useEffect, useMemo, useRef } from 'react';
import { Button } from 'react-aria-components';
import { wayToPlace } from '../../job/way-to-place.ts';
import { useJob } from '../journal/use-desk.tsx';
import { type AskedPlace, useStanding } from '../shell/standing-on.ts';
import { PlaceState } from './place-state.tsx';
import { WayShown } from './way-shown.tsx';

const Whole = ({ place }: Pick<AskedPlace, 'place'>) => {
  const job = useJob();
  const { putAway } = useStanding();
  const heading = useRef<HTMLHeadingElement>(null);
  const { title = place } = job.sheet.engine.places.get(place) ?? {};
  // The answer stands beside the map, or below it: whoever asked is taken there.
  useEffect(() => heading.current?.focus(), []);
  return (
    <section className="part place-asked" aria-label={`Place: ${title}`} data-place-asked={place}>
      <div className="row apart">
        <h2 ref={heading} tabIndex={-1}>
          {title}
        </h2>
        <Button className="quiet" onPress={putAway}>
          Back to the map
        </Button>
      </div>
      <WayShown place={place} />
      <PlaceState place={place} />
    </section>
  );
};

/** On another sheet than the one on which it was asked: in one line, the sheet's own work before it. */
const InOneLine = ({ place }: Pick<AskedPlace, 'place'>) => {
  const job = useJob();
  const { askOf, putAway } = useStanding();
  const way = useMemo(() => wayToPlace(job, place), [job, place]);
  if (way.kind === 'refused') return null;
  const { title, steps } = way.value;
  const done = steps.filter(({ standing }) => standing === 'done').length;
  return (
    <section className="part place-asked" aria-label={`Place: ${title}`}>
      <div className="row apart">
        <p>
          On the way to <strong>{title}</strong>: {done} of {steps.length} done.
        </p>
        <div className="row">
          <Button className="quiet" onPress={() => askOf(place)}>
            Show the way
          </Button>
          <Button className="quiet" onPress={putAway}>
            Put it away
          </Button>
        </div>
      </div>
    </section>
  );
};

export const PlaceAsked = ({
  asked,
  here,
}: {
  readonly asked: AskedPlace;
  /** Whether this is the sheet on which it was asked. */
  readonly here: boolean;
}) => (here ? <Whole key={asked.turn} place={asked.place} /> : <InOneLine place={asked.place} />);
