/** @module What is known at a place: what was read there, what was found, where its part lies, what is done there next. */
import { Button } from 'react-aria-components';
import { Link, useLocation } from 'wouter';
import { bareSpread, figureText, shownIn } from '../../engine/shown-in.ts';
import { findingWords } from '../../job/finding-words.ts';
import { partHomesOf } from '../../job/home/part-home.ts';
import { nextAtPlace } from '../../job/way-to-place.ts';
import { entryOrder } from '../../measure/scheme.ts';
import type { Judged } from '../../measure/verdict-model.ts';
import { TagFacts } from '../home/tag-facts.tsx';
import { useJob } from '../journal/use-desk.tsx';
import { addressOfOperation } from '../operation/operation-address.ts';
import { PicturesOf } from '../picture/pictures-of.tsx';
import type { SentFrom } from '../shell/back-to.tsx';
import { addressOf } from '../shell/phases.ts';
import { useStanding } from '../shell/standing-on.ts';
import { VerdictWords } from '../shell/verdict-words.tsx';

const Verdicts = ({ place }: { readonly place: string }) => {
  const { sheet } = useJob();
  const judged = useStanding().places.judged.get(place) ?? [];
  const figure = ({ value, expanded = 0, characteristic }: Judged): string => {
    const shown = shownIn(sheet.engine.characteristics.get(characteristic));
    return value === undefined ? '' : `, ${figureText(value.value, shown)} ± ${bareSpread(expanded, shown)}`;
  };
  if (judged.length === 0) return <p>Nothing is measured here.</p>;
  return (
    <ul>
      {judged.map((one) => (
        <li key={one.characteristic}>
          {sheet.engine.characteristics.get(one.characteristic)?.title}:{' '}
          <VerdictWords verdict={one.verdict} />
          {figure(one)}
          {one.missing.length === 0 ? '' : ` (${one.missing.length} still to read)`}
        </li>
      ))}
    </ul>
  );
};

export const PlaceState = ({ place }: { readonly place: string }) => {
  const job = useJob();
  const { goTo } = useStanding();
  const [address, go] = useLocation();
  const { engine } = job.sheet;
  const { title = place, kind = '' } = engine.places.get(place) ?? {};
  const cell = entryOrder(engine).find((one) => one.place === place);
  const home = partHomesOf(job).find(({ tag: { id } }) => id === place || id === kind);
  const findings = job.findings.filter((one) => one.place === place);
  const next = nextAtPlace(job, place);
  const read = () => {
    if (cell) goTo(cell);
    const from: SentFrom = { address, title };
    go(addressOf(job.head.event?.job ?? '', 'measure'), { state: from });
  };
  return (
    <>
      <h3>What is known there</h3>
      <Verdicts place={place} />
      {cell ? (
        <div>
          <Button onPress={read}>
            Read it<span className="heard-only">: {title}</span>
          </Button>
        </div>
      ) : null}
      {findings.length === 0 ? (
        <p>Nothing was found there yet.</p>
      ) : (
        <ul>
          {findings.map((one) => (
            <li key={one.id}>
              {engine.components.get(one.component)?.title}: {findingWords(one)},{' '}
              <strong>{one.mayGoBack ? 'may go back' : 'may not go back'}</strong>
              {one.says === '' ? '' : `. ${one.says}`} ({one.by})
            </li>
          ))}
        </ul>
      )}
      {home ? (
        <>
          <h3>
            Its part: {home.tag.title}, tag {home.tag.number}
          </h3>
          <TagFacts home={home} />
        </>
      ) : null}
      {next ? (
        <p>
          Next here: <Link href={addressOfOperation(job, next.name)}>{next.title}</Link>
        </p>
      ) : (
        <p>No operation of this job is left here.</p>
      )}
      <PicturesOf of={{ place }} title={title} />
    </>
  );
};
