/** @module What would settle the unsure verdicts of the place in hand, cheapest first; worked out when nothing waits. */
import { useEffect, useState } from 'react';
import { type Settling, settling } from '../../measure/settling.ts';
import type { Sheet } from '../../measure/sheet.ts';
import type { Judged } from '../../measure/verdict-model.ts';
import { useInstruments } from '../jobs/workshop-lists.ts';
import { whenIdle } from '../shell/when-idle.ts';

const none: readonly Settling[] = [];

export const SettlingShown = ({
  sheet,
  judged,
}: {
  readonly sheet: Sheet;
  readonly judged: readonly Judged[];
}) => {
  const { data: shop } = useInstruments();
  const [found, setFound] = useState(none);
  useEffect(
    () => whenIdle(() => setFound(() => (judged.length === 0 ? none : settling(sheet, judged, shop)))),
    [sheet, judged, shop],
  );
  if (found.length === 0) return null;
  return (
    <div className="note" data-settling="">
      <h3>Unsure: what would settle it</h3>
      {found.map(({ place, characteristic, proposals }) => (
        <div key={`${place} ${characteristic}`}>
          <p>{sheet.engine.characteristics.get(characteristic)?.title ?? characteristic}</p>
          <ol>
            {proposals.map(({ kind, says, instrument = '' }) => (
              <li key={`${kind} ${instrument} ${says}`}>{says}</li>
            ))}
          </ol>
        </div>
      ))}
    </div>
  );
};
