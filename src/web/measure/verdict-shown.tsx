/** @module The verdict of the reading just taken, on its tolerance zone. */
import { useMemo } from 'react';
import { toleranceZone } from '../../drawing/tolerance-zone.ts';
import { bareSpread, figureText, shownIn } from '../../engine/shown-in.ts';
import { cellTitle } from '../../job/cell-title.ts';
import type { OpenJob } from '../../job/job.ts';
import { countingReading, judgeCell } from '../../measure/judge.ts';
import { limitsOf } from '../../measure/limits.ts';
import type { Cell } from '../../measure/reading.ts';
import { typedText } from '../../quantity/typed.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { Aside } from '../shell/aside.tsx';
import { VerdictWords } from '../shell/verdict-words.tsx';
import { StrikeOut } from './strike-out.tsx';
import { WearShown } from './wear-shown.tsx';

/** `54.962 mm ± 0.004: within`. */
export const verdictShort = (job: OpenJob, cell: Cell): string => {
  const judged = judgeCell(job.sheet, cell);
  const shown = shownIn(job.sheet.engine.characteristics.get(cell.characteristic));
  const size = judged.size === undefined ? 'no size' : figureText(judged.size.value, shown);
  const spread = judged.expanded === undefined ? '' : ` ± ${bareSpread(judged.expanded, shown)}`;
  return `${size}${spread}: ${judged.verdict}`;
};

/** The same, with where it was read before it. */
export const verdictLine = (job: OpenJob, cell: Cell): string =>
  `${cellTitle(job.sheet.engine, cell)}, ${verdictShort(job, cell)}`;

export const VerdictShown = ({ job, cell }: { readonly job: OpenJob; readonly cell: Cell }) => {
  const { sheet } = job;
  const judged = judgeCell(sheet, cell);
  const limits = limitsOf(sheet, cell.characteristic, cell.place);
  const title = cellTitle(sheet.engine, cell);
  const shown = shownIn(sheet.engine.characteristics.get(cell.characteristic));
  const reading = countingReading(sheet, cell);
  const { size, expanded, verdict } = judged;
  const ordered = sheet.against === 'as made';
  const value = size?.value;
  const zone = useMemo(
    () =>
      limits &&
      toleranceZone({
        title,
        limits,
        verdict,
        shown,
        ...(ordered && { called: 'as ordered' }),
        ...(value === undefined ? {} : { value }),
        ...(expanded === undefined ? {} : { expanded }),
      }),
    [limits, title, verdict, shown, value, expanded, ordered],
  );
  return (
    <section className="part" aria-label="Verdict of the last reading" data-verdict={verdict}>
      <p>
        {title}: {reading ? `read ${typedText(reading.typed)}, size ` : ''}
        <strong className="figure">{value === undefined ? 'not known' : figureText(value, shown)}</strong>{' '}
        {judged.reading === undefined ? null : <VerdictWords verdict={verdict} />}
        {limits || value === undefined ? null : ' (the manual gives no limits: written down, not judged)'}
        {judged.conformance === undefined || !limits
          ? null
          : `, ${percent(judged.conformance)} sure that it ${ordered ? 'is as ordered' : 'may go back'}`}
      </p>
      <WearShown sheet={sheet} cell={cell} now={value} />
      {zone ? <Drawing drawing={zone} /> : null}
      {judged.reading === undefined ? null : (
        <Aside words="This reading does not count">
          <StrikeOut key={judged.reading} reading={judged.reading} />
        </Aside>
      )}
    </section>
  );
};

/** No measurement is wholly sure: the last hundredths are not rounded up to certainty. */
const percent = (probability: number): string => {
  if (probability > 0.999) return 'more than 99.9 %';
  if (probability < 0.001) return 'less than 0.1 %';
  return `${(probability * 100).toFixed(1)} %`;
};
