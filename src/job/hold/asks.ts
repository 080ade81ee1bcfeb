/** @module What an operation asks and nobody has answered as it should be: as found, counts that balance, proofs by looking. */
import type { Ask, Operation } from '../../engine/engine-type.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { cellsOf } from '../../measure/scheme.ts';
import { type AskedAt, answerKey, askedOf } from '../asked.ts';
import { cellTitle } from '../cell-title.ts';
import type { OpenJob } from '../job.ts';
import { placesInQuestion, scopeOf } from '../scope.ts';
import { type Lacking, lacking } from './lacking.ts';

const unread = (job: OpenJob, { ask, place }: AskedAt): readonly Cell[] => {
  const { engine, readings } = job.sheet;
  const reads = engine.characteristics.get(ask.reads ?? '');
  if (reads === undefined) return [];
  const places = place === undefined ? placesInQuestion(job, reads).map(({ id }) => id) : [place];
  return places
    .flatMap((at) => cellsOf(engine, reads.name, at))
    .filter((cell) => !readings.has(cellKey(cell)));
};

const hasPicture = (job: OpenJob, operation: string, place: string | undefined): boolean =>
  job.pictures.some(({ of }) => of.operation === operation && (place === undefined || of.place === place));

/** Words for two counts that should be one. */
const unbalanced = (job: OpenJob, ask: Ask, count: number | undefined): Lacking | undefined => {
  if (ask.like === undefined || !scopeOf(job).operations.has(ask.like.operation)) return undefined;
  const other = job.answers.get(answerKey(ask.like))?.count;
  const title = job.sheet.engine.operations.get(ask.like.operation)?.title ?? ask.like.operation;
  const there = { kind: 'operation', operation: ask.like.operation } as const;
  if (other === undefined)
    return lacking(
      `nobody counted at “${title}” what this count must come to`,
      'count it there first',
      there,
    );
  if (other === count) return undefined;
  return lacking(
    `${count} counted here, ${other} at “${title}”`,
    count !== undefined && count < other
      ? `find the ${other - count} that is missing before anything is covered; count again`
      : 'count again, here and there',
  );
};

const lackingAnswer = (job: OpenJob, operation: Operation, asked: AskedAt): Lacking | undefined => {
  const { ask, says, answered, place } = asked;
  if (answered !== undefined) {
    if (!answered.good)
      return lacking(`${says} — not as it should be: ${answered.says}`, 'put it right, and answer again');
    return unbalanced(job, ask, answered.count);
  }
  switch (ask.answer) {
    case 'reading': {
      const [cell] = unread(job, asked);
      if (cell === undefined) return undefined;
      return lacking(says, `read ${cellTitle(job.sheet.engine, cell)}, or say why it cannot be had`, {
        kind: 'cell',
        cell,
      });
    }
    case 'picture':
      return hasPicture(job, operation.name, place)
        ? undefined
        : lacking(says, 'take a picture, or write it down in words');
    case 'count':
      return lacking(says, 'count, and write the number down');
    case 'words':
      return lacking(says, 'write down what is found');
    case 'seen':
      return lacking(says, ask.secondPerson ? 'a second person looks, and answers' : 'look, and answer');
    default:
      return ask.answer satisfies never;
  }
};

export const lackingAnswers = (job: OpenJob, operation: Operation): readonly Lacking[] =>
  askedOf(job, operation).flatMap((asked) => lackingAnswer(job, operation, asked) ?? []);
