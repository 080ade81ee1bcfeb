/** @module What was done otherwise than the order of work, the limits or good practice ask: gathered at the front. */
import type { OpenJob } from '../../job/job.ts';
import type { Doubt, Judged } from '../../measure/verdict-model.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { characteristicTitle, placeTitle } from './named.ts';
import { packDeviations } from './packs.ts';

const row = (of: string, what: string): RecordRow => ({ of, cells: [of, what] });

/** What the plan does with a component at a place, where a plan was chosen. */
const decided = (job: OpenJob, component: string, place: string): string | undefined => {
  const choice = job.plan?.choices.find(({ slot }) => slot === component || slot === `${component}@${place}`);
  return choice?.option.split(':')[1];
};

/** Put back, or measured again, and still not within; machined or renewed and not measured again. */
const notProved = (job: OpenJob, { judged, again }: Measured): readonly RecordRow[] => {
  const { engine } = job.sheet;
  return [...engine.components.values()].flatMap((component) =>
    judged
      .filter((one) => component.judgedBy.includes(one.characteristic) && one.limits !== undefined)
      .flatMap((one) => {
        const does = decided(job, component.name, one.place);
        const of = `${placeTitle(engine, one.place)}, ${characteristicTitle(engine, one.characteristic)}`;
        const measuredAgain = again.includes(one);
        if (one.verdict === 'within' && (measuredAgain || does === 'put back' || does === undefined))
          return [];
        if (measuredAgain) return [row(of, `${one.verdict} when measured again`)];
        if (does === 'put back') return [row(of, `${component.title}: put back though ${one.verdict}`)];
        return does === undefined ? [] : [row(of, `${component.title}: to ${does}, not measured again`)];
      }),
  );
};

/** Once the engine has gone each is named; before that they are work in hand and only counted. */
const notDone = (job: OpenJob): readonly RecordRow[] => {
  const left = [...job.sheet.engine.operations.values()].filter(({ name }) => !job.done.has(name));
  if (job.handedOver !== undefined)
    return left.map((operation) => row(operation.title, `not signed as done (${operation.phase})`));
  return left.length === 0 ? [] : [row('Work', `${left.length} operations are not signed as done yet`)];
};

const notAnswered = (job: OpenJob, doubts: readonly Doubt[]): readonly RecordRow[] =>
  doubts
    .filter((doubt) => !job.doubtsAnswered.has(doubt.id))
    .map((doubt) =>
      row(
        doubt.places.map((place) => placeTitle(job.sheet.engine, place)).join(', '),
        `doubt not answered: ${doubt.says}`,
      ),
    );

const neverZeroed = (job: OpenJob): readonly RecordRow[] => {
  const used = new Set([...job.sheet.readings.values()].flat().map((reading) => reading.instrument));
  return [...used]
    .filter((name) => job.sheet.instruments.get(name)?.zero === undefined)
    .map((name) => row(name, 'read with, its zero never checked'));
};

const decisions = (job: OpenJob): readonly RecordRow[] => [
  ...(job.plan === undefined ? [row('Plan', 'none chosen')] : []),
  ...(job.plan !== undefined && job.agreed === undefined
    ? [row('Plan', "the owner's agreement is not noted")]
    : []),
  ...(job.runLog.length === 0 ? [row('Run', 'no running is noted')] : []),
];

/** Verdicts as they stand now, those measured again after the plan among them. */
export interface Measured {
  readonly judged: readonly Judged[];
  readonly again: readonly Judged[];
}

export const deviationSection = (
  job: OpenJob,
  measured: Measured,
  doubts: readonly Doubt[],
): RecordSection => {
  const rows = [
    ...decisions(job),
    ...notProved(job, measured),
    ...notAnswered(job, doubts),
    ...neverZeroed(job),
    ...packDeviations(job).map(({ name, says }) => row(name, says)),
    ...notDone(job),
  ];
  return {
    name: 'deviations',
    title: 'Deviations',
    says: [
      rows.length === 0
        ? 'None: everything asked for was done, proved and answered.'
        : `${rows.length} to be known.`,
    ],
    table: { heads: ['Of', 'What'], rows },
    derived: false,
  };
};
