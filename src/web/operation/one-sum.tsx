/** @module One sum of an operation, opened: what is given and where it comes from, what is typed, what comes of it. */
import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { pictures } from '../../drawing/reckoned/list.ts';
import { keptHere } from '../../job/sum/keeping.ts';
import { noteSum } from '../../job/sum/noted-sum.ts';
import { reckonHere, type SumHere, sumAt, type Texts, typedBefore } from '../../job/sum/sum-at.ts';
import type { SumPlace } from '../../job/sum/sum-places.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { SumAnswer } from '../reckoner/sum-answer.tsx';
import { SumInputs } from '../reckoner/sum-inputs.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { noteSumAction } from './operation-actions.ts';
import { keptText } from './sum-words.ts';

const Given = ({ here }: { readonly here: SumHere }) => {
  const rows = here.inputs.flatMap(({ input, given }) => (given ? [{ input, given }] : []));
  if (rows.length === 0) return null;
  return (
    <div className="scroll">
      <table>
        <caption>Given</caption>
        <tbody>
          {rows.map(({ input, given }) => (
            <tr key={input.key}>
              <th scope="row">{input.key.replaceAll('-', ' ')}</th>
              <td className="figure">{given.kind === 'given' ? given.text : '—'}</td>
              <td>{given.kind === 'given' ? given.from : `${given.says}: ${given.remedy}`}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};

/** Where Enter leads to, one after another. */
const stopsIn = (within: HTMLElement): readonly HTMLElement[] =>
  [...within.querySelectorAll<HTMLElement>('input, select, textarea, button.first')].filter((stop) =>
    stop.checkVisibility(),
  );

/** Enter in a field goes to the next one, and from the last to the button that writes it down. */
const goOnByEnter = (within: HTMLElement, event: KeyboardEvent): void => {
  const from = event.target;
  if (event.key !== 'Enter' || !(from instanceof HTMLInputElement || from instanceof HTMLSelectElement))
    return;
  event.preventDefault();
  const stops = stopsIn(within);
  stops[stops.indexOf(from) + 1]?.focus();
};

interface Opened {
  readonly at: SumPlace;
  /** Hands are on their way to its first field. */
  readonly focused: boolean;
  readonly onWritten: () => void;
}

const Sum = ({ at, first, focused, onWritten }: Opened & { readonly first: SumHere }) => {
  const job = useJob();
  const act = useAct();
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const within = box.current;
    if (within === null) return;
    if (focused) stopsIn(within)[0]?.focus();
    const onKey = (event: KeyboardEvent) => goOnByEnter(within, event);
    within.addEventListener('keydown', onKey);
    return () => within.removeEventListener('keydown', onKey);
  }, [focused]);
  const [typed, setTyped] = useState<Texts>(() => typedBefore(first));
  const [fitted, setFitted] = useState(first.noted?.fitted ?? '');
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  // A long sum must not hold up the keys.
  const settled = useDeferredValue(typed);
  const here = useMemo(() => sumAt(job, at, settled) ?? first, [job, at, settled, first]);
  const done = useMemo(() => reckonHere(here), [here]);
  const keeps = done.kind === 'answer' ? keptHere(job, at, done.value.reckoned) : [];
  const untouched = Object.keys(typed).length === 0;
  const write = () => {
    const named = {
      operation: at.operation.name,
      sum: at.sum.name,
      ...(at.place && { place: at.place.id }),
    };
    const texts = Object.fromEntries(Object.entries(typed).filter(([, text]) => text.trim() !== ''));
    const asked = noteSum(job, named, texts, { fitted: fitted.trim(), note: note.trim() });
    const refused = asked.kind === 'refused' ? asked.refusal : act(noteSumAction, asked.value);
    setRefusal(refused);
    if (refused) return;
    announce(`${here.title}: written into the journal.`);
    onWritten();
  };
  const asks = (key: string, may: boolean): boolean =>
    here.inputs.some(
      ({ input, given }) =>
        input.key === key && !given && may === (input.optional === true || input.unlessGiven !== undefined),
    );
  const may = here.inputs.some(({ input }) => asks(input.key, true));
  const must = here.inputs.some(({ input }) => asks(input.key, false));
  const inputs = {
    reckoning: here.reckoning,
    texts: typed,
    refusal: done.kind === 'refused' && !untouched ? done.refusal : undefined,
    onText: (key: string, text: string) => setTyped({ ...typed, [key]: text }),
  };
  return (
    <div className="sum opened" ref={box}>
      <div className="column">
        <Given here={here} />
        {must ? <SumInputs {...inputs} label="To be typed" asks={(key) => asks(key, false)} /> : null}
        {may ? (
          <details open={!must && done.kind === 'refused'}>
            <summary>More that may be given</summary>
            <SumInputs {...inputs} label="May be given" asks={(key) => asks(key, true)} />
          </details>
        ) : null}
        <Field label="What was fitted or done" value={fitted} onChange={setFitted} />
        <Field label="Note" value={note} onChange={setNote} />
        <Refused refusal={refusal} />
        <div className="row">
          <Button className="first" onPress={write} isDisabled={!noteSumAction.enabled(job)}>
            {noteSumAction.label}
            <span className="heard-only">: {here.title}</span>
          </Button>
        </div>
      </div>
      <section className="column" aria-label={`Answer: ${here.title}`} aria-live="polite">
        {done.kind === 'answer' ? (
          <>
            {keeps.map((one) => (
              <p key={one.key} data-kept={one.verdict}>
                <strong>{one.verdict === 'within' ? '✓' : '✕'}</strong> {keptText(one)}
              </p>
            ))}
            <SumAnswer
              given={done.value.values}
              reckoned={done.value.reckoned}
              picture={pictures[here.reckoning.name]}
            />
          </>
        ) : (
          <p className={untouched ? '' : 'refused'}>
            <strong>{done.refusal.what}</strong> {done.refusal.remedy}.
          </p>
        )}
      </section>
    </div>
  );
};

const OneSum = (opened: Opened) => {
  const job = useJob();
  const { at } = opened;
  const first = useMemo(() => sumAt(job, at), [job, at]);
  return first === undefined ? (
    <p>There is no sum {at.sum.reckon} in this program.</p>
  ) : (
    <Sum {...opened} first={first} />
  );
};

export default OneSum;
