/** @module What was done otherwise than the order of work, the limits or good practice ask: gathered at the front. */
import type { Component } from '../../engine/engine-type.ts';
import { cautionsOf } from '../../job/cautions.ts';
import { decided } from '../../job/decided.ts';
import type { OpenJob } from '../../job/job.ts';
import { operationsIn } from '../../job/scope.ts';
import { sizeCautionsOf } from '../../job/size-cautions.ts';
import type { Doubt, Judged } from '../../measure/verdict-model.ts';
import type { RecordRow, RecordSection } from '../record-model.ts';
import { neverZeroed } from './instruments.ts';
import { characteristicTitle, operationTitle, placeTitle } from './named.ts';
import { orderDeviations } from './orders.ts';
import { packDeviations } from './packs.ts';
import { runDeviations } from './run.ts';
import { tighteningDeviations } from './tightening.ts';

/** Verdicts as they stand now, those measured again after the plan among them. */
export interface Measured {
  readonly judged: readonly Judged[];
  readonly again: readonly Judged[];
}

const row = (of: string, what: string): RecordRow => ({ of, cells: [of, what] });

const of = (job: OpenJob, one: Judged): string =>
  `${placeTitle(job.sheet.engine, one.place)}, ${characteristicTitle(job.sheet.engine, one.characteristic)}`;

/** Put back, or measured again, and still not within; machined or renewed and not measured again. */
const notProved = (job: OpenJob, component: Component, { judged, again }: Measured): readonly RecordRow[] => {
  const judging = judged.filter(
    (one) => component.judgedBy.includes(one.characteristic) && one.limits !== undefined,
  );
  const does = (one: Judged) => decided(job, component.name, one.place);
  const poor = judging.filter((one) => one.verdict !== 'within');
  const renewed = judging.filter(
    (one) => !again.includes(one) && does(one) !== undefined && does(one) !== 'put back',
  );
  return [
    ...poor
      .filter((one) => again.includes(one))
      .map((one) => row(of(job, one), `${one.verdict} when measured again`)),
    ...poor
      .filter((one) => !again.includes(one) && does(one) === 'put back')
      .map((one) => row(of(job, one), `${component.title}: put back though ${one.verdict}`)),
    ...(renewed.length === 0
      ? []
      : [
          row(
            component.title,
            `machined or renewed by the plan and not measured again: ${renewed.map((one) => of(job, one)).join('; ')}`,
          ),
        ]),
  ];
};

/** Once the engine has gone each is named; before that they are work in hand and only counted. */
const notDone = (job: OpenJob): readonly RecordRow[] => {
  const left = operationsIn(job).filter(({ name }) => !job.done.has(name));
  if (job.handedOver !== undefined)
    return left.map((operation) => row(operation.title, `not signed as done (${operation.phase})`));
  return left.length === 0 ? [] : [row('Work', `${left.length} operations are not signed as done yet`)];
};

const overruled = (job: OpenJob): readonly RecordRow[] =>
  [...job.done].flatMap(([name, { overruled: word }]) =>
    word === undefined
      ? []
      : [
          row(
            operationTitle(job.sheet.engine, name),
            `${word.by} overruled what was lacking (${word.lacking.join('; ')}): ${word.why}`,
          ),
        ],
  );

const notAnswered = (job: OpenJob, doubts: readonly Doubt[]): readonly RecordRow[] =>
  doubts
    .filter((doubt) => !job.doubtsAnswered.has(doubt.id))
    .map((doubt) =>
      row(
        doubt.places.map((place) => placeTitle(job.sheet.engine, place)).join(', '),
        `doubt not answered: ${doubt.says}`,
      ),
    );

/** Read with after the day on which it was due for calibration. */
const overdue = (job: OpenJob): readonly RecordRow[] =>
  cautionsOf(job).flatMap(({ kind, of, says }) =>
    kind === 'overdue' ? [row(of, `read with, though it ${says}`)] : [],
  );

const poorlyHeld = (job: OpenJob): readonly RecordRow[] => {
  const used = new Set([...job.sheet.readings.values()].flat().map((reading) => reading.instrument));
  return [...used].flatMap((name) => {
    const instrument = job.sheet.instruments.get(name);
    return [
      ...(neverZeroed(instrument) ? [row(name, 'read with, its zero never checked')] : []),
      ...(instrument?.checked?.good === false
        ? [row(name, 'read with, though its last check was not good')]
        : []),
    ];
  });
};

const decisions = (job: OpenJob): readonly RecordRow[] => [
  ...(job.plan === undefined ? [row('Plan', 'none chosen')] : []),
  ...(job.plan !== undefined && job.agreed === undefined
    ? [row('Plan', "the owner's agreement is not noted")]
    : []),
  ...runDeviations(job).map(({ of: name, what }) => row(name, what)),
];

export const deviationSection = (
  job: OpenJob,
  measured: Measured,
  doubts: readonly Doubt[],
): RecordSection => {
  const rows = [
    ...decisions(job),
    ...[...job.sheet.engine.components.values()].flatMap((component) => notProved(job, component, measured)),
    ...notAnswered(job, doubts),
    ...sizeCautionsOf(job).map(({ of: title, says }) => row(title, says)),
    ...poorlyHeld(job),
    ...overdue(job),
    ...packDeviations(job).map(({ name, says }) => row(name, says)),
    ...tighteningDeviations(job).map(({ name, says }) => row(name, says)),
    ...orderDeviations(job).map(({ name, says }) => row(name, says)),
    ...overruled(job),
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
