/** @module The record of a job: its model put together from the job's state, and its page with the engine drawn. */
import { engineMap } from '../drawing/engine-map.ts';
import { marksIn } from '../drawing/job-marks.ts';
import { svgText } from '../drawing/svg.ts';
import { asksOf } from '../job/doubted.ts';
import type { JobEvent } from '../job/event.ts';
import { replay } from '../job/evolve.ts';
import type { OpenJob } from '../job/job.ts';
import { judgedIn } from '../job/judged.ts';
import { doubtsOf } from '../measure/doubts.ts';
import { judgeAll } from '../measure/judge.ts';
import type { Judged } from '../measure/verdict-model.ts';
import { recordPage } from './page.ts';
import { noPictures, type PicturesHeld } from './picture-figures.ts';
import { recordFile } from './record-file.ts';
import type { RecordModel } from './record-model.ts';
import { safetyWords } from './safety.ts';
import { deviationSection } from './sections/deviations.ts';
import { doubtSection } from './sections/doubts.ts';
import { findingSection } from './sections/findings.ts';
import { fittingSections } from './sections/fitting.ts';
import { formerSection } from './sections/former.ts';
import { headingOf } from './sections/heading.ts';
import { homeSections } from './sections/homes.ts';
import { hoursSection } from './sections/hours.ts';
import { instrumentSection } from './sections/instruments.ts';
import { offerSections } from './sections/offers.ts';
import { answerSection, operationSection, reopenedSection } from './sections/operations.ts';
import { orderSections } from './sections/orders.ts';
import { packSection } from './sections/packs.ts';
import { pictureSections, recordPictures } from './sections/pictures.ts';
import { planSection } from './sections/plan.ts';
import { readingSection } from './sections/readings.ts';
import { runSections } from './sections/run.ts';
import { scopeSection } from './sections/scope.ts';
import { spillCheckSection } from './sections/spill-check.ts';
import { sumSections } from './sections/sums.ts';
import { tighteningSections } from './sections/tightening.ts';
import { camSection, valveSection } from './sections/valves.ts';
import { builtSection, foundSection } from './sections/verdicts.ts';

/** Where the plan that counts was made: when it was chosen, or when the offer was made of which it was accepted. */
const planMade = (events: readonly JobEvent[]): number => {
  const last = events.findLastIndex(
    ({ fact }) => fact.kind === 'plan chosen' || (fact.kind === 'owner agreed' && fact.offer !== undefined),
  );
  const fact = events[last]?.fact;
  if (fact?.kind !== 'owner agreed') return last;
  return events.findIndex(
    (event) => event.fact.kind === 'offer made' && event.fact.number === fact.offer?.number,
  );
};

/** The job as it stood when its plan was chosen; as it stands where none was. */
const asFound = (job: OpenJob, events: readonly JobEvent[]): OpenJob => {
  const chosen = planMade(events);
  const then = chosen < 0 ? job : replay(events.slice(0, chosen));
  return then.kind === 'open' ? then : job;
};

/** Whether the readings behind a verdict are others than they were. */
const changed = (now: Judged, then: Judged | undefined): boolean =>
  then === undefined ||
  now.value?.value !== then.value?.value ||
  now.cells.some((cell, at) => cell.reading !== then.cells[at]?.reading);

/** Everything the record shows; a pure function of the journal, so that a stranger gets the same. */
export const recordOf = (job: OpenJob, events: readonly JobEvent[]): RecordModel => {
  const { sheet, booked, head } = job;
  const found = asFound(job, events);
  const judgedThen = judgedIn(job, found.sheet);
  const judged = judgedIn(job);
  const then = new Map(judgedThen.map((one) => [`${one.characteristic}|${one.place}`, one]));
  // What is no longer known, since another part is here, was not measured again.
  const again = judged.filter(
    (one) => one.value !== undefined && changed(one, then.get(`${one.characteristic}|${one.place}`)),
  );
  const doubts = doubtsOf(sheet);
  return {
    title: `Record of overhaul ${booked.number}: ${sheet.engine.title}`,
    number: booked.number,
    heading: headingOf(job),
    sections: [
      deviationSection(job, { judged, again }, doubts.filter(asksOf(job))),
      ...scopeSection(job),
      foundSection(found, judgedThen),
      builtSection(job, again),
      doubtSection(job, doubts),
      ...formerSection(job),
      findingSection(job),
      ...pictureSections(job),
      planSection(job),
      ...offerSections(job),
      ...orderSections(job),
      ...fittingSections(job),
      packSection(job),
      ...sumSections(job),
      ...spillCheckSection(job),
      ...valveSection(job),
      ...camSection(job),
      operationSection(job),
      ...homeSections(job),
      answerSection(job),
      ...tighteningSections(job),
      ...(job.reopened.length === 0 ? [] : [reopenedSection(job)]),
      ...runSections(job),
      ...hoursSection(job),
      instrumentSection(job),
      readingSection(job),
    ],
    pictures: recordPictures(job),
    safety: safetyWords,
    events: head.sequence,
    hash: head.hash,
  };
};

const mapOf = (job: OpenJob): string => {
  const judged = Map.groupBy(judgeAll(job.sheet), ({ place }) => place);
  return svgText(engineMap(job.sheet.engine, marksIn(job, judged)));
};

/**
 * The record's page, with the journal inside.
 *
 * @param pictures the bytes of its pictures; one that is lacking is said to be
 * @param journal  the events as they are stored, where an older version was read into what it means now
 */
export const pageOf = (
  job: OpenJob,
  events: readonly JobEvent[],
  pictures: PicturesHeld = noPictures,
  journal: readonly unknown[] = events,
): string => recordPage(recordOf(job, events), journal, { drawing: mapOf(job), pictures });

/** The exported file of the job. */
export const fileOf = (
  job: OpenJob,
  events: readonly JobEvent[],
  pictures: PicturesHeld = noPictures,
  journal: readonly unknown[] = events,
): string => recordFile(recordOf(job, events), journal, pictures);
