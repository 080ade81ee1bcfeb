/** @module What an operation asks, place by place, and how it was answered. */
import type { Ask, Operation } from '../engine/engine-type.ts';
import type { AnsweredAsk, OpenJob } from './job.ts';
import { scopeOf } from './scope.ts';

/** Under which an answer stands: one for each operation, ask and place. */
export const answerKey = ({
  operation,
  ask,
  place = '',
}: Pick<AnsweredAsk, 'operation' | 'ask' | 'place'>): string => `${operation}|${ask}|${place}`;

/** One ask, at one of its places or for the operation as a whole. */
export interface AskedAt {
  readonly ask: Ask;
  readonly place?: string;
  /** As it is put, with the place. */
  readonly says: string;
  readonly answered?: AnsweredAsk;
}

/** All that an operation asks, in its order, place by place. */
export const askedOf = (job: OpenJob, operation: Operation): readonly AskedAt[] => {
  const worked = scopeOf(job).placesAt(operation.name, operation.at ?? '');
  const places = [...job.sheet.engine.places.values()].filter(({ id }) => worked.has(id));
  const at = (ask: Ask, place?: string, title?: string): AskedAt => {
    const answered = job.answers.get(
      answerKey({ operation: operation.name, ask: ask.name, ...(place && { place }) }),
    );
    return {
      ask,
      ...(place !== undefined && { place }),
      says: title === undefined ? ask.ask : `${title}: ${ask.ask}`,
      ...(answered && { answered }),
    };
  };
  return operation.asks.flatMap((ask) =>
    ask.each ? places.map(({ id, title }) => at(ask, id, title)) : [at(ask)],
  );
};
