/** @module The engine beside the work: every place marked, each a way to go there. */
import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { useLocation } from 'wouter';
import { engineMap } from '../../drawing/engine-map.ts';
import type { PlaceId } from '../../engine/engine-type.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { entryOrder } from '../../measure/scheme.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { placesJudge } from '../journal/judged-places.ts';
import { useJob, useKeeper } from '../journal/use-desk.tsx';
import { useAfterPaint } from './after-paint.ts';
import { addressOf } from './phases.ts';
import { StandingContext } from './standing-on.ts';

export const JobMap = ({ shown, children }: { readonly shown: boolean; readonly children: ReactNode }) => {
  const job = useJob();
  const keeper = useKeeper();
  const { sheet } = job;
  const [judgePlaces] = useState(placesJudge);
  const [{ cell, turn }, setStood] = useState<{ readonly cell?: Cell; readonly turn: number }>({ turn: 0 });
  const [, go] = useLocation();
  // A reading may change how its instrument repeats, and with it every size taken with it: the map may wait a frame.
  const places = judgePlaces(useAfterPaint(sheet));
  const { engine } = sheet;
  const at = cell?.place;
  const drawing = useMemo(() => engineMap(engine, places.marks, at), [engine, places.marks, at]);
  const jobId = job.head.event?.job ?? '';
  const goTo = useCallback((next: Cell) => setStood((before) => ({ cell: next, turn: before.turn + 1 })), []);
  const goToPlace = useCallback(
    (place: PlaceId) => {
      // Asked when it is wanted: were the sheet held here, every reading would draw the engine anew.
      const now = keeper.desk().job;
      const readings = now.kind === 'open' ? now.sheet.readings : undefined;
      const here = entryOrder(engine).filter((one) => one.place === place);
      const next = here.find((one) => !readings?.has(cellKey(one))) ?? here[0];
      if (next) goTo(next);
      go(addressOf(jobId, 'measure'));
    },
    [engine, keeper, jobId, go, goTo],
  );
  const standing = useMemo(
    () => ({ cell, turn, goTo, goToPlace, places }),
    [cell, turn, goTo, goToPlace, places],
  );
  return (
    <StandingContext value={standing}>
      {shown ? (
        <div className="with-map body" style={{ padding: 0 }}>
          <section className="map-column" aria-label="The engine">
            <Drawing drawing={drawing} onPlace={goToPlace} at={at} />
          </section>
          <div className="column">{children}</div>
        </div>
      ) : (
        <div className="column">{children}</div>
      )}
    </StandingContext>
  );
};
