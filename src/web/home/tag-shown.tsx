/** @module What a scanned tag is: where its part belongs on the engine, how it stands, what is next for it. */
import { useMemo } from 'react';
import { Link } from 'wouter';
import { engineMap } from '../../drawing/engine-map.ts';
import type { PartHome } from '../../job/home/part-home.ts';
import { tagText } from '../../job/home/tag-text.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { useJob } from '../journal/use-desk.tsx';
import { addressOfOperation } from '../operation/operation-address.ts';
import { useStanding } from '../shell/standing-on.ts';
import { TagFacts } from './tag-facts.tsx';

export const TagShown = ({ home }: { readonly home: PartHome }) => {
  const job = useJob();
  const { places } = useStanding();
  const { engine } = job.sheet;
  const drawing = useMemo(
    () => engineMap(engine, places.marks, home.place),
    [engine, places.marks, home.place],
  );
  const { tag, state, off, fits } = home;
  const next = state.kind === 'on the engine' ? off : fits;
  return (
    <section className="part" aria-label={`Tag ${tag.number}`} data-tag={tag.id} data-state={state.kind}>
      <h2>
        {tag.title}, tag {tag.number}
      </h2>
      <p className="faint">{tagText(job, tag)}</p>
      <TagFacts home={home} />
      {next && state.kind !== 'replaced' ? (
        <Link className="button" href={addressOfOperation(job, next.name)}>
          {next.title}
        </Link>
      ) : null}
      {engine.places.has(home.place) ? <Drawing drawing={drawing} /> : null}
    </section>
  );
};
