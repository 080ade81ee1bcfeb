/** @module Measuring: one number at a time in the order in which hands go, the verdict beside it at once. */

import { useCallback, useEffect, useMemo, useState } from 'react';
import { Button } from 'react-aria-components';
import { cellTitle } from '../../job/cell-title.ts';
import type { JobEvent } from '../../job/event.ts';
import { scopeOf } from '../../job/scope.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { cellAfter, entryOrder } from '../../measure/scheme.ts';
import type { Judged } from '../../measure/verdict-model.ts';
import { useJob, useKeeper } from '../journal/use-desk.tsx';
import { PicturesOf } from '../picture/pictures-of.tsx';
import { announce } from '../shell/announce.ts';
import { Aside } from '../shell/aside.tsx';
import { useStanding } from '../shell/standing-on.ts';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { Doubts } from './doubts.tsx';
import { Entry } from './entry.tsx';
import { FromFile } from './from-file.tsx';
import { PlaceTable } from './place-table.tsx';
import { SettlingShown } from './settling-shown.tsx';
import { ShutPlace } from './shut-place.tsx';
import { useDoubts } from './use-doubts.ts';
import { VerdictShown, verdictLine, verdictShort } from './verdict-shown.tsx';

const cellRead = (event: JobEvent | undefined): Cell | undefined =>
  event?.fact.kind === 'reading taken' ? event.fact.cell : undefined;

/** The cell that was read last on any bench, so that a page loaded anew shows where hands stopped. */
const lastRead = (events: readonly JobEvent[]): Cell | undefined => cellRead(events.findLast(cellRead));

const nothingJudged: readonly Judged[] = [];

export const MeasureSheet = () => {
  const job = useJob();
  const keeper = useKeeper();
  const { cell: stood, turn, goTo, askOf, places } = useStanding();
  const { sheet } = job;
  const { engine } = sheet;
  const [readHere, setReadHere] = useState<Cell>();
  const [readBefore] = useState(() => lastRead(keeper.desk().events));
  const last = readHere ?? cellRead(job.head.event) ?? readBefore;
  const doubts = useDoubts(job);
  const { inQuestion } = scopeOf(job);
  // What this job does not open is not asked for.
  const order = useMemo(
    () => entryOrder(engine).filter(({ characteristic, place }) => inQuestion(characteristic, place)),
    [engine, inQuestion],
  );
  const unread = order.find((one) => !sheet.readings.has(cellKey(one)));
  const cell = stood ?? unread ?? order[0];

  useEffect(() => {
    if (stood === undefined && cell) goTo(cell);
  }, [stood, cell, goTo]);

  const taken = useCallback(
    (read: Cell) => {
      const now = keeper.desk().job;
      if (now.kind !== 'open') return;
      const next = cellAfter(order, read, now.sheet);
      setReadHere(read);
      if (next) goTo(next);
      announce(`${verdictLine(now, read)}.${next ? ` Next: ${cellTitle(engine, next)}.` : ''}`);
    },
    [order, goTo, keeper, engine],
  );

  if (!cell) return <p>This engine type has nothing to measure.</p>;
  const shown = last ?? cell;
  const shut = places.marks.get(cell.place) === 'not opened';
  const entry = job.handedOver ? null : <Entry job={job} cell={cell} turn={turn} onTaken={taken} />;
  const openDoubts = doubts.filter(({ doubt }) => !job.doubtsAnswered.has(doubt.id)).length;
  return (
    <>
      <ThreeAnswers
        where={engine.places.get(cell.place)?.title ?? cell.place}
        now={
          job.handedOver
            ? 'nothing: the journal is closed'
            : shut
              ? 'nothing: this job does not open it'
              : unread === undefined
                ? 'all is read: go on to Decide, or read a place again'
                : `read ${[engine.characteristics.get(cell.characteristic)?.title, cell.plane, cell.axis].filter((part) => part !== '').join(', ')}`
        }
        right={
          <>
            {last ? verdictShort(job, last) : 'nothing read yet on this sheet'}
            {openDoubts > 0 ? (
              <>
                ; <a href="#doubts">{openDoubts} in doubt</a>
              </>
            ) : null}
          </>
        }
      />
      {shut ? (
        <ShutPlace title={engine.places.get(cell.place)?.title ?? cell.place}>{entry}</ShutPlace>
      ) : (
        entry
      )}
      {shut && last === undefined ? null : <VerdictShown job={job} cell={shown} />}
      <Doubts engine={engine} doubts={doubts} answered={job.doubtsAnswered} onCell={goTo} />
      <section className="part" aria-label="Readings of this place">
        <h2>{engine.places.get(cell.place)?.title}</h2>
        <PlaceTable
          engine={engine}
          judged={places.judged.get(cell.place) ?? []}
          readings={sheet.readings}
          at={cellKey(cell)}
          onCell={goTo}
        />
        <SettlingShown sheet={sheet} judged={places.judged.get(cell.place) ?? nothingJudged} />
        <div>
          <Button className="quiet" onPress={() => askOf(cell.place)}>
            What has to come off to reach it
          </Button>
        </div>
      </section>
      <section className="part" aria-label="Pictures of this place">
        <PicturesOf of={{ place: cell.place }} title={engine.places.get(cell.place)?.title ?? cell.place} />
      </section>
      <section className="part" aria-label="On paper and from a file">
        <a
          className="button quiet"
          href={`/jobs/${encodeURIComponent(job.head.event?.job ?? '')}/blank-sheet`}
        >
          Measuring sheet to print
        </a>
        {job.handedOver ? null : (
          <Aside words="Enter readings from a file">
            <FromFile job={job} />
          </Aside>
        )}
      </section>
    </>
  );
};
