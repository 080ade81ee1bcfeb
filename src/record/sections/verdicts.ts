/** @module The record's verdicts: each characteristic with the limits as the manual prints them, its value and its spread. */
import { printedBounds } from '../../engine/printed-bounds.ts';
import { figureText, shownIn, spreadText } from '../../engine/shown-in.ts';
import type { OpenJob } from '../../job/job.ts';
import type { Judged } from '../../measure/verdict-model.ts';
import { probabilityText } from '../figure-text.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { characteristicTitle, placeTitle } from './named.ts';

const verdictRow = (job: OpenJob, judged: Judged): RecordRow => {
  const { engine } = job.sheet;
  const shown = shownIn(engine.characteristics.get(judged.characteristic));
  const word = judged.asNew === true && judged.verdict === 'within' ? 'within, as new' : judged.verdict;
  return {
    of: `${judged.place} ${judged.characteristic}`,
    cells: [
      placeTitle(engine, judged.place),
      characteristicTitle(engine, judged.characteristic),
      printedBounds(judged.limits, 'new'),
      printedBounds(judged.limits, 'wear'),
      judged.value === undefined ? '' : figureText(judged.value.value, shown),
      judged.expanded === undefined ? '' : spreadText(judged.expanded, shown),
      judged.conformance === undefined ? '' : probabilityText(judged.conformance),
      judged.limits === undefined ? 'no limits given' : word,
    ],
    ...(judged.verdict === 'outside' || judged.verdict === 'unsure' ? { marked: true as const } : {}),
  };
};

/** Whether anything was asked of it, or anything is known of it. */
const worthShowing = (judged: Judged): boolean => judged.limits !== undefined || judged.value !== undefined;

const known = (shown: readonly Judged[]): readonly Judged[] =>
  shown.filter((one) => one.verdict !== 'not yet known' || one.value !== undefined);

const heads = [
  'Place',
  'Characteristic',
  'As made',
  'Wear limit',
  'Value',
  'Spread (95 %)',
  'Conforms',
  'Verdict',
];

const tally = (shown: readonly Judged[]): string => {
  const count = (verdict: Judged['verdict']) =>
    shown.filter((one) => one.verdict === verdict && one.limits !== undefined).length;
  return `${count('within')} within, ${count('outside')} outside, ${count('unsure')} unsure, ${count('not yet known')} not yet known.`;
};

/** As the engine was found: what was known when the plan was chosen, or is known now where none was. What was not is counted. */
export const foundSection = (job: OpenJob, judged: readonly Judged[]): RecordSection => {
  const shown = judged.filter(worthShowing);
  return {
    name: 'verdicts as found',
    title: 'Verdicts, as found',
    says: [tally(shown)],
    table: { heads, rows: known(shown).map((one) => verdictRow(job, one)) },
    derived: true,
  };
};

/** As built: what was measured again after the plan, with the limits of the size it then had. */
export const builtSection = (job: OpenJob, measuredAgain: readonly Judged[]): RecordSection => {
  const shown = measuredAgain.filter(worthShowing);
  return {
    name: 'verdicts as built',
    title: 'Verdicts, as built',
    says: [shown.length === 0 ? 'Nothing was measured again after the plan was chosen.' : tally(shown)],
    table: { heads, rows: shown.map((one) => verdictRow(job, one)) },
    derived: true,
  };
};
