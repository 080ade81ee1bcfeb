/** @module May work at an operation be begun, or stopped? */
import { blank, type Trouble, trouble } from '../../journal/trouble.ts';
import { minutesBetween } from '../../quantity/moment.ts';
import type { RequestOf } from '../command.ts';
import { beyondScope } from '../hold/scope.ts';
import type { OpenJob } from '../job.ts';
import { type Spell, spellsOf } from '../time.ts';
import { noOperation, signedAlready } from './operation.ts';

const runningAt = (job: OpenJob, operation: string, actor: string): Spell | undefined =>
  spellsOf(job).find(
    (spell) => spell.to === undefined && spell.operation === operation && spell.by === actor,
  );

/** Time may run at what is held back: finding out why takes time too. */
export const beginWorkTrouble = (
  job: OpenJob,
  { operation }: RequestOf<'begin work'>,
  actor: string,
): Trouble => {
  const known = job.sheet.engine.operations.get(operation);
  if (known === undefined) return noOperation(job, operation);
  const [beyond] = beyondScope(job, known);
  if (beyond !== undefined) return trouble(beyond.says, known.title, beyond.remedy);
  const signed = job.done.get(operation);
  if (signed !== undefined) return signedAlready(signed, known, 'open the operation again, with the reason');
  const running = runningAt(job, operation, actor);
  return running && trouble(`${actor} is at it since ${running.from}`, known.title, 'nothing is left to do');
};

export const stopWorkTrouble = (
  job: OpenJob,
  { operation, why, endedAt }: RequestOf<'stop work'>,
  actor: string,
  at: string,
): Trouble => {
  const known = job.sheet.engine.operations.get(operation);
  if (known === undefined) return noOperation(job, operation);
  const running = runningAt(job, operation, actor);
  if (running === undefined)
    return trouble(
      `${actor} is not at it`,
      known.title,
      'begin it first, or stop it under the name that began it',
    );
  if (endedAt !== undefined && (minutesBetween(running.from, endedAt) < 0 || minutesBetween(endedAt, at) < 0))
    return trouble(
      `it ran from ${running.from} until now, ${at}`,
      known.title,
      'give a time between the two for when the hands left it',
    );
  return blank(why, known.title, 'write what interrupts it; signing ends it without a reason');
};
