/** @module The sums of an operation: each with what the job gives to it, reckoned and written into the journal one after another. */
import { lazy, Suspense, useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Operation } from '../../engine/engine-type.ts';
import type { OpenJob } from '../../job/job.ts';
import { noteSum } from '../../job/sum/noted-sum.ts';
import { reckonHere, sumAt } from '../../job/sum/sum-at.ts';
import { type SumPlace, sumKey, sumsAt } from '../../job/sum/sum-places.ts';
import { type SumStanding, sumStanding } from '../../job/sum/sum-standing.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob, useKeeper } from '../journal/use-desk.tsx';
import { announce } from '../shell/announce.ts';
import { Refused } from '../shell/refused.tsx';
import { noteSumAction } from './operation-actions.ts';
import { keptWords } from './sum-words.ts';

const OneSum = lazy(() => import('./one-sum.tsx'));

interface Shown {
  readonly key: string;
  readonly at: SumPlace;
  readonly title: string;
  readonly standing: SumStanding;
  /** Whether nothing is to be typed: all that it needs is given. */
  readonly given: boolean;
}

const shownOf = (job: OpenJob, operation: Operation): readonly Shown[] =>
  sumsAt(job, operation).map((at) => {
    const here = sumAt(job, at);
    return {
      key: sumKey(operation.name, at.sum.name, at.place?.id),
      at,
      title: here?.title ?? at.sum.name,
      standing: sumStanding(job, at),
      // Those that may be left undone may be long ones: they are reckoned when they are opened.
      given: here !== undefined && !at.sum.optional && reckonHere(here).kind === 'answer',
    };
  });

const standingWords = (standing: SumStanding): string => {
  const noted = standing.noted && `${keptWords(standing)} (${standing.noted.by})`;
  switch (standing.kind) {
    case 'noted':
      return `✓ ${noted}`;
    case 'not reckoned':
      return 'not reckoned yet';
    default:
      return `✕ ${standing.says.join('; ')}`;
  }
};

const isLeft = ({ at, standing }: Shown): boolean => !at.sum.optional && standing.kind !== 'noted';

const Sums = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const act = useAct();
  const keeper = useKeeper();
  const list = useRef<HTMLUListElement>(null);
  const shown = useMemo(() => shownOf(job, operation), [job, operation]);
  const [open, setOpen] = useState(() => shown.find(isLeft)?.key);
  const [byHand, setByHand] = useState(false);
  const [written, setWritten] = useState(0);
  const [refusal, setRefusal] = useState<Refusal>();
  // The sum that is opened next takes the keys itself; after the last the signature does.
  useEffect(() => {
    if (written === 0) return;
    if (list.current?.querySelector('[data-open="yes"]')) return;
    document.querySelector<HTMLElement>('.sign button.first, .sign button')?.focus();
  }, [written]);
  const goOn = () => {
    const now = keeper.desk().job;
    const left = now.kind === 'open' ? shownOf(now, operation).find(isLeft) : undefined;
    setByHand(true);
    setOpen(left?.key);
    setWritten(written + 1);
  };
  const ready = shown.filter((one) => isLeft(one) && one.given);
  const writeAll = () => {
    for (const { at } of ready) {
      const now = keeper.desk().job;
      if (now.kind !== 'open') return;
      const named = {
        operation: operation.name,
        sum: at.sum.name,
        ...(at.place && { place: at.place.id }),
      };
      const asked = noteSum(now, named, {}, { note: '' });
      const refused = asked.kind === 'refused' ? asked.refusal : act(noteSumAction, asked.value);
      setRefusal(refused);
      if (refused) return;
    }
    announce(`${ready.length} sums written into the journal.`);
    goOn();
  };
  return (
    <section className="part" aria-label="Sums">
      <h3>Sums</h3>
      {ready.length > 1 ? (
        <p className="row">
          <Button onPress={writeAll} className="write-all">
            Write down the {ready.length} that need nothing typed
          </Button>
        </p>
      ) : null}
      <Refused refusal={refusal} />
      <ul className="steps" ref={list}>
        {shown.map(({ key, at, title, standing }) => (
          <li
            key={key}
            data-sum={`${at.sum.name}${at.place ? ` ${at.place.id}` : ''}`}
            data-standing={standing.kind}
            data-needed={at.sum.optional ? 'no' : 'yes'}
            data-open={open === key ? 'yes' : 'no'}
          >
            <div className="what">
              <h4>
                {title}
                {at.sum.optional ? ' (may be left undone)' : ''}
              </h4>
              <p className="faint">{standingWords(standing)}</p>
            </div>
            {job.done.has(operation.name) ? null : (
              <Button
                aria-expanded={open === key}
                onPress={() => {
                  setByHand(true);
                  setOpen(open === key ? undefined : key);
                }}
              >
                {open === key ? 'Close' : standing.noted ? 'Reckon again' : 'Reckon'}
                <span className="heard-only">: {title}</span>
              </Button>
            )}
            {open === key && !job.done.has(operation.name) ? (
              <Suspense>
                <OneSum at={at} focused={byHand} onWritten={goOn} />
              </Suspense>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  );
};

export const SumsPart = ({ operation }: { readonly operation: Operation }) =>
  operation.sums.length === 0 ? null : <Sums key={operation.name} operation={operation} />;
