/** @module Readings that look wrong: what they probably were, how likely, and the two ways out of a doubt. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { cellTitle } from '../../job/cell-title.ts';
import type { OpenJob } from '../../job/job.ts';
import type { Cell, Reading } from '../../measure/reading.ts';
import type { Doubt } from '../../measure/verdict-model.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { useAct } from '../journal/use-desk.tsx';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { answerDoubt } from './measure-actions.ts';

const readingsById = (job: OpenJob): ReadonlyMap<string, Reading> =>
  new Map([...job.sheet.readings.values()].flat().map((reading) => [reading.id, reading]));

const oddsWords = (odds: number): string =>
  odds >= 1000 ? 'more than 1000 to 1' : `about ${odds >= 10 ? Math.round(odds) : odds.toFixed(1)} to 1`;

const OneDoubt = ({
  job,
  doubt,
  onCell,
}: {
  readonly job: OpenJob;
  readonly doubt: Doubt;
  readonly onCell: (cell: Cell) => void;
}) => {
  const act = useAct();
  const [why, setWhy] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const readings = readingsById(job);
  const inDoubt = doubt.readings.flatMap((id) => readings.get(id) ?? []);
  const [first] = inDoubt;
  return (
    <li className="note column" data-doubt={doubt.slip}>
      <p>
        <strong>
          <span aria-hidden="true">? </span>
          {doubt.says}
        </strong>{' '}
        Odds {oddsWords(doubt.odds)} against an honest reading.
      </p>
      {doubt.likely.length === 0 ? null : (
        <ul>
          {inDoubt.map((reading, at) => {
            const likely = doubt.likely[at];
            return (
              <li key={reading.id}>
                {cellTitle(job.sheet.engine, reading.cell)}: read{' '}
                <span className="figure">{typedText(reading.typed)}</span>
                {likely ? (
                  <>
                    , probably <strong className="figure">{typedText(likely)}</strong>
                  </>
                ) : null}
              </li>
            );
          })}
        </ul>
      )}
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

export const Doubts = ({
  job,
  doubts,
  onCell,
}: {
  readonly job: OpenJob;
  readonly doubts: readonly Doubt[];
  readonly onCell: (cell: Cell) => void;
}) => {
  const open = doubts.filter(({ id }) => !job.doubtsAnswered.has(id));
  if (open.length === 0) return null;
  return (
    <section className="part" aria-label="Doubts">
      <h2>
        {open.length} {open.length === 1 ? 'doubt' : 'doubts'}
      </h2>
      <ul className="column" style={{ listStyle: 'none', padding: 0, margin: 0 }}>
        {open.map((doubt) => (
          <OneDoubt key={doubt.id} job={job} doubt={doubt} onCell={onCell} />
        ))}
      </ul>
    </section>
  );
};
