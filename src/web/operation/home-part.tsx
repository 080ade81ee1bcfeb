/** @module Parts of an operation that must find their own place: one place after another, each confirmed by its part's tag. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import type { Operation } from '../../engine/engine-type.ts';
import { homesAt } from '../../job/hold/home.ts';
import { homeWords, stateWords } from '../../job/home/home-words.ts';
import type { PartHome } from '../../job/home/part-home.ts';
import { readTag } from '../../job/home/tag-text.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { homePart } from '../home/home-actions.ts';
import { Scan } from '../home/scan.tsx';
import { addressOfTags } from '../home/tags-address.ts';
import '../home/home.css';
import { TagsLink } from '../home/tags-link.tsx';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';

const awaits = ({ state }: PartHome): boolean => state.kind === 'off' || state.kind === 'to go back';

const signOf = (home: PartHome): string => {
  if (home.state.kind === 'home' || home.state.kind === 'fitted') return '✓';
  return home.state.kind === 'in question' ? '✕' : '';
};

const Places = ({
  homes,
  at,
  onPlace,
}: {
  readonly homes: readonly PartHome[];
  readonly at: string | undefined;
  readonly onPlace: (place: string) => void;
}) => {
  const job = useJob();
  return (
    <ul className="homes">
      {homes.map((home) => (
        <li
          key={home.tag.id}
          data-home={home.tag.id}
          data-state={home.state.kind}
          data-number={home.tag.number}
          {...(home.place === at ? { 'data-here': 'yes' } : {})}
        >
          <span>
            <strong>
              {signOf(home)} {homeWords(job, home)}
            </strong>
            : {home.tag.title}, tag {home.tag.number}; {stateWords(home)}
          </span>
          {awaits(home) ? (
            <Button aria-pressed={home.place === at} onPress={() => onPlace(home.place)}>
              {home.place === at ? 'Here now' : 'I am here'}
              <span className="heard-only">: {home.tag.title}</span>
            </Button>
          ) : null}
        </li>
      ))}
    </ul>
  );
};

const Homes = ({
  operation,
  homes,
}: {
  readonly operation: Operation;
  readonly homes: readonly PartHome[];
}) => {
  const job = useJob();
  const act = useAct();
  const [chosen, setChosen] = useState<string>();
  const [refusal, setRefusal] = useState<Refusal>();
  const awaiting = homes.filter(awaits);
  const now = awaiting.find(({ place }) => place === chosen) ?? awaiting[0];
  const confirm = (text: string) => {
    const read = readTag(job, text);
    if (read.kind === 'refused') return setRefusal(read.refusal);
    const part = read.value.id;
    // With every place confirmed, a scan asks of the part's own.
    const place = now?.place ?? part;
    const refused = act(homePart, { part, place, operation: operation.name });
    setRefusal(refused);
    setChosen(undefined);
    if (refused) navigator.vibrate?.([300, 100, 300]);
    else announce(`${read.value.title} is home.`);
  };
  return (
    <section className="part" aria-label="Parts find home">
      <h3>Each to its own place</h3>
      {now ? (
        <>
          <p>
            Now at <strong>{homeWords(job, now)}</strong>: scan the part that goes in here, {now.tag.title},
            tag {now.tag.number}.
          </p>
          <Scan button="It goes in here" onText={confirm} />
        </>
      ) : (
        <p>✓ All are home.</p>
      )}
      <Refused refusal={refusal} />
      <Places homes={homes} at={now?.place} onPlace={setChosen} />
      <Link href={addressOfTags(job)}>A tag is gone, or parts are mixed up</Link>
    </section>
  );
};

export const HomePart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const homes = homesAt(job, operation).filter(
    ({ state }) => state.kind !== 'on the engine' && state.kind !== 'replaced',
  );
  if (job.done.has(operation.name) || homes.length === 0) return <TagsLink />;
  return <Homes operation={operation} homes={homes} />;
};
