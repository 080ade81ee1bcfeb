/** @module The second check of the pumps at its operation: read pump by pump, with the pack that puts one right. */
import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { Operation } from '../../engine/engine-type.ts';
import { figureText, shownIn } from '../../engine/shown-in.ts';
import { type Pump, pumpPacksOf } from '../../job/pumps.ts';
import { cellsOf } from '../../measure/scheme.ts';
import { checkText } from '../../record/sections/spill-check.ts';
import { CheckedWords } from '../build/checked-words.tsx';
import { PutRight, useFitting } from '../build/packs.tsx';
import { useJob } from '../journal/use-desk.tsx';
import { Refused } from '../shell/refused.tsx';
import { VerdictWords } from '../shell/verdict-words.tsx';
import { ReadInTurn, useInTurn } from './read-in-turn.tsx';

const OneCheck = ({ pump, onRead }: { readonly pump: Pump; readonly onRead: () => void }) => {
  const { fit, refusal } = useFitting(pump);
  const { check, fitted, title, place } = pump;
  return (
    <li data-check={place} data-verdict={check?.verdict ?? 'not yet known'}>
      <h4>{title}</h4>
      <p>
        {fitted ? `Pack ${fitted.thickness.toFixed(3)} mm. ` : 'No pack fitted yet. '}
        {check ? (
          <>
            {checkText(check)} <VerdictWords verdict={check.verdict} />
          </>
        ) : (
          'Not read since its pack was fitted.'
        )}
      </p>
      {check?.moved ? <p className="hint">{check.moved.says}</p> : null}
      {fitted ? (
        <Button onPress={onRead}>
          {check ? 'Read it again' : 'Read it'}
          <span className="heard-only">: {title}</span>
        </Button>
      ) : null}
      <PutRight pump={pump} onFit={fit} />
      <Refused refusal={refusal} />
    </li>
  );
};

export const SpillCheckPart = ({ operation }: { readonly operation: Operation }) => {
  const job = useJob();
  const { engine } = job.sheet;
  const packs = useMemo(() => pumpPacksOf(job), [job]);
  const { checked, pumps } = packs;
  const check = packs.timing?.check;
  const cellAt = (place: string) => cellsOf(engine, check?.of ?? '', place)[0];
  const next = pumps.find((pump) => pump.fitted && !pump.check);
  const inTurn = useInTurn(next && cellAt(next.place));
  if (check === undefined || checked === undefined || !operation.needs.includes(check.of)) return null;
  const of = engine.characteristics.get(check.of);
  return (
    <section className="part" aria-label="Second check of the pumps">
      <h3>Second check</h3>
      <p>
        {figureText(check.nominal, shownIn(of))} where the pump is right; a larger reading is {check.largerIs}
        . Come to it in running direction only: go back past it, and turn again. Read it twice or more; the
        mean counts.
      </p>
      <CheckedWords checked={checked} />
      {job.done.has(operation.name) ? null : <ReadInTurn inTurn={inTurn} />}
      <ul className="steps">
        {pumps.map((pump) => (
          <OneCheck
            key={pump.place}
            pump={pump}
            onRead={() => {
              const cell = cellAt(pump.place);
              if (cell) inTurn.choose(cell);
            }}
          />
        ))}
      </ul>
    </section>
  );
};
