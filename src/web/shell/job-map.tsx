/** @module The engine beside the work: every place marked, each a way to read it there or to ask how it is reached. */
import { type ReactNode, useCallback, useMemo, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { engineMap } from '../../drawing/engine-map.ts';
import { mapWayOf } from '../../drawing/map-way.ts';
import type { PlaceId } from '../../engine/engine-type.ts';
import { scopeOf } from '../../job/scope.ts';
import { wayToPlace } from '../../job/way-to-place.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { entryOrder } from '../../measure/scheme.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { placesJudge } from '../journal/judged-places.ts';
import { useJob, useKeeper } from '../journal/use-desk.tsx';
import { PlaceAsked } from '../place/place-asked.tsx';
import { useAfterPaint } from './after-paint.ts';
import { addressOf } from './phases.ts';
import { type AskedPlace, StandingContext } from './standing-on.ts';

export const JobMap = ({
  shown,
  reads,
  children,
}: {
  readonly shown: boolean;
  /** On the measuring sheet a place is gone to and read. */
  readonly reads: boolean;
  readonly children: ReactNode;
}) => {
  const job = useJob();
  const keeper = useKeeper();
  const { sheet } = job;
  const column = useRef<HTMLElement>(null);
  const [judgePlaces] = useState(placesJudge);
  const [{ cell, turn }, setStood] = useState<{ readonly cell?: Cell; readonly turn: number }>({ turn: 0 });
  const [asked, setAsked] = useState<AskedPlace>();
  const [address, go] = useLocation();
  // A reading may change how its instrument repeats, and with it every size taken with it: the map may wait a frame.
  const places = judgePlaces(useAfterPaint(sheet), scopeOf(job));
  const { engine } = sheet;
  // Where numbers are typed one after another nothing is looked for beside them.
  const inHand = reads ? undefined : asked?.place;
  const at = inHand ?? cell?.place;
  const way = useMemo(() => {
    const found = inHand === undefined ? undefined : wayToPlace(job, inHand);
    return found?.kind === 'answer' ? mapWayOf(engine, found.value) : undefined;
  }, [engine, job, inHand]);
  const drawing = useMemo(() => engineMap(engine, places.marks, at, way), [engine, places.marks, at, way]);
  const jobId = job.head.event?.job ?? '';
  const goTo = useCallback((next: Cell) => setStood((before) => ({ cell: next, turn: before.turn + 1 })), []);
  const askOf = useCallback(
    (place: PlaceId) => {
      const on = reads ? addressOf(jobId, 'strip') : address;
      setAsked((before) => ({ place, turn: (before?.turn ?? 0) + 1, on }));
      if (reads) go(on);
    },
    [reads, jobId, address, go],
  );
  const putAway = useCallback(() => {
    const place = asked?.place ?? '';
    setAsked(undefined);
    column.current?.querySelector<SVGGElement>(`[data-place="${CSS.escape(place)}"]`)?.focus();
  }, [asked]);
  const onPlace = useCallback(
    (place: PlaceId) => {
      if (!reads) return askOf(place);
      // Asked when it is wanted: were the sheet held here, every reading would draw the engine anew.
      const now = keeper.desk().job;
      const readings = now.kind === 'open' ? now.sheet.readings : undefined;
      const inQuestion = now.kind === 'open' ? scopeOf(now).inQuestion : () => true;
      const here = entryOrder(engine).filter((one) => one.place === place);
      const wanted = here.filter((one) => inQuestion(one.characteristic, place));
      const next = wanted.find((one) => !readings?.has(cellKey(one))) ?? wanted[0] ?? here[0];
      if (next) goTo(next);
      else askOf(place);
    },
    [reads, engine, keeper, goTo, askOf],
  );
  const standing = useMemo(
    () => ({ cell, turn, goTo, asked, askOf, putAway, places }),
    [cell, turn, goTo, asked, askOf, putAway, places],
  );
  return (
    <StandingContext value={standing}>
      {shown ? (
        <div className="with-map body" style={{ padding: 0 }}>
          <section className="map-column" aria-label="The engine" ref={column}>
            <Drawing drawing={drawing} onPlace={onPlace} at={at} />
          </section>
          <div className="column">
            {reads || asked === undefined ? null : <PlaceAsked asked={asked} here={asked.on === address} />}
            {children}
          </div>
        </div>
      ) : (
        <div className="column">{children}</div>
      )}
    </StandingContext>
  );
};
