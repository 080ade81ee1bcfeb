/** @module May this operation be signed as done, and this step of running be logged? */

import type { Operation } from '../../engine/engine-type.ts';
import { chooseName } from '../../engine/nearest-name.ts';
import { samePerson } from '../../engine/same-person.ts';
import type { Signed } from '../../journal/event.ts';
import { badFigure, blank, type Trouble, trouble } from '../../journal/trouble.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { askedOf } from '../asked.ts';
import type { RequestOf } from '../command.ts';
import type { Overruled } from '../event.ts';
import type { Lacking } from '../hold/lacking.ts';
import { standingOf } from '../holds.ts';
import type { OpenJob } from '../job.ts';
import { notStarted } from './run.ts';

export const noOperation = ({ sheet: { engine } }: OpenJob, name: string): Trouble =>
  trouble(
    `${engine.title} has no operation “${name}”`,
    'operation',
    chooseName(name, engine.operations.keys()),
  );

/** What is wanted of an operation comes after its signature. */
export const signedAlready = ({ by, at }: Signed, { title }: Operation, remedy: string): Refusal =>
  trouble(`it was signed by ${by} on ${at.slice(0, 10)}`, title, remedy);

/** A second person's answer by the very person who signs. */
const sameEyes = (job: OpenJob, operation: Operation, actor: string): Trouble => {
  const own = askedOf(job, operation).find(
    ({ ask, answered }) => ask.secondPerson && answered !== undefined && samePerson(answered.by, actor),
  );
  return (
    own &&
    trouble(
      `${actor} answered what a second person must see: ${own.says}`,
      operation.title,
      'have another person look, and answer it under their own name',
    )
  );
};

/** Held, and somebody answers for going on: all that is lacking must be named, and be such that it may be overruled. */
const badOverruling = (
  lacking: readonly Lacking[],
  { by, why, lacking: named }: Overruled,
  where: string,
): Trouble => {
  const never = lacking.find(({ overrule }) => overrule === 'never');
  if (never !== undefined)
    return trouble(`nobody may go on without this: ${never.says}`, where, never.remedy);
  const unnamed = lacking.find(({ says }) => !named.includes(says));
  if (unnamed !== undefined || named.length > lacking.length)
    return trouble(
      unnamed === undefined ? 'less is lacking than was overruled' : `this is lacking too: ${unnamed.says}`,
      where,
      'look again at what is lacking, and overrule that',
    );
  return (
    blank(by, where, 'give the name of the person who answers for it') ??
    blank(why, where, 'give the reason; it stands in the record')
  );
};

export const doOperationTrouble = (
  job: OpenJob,
  { operation, overruled }: RequestOf<'do operation'>,
  actor: string,
): Trouble => {
  const known = job.sheet.engine.operations.get(operation);
  if (known === undefined) return noOperation(job, operation);
  const standing = standingOf(job, known);
  switch (standing.kind) {
    case 'open':
      return overruled === undefined
        ? sameEyes(job, known, actor)
        : trouble('nothing is lacking that could be overruled', known.title, 'sign it as it is');
    case 'done':
      return signedAlready(standing.signed, known, 'nothing is left to do');
    case 'held': {
      if (overruled !== undefined)
        return badOverruling(standing.lacking, overruled, known.title) ?? sameEyes(job, known, actor);
      const [first] = standing.lacking;
      return trouble(
        standing.lacking.map(({ says }) => says).join('; '),
        known.title,
        first?.remedy ?? 'do what is missing first',
      );
    }
    default:
      return standing satisfies never;
  }
};

export const reopenOperationTrouble = (
  job: OpenJob,
  { operation, why }: RequestOf<'reopen operation'>,
): Trouble => {
  const known = job.sheet.engine.operations.get(operation);
  if (known === undefined) return noOperation(job, operation);
  return job.done.has(operation)
    ? blank(why, known.title, 'say why it is opened again')
    : trouble(
        'it is not signed, so there is nothing to open again',
        known.title,
        'do it when its turn comes',
      );
};

export const logRunStepTrouble = (job: OpenJob, asked: RequestOf<'log run step'>): Trouble => {
  return (
    notStarted(job) ??
    badFigure(asked.speed, 'speed', 'run step, speed', { from: 0 }) ??
    badLoad(asked) ??
    (asked.minutes > 0
      ? undefined
      : trouble('a step lasts some minutes', 'run step', 'give the minutes it ran')) ??
    badFigure(asked.oilPressure, 'pressure', 'run step, oil pressure') ??
    badFigure(asked.waterTemperature, 'temperature', 'run step, water temperature')
  );
};

/** Load is told as a share of full load or as the brake's torque. */
const badLoad = ({ load }: RequestOf<'log run step'>): Trouble =>
  badFigure(load, 'torque', 'run step, load', { from: 0 }) === undefined
    ? undefined
    : badFigure(load, 'ratio', 'run step, load', { from: 0 });
