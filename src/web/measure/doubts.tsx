/** @module Readings that look wrong: what they probably were, in the doubt's own words, and the two ways out of it. */
import { memo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { EngineType } from '../../engine/engine-type.ts';
import { cellTitle } from '../../job/cell-title.ts';
import type { OpenJob } from '../../job/job.ts';
import type { Cell } from '../../measure/reading.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { useAct } from '../journal/use-desk.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { answerDoubt } from './measure-actions.ts';
import type { Doubted } from './use-doubts.ts';

interface DoubtsProps {
  readonly engine: EngineType;
  readonly doubts: readonly Doubted[];
  readonly answered: OpenJob['doubtsAnswered'];
  readonly onCell: (cell: Cell) => void;
}

/** More than this is folded away: a wrong master puts every bore in doubt. */
const shownOpen = 6;

/** Where several readings are in doubt, each with what it probably was. */
const Corrections = ({
  engine,
  doubt,
  readings,
}: Omit<Doubted, 'scale'> & { readonly engine: EngineType }) => {
  const changed = readings.flatMap((reading, at) => {
    const likely = doubt.likely[at];
    return likely && typedText(likely) !== typedText(reading.typed) ? [{ reading, likely }] : [];
  });
  if (readings.length < 2 || changed.length === 0) return null;
  const list = (
    <ul>
      {changed.map(({ reading, likely }) => (
        <li key={reading.id}>
          {cellTitle(engine, reading.cell)}: read <span className="figure">{typedText(reading.typed)}</span>,
          probably <strong className="figure">{typedText(likely)}</strong>
        </li>
      ))}
    </ul>
  );
  if (changed.length <= shownOpen) return list;
  return (
    <details>
      <summary>{changed.length} readings, with what each probably was</summary>
      {list}
    </details>
  );
};

const OneDoubt = ({
  engine,
  doubted: { doubt, readings, scale },
  onCell,
}: Pick<DoubtsProps, 'engine' | 'onCell'> & { readonly doubted: Doubted }) => {
  const act = useAct();
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const [first] = readings;
  return (
    <li className="note column" data-doubt={doubt.slip}>
      <p>
        <strong>
          <span aria-hidden="true">? </span>
          {doubt.says}
        </strong>
      </p>
      <Corrections engine={engine} doubt={doubt} readings={readings} />
      {scale ? (
        <>
          <p>Hold {first?.instrument ?? 'the instrument'} against these: which of them does it show?</p>
          <Drawing drawing={scale} className="scales" />
        </>
      ) : null}
      <div className="row">
        {first ? <Button onPress={() => onCell(first.cell)}>Measure again</Button> : null}
        <Field className="grow" label="It stands, because …" value={why} onChange={setWhy} />
        <Button onPress={() => setRefusal(act(answerDoubt, { doubt: doubt.id, why }))}>
          {answerDoubt.label}
        </Button>
      </div>
      <Refused refusal={refusal} />
    </li>
  );
};

export const Doubts = memo(({ engine, doubts, answered, onCell }: DoubtsProps) => {
  const open = doubts.filter(({ doubt }) => !answered.has(doubt.id));
  if (open.length === 0) return null;
  return (
    <section id="doubts" tabIndex={-1} className="part" aria-label="Doubts">
      <h2>
        {open.length} {open.length === 1 ? 'doubt' : 'doubts'}
      </h2>
      <ul className="column" style={{ listStyle: 'none', padding: 0, margin: 0 }}>
        {open.map((one) => (
          <OneDoubt key={one.doubt.id} engine={engine} doubted={one} onCell={onCell} />
        ))}
      </ul>
    </section>
  );
});
