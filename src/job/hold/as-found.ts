/** @module What was read as found, before it was taken apart, and is to be read again as built: it proves nothing of the build. */
import type { Operation } from '../../engine/engine-type.ts';
import { measuredFor } from '../../engine/measured-for.ts';
import { workBefore } from '../../engine/work-before.ts';
import { type Cell, cellKey } from '../../measure/reading.ts';
import { cellsOf } from '../../measure/scheme.ts';
import { cellTitle } from '../cell-title.ts';
import type { OpenJob } from '../job.ts';
import { placesInQuestion } from '../scope.ts';
import { type Lacking, lacking } from './lacking.ts';

/** Strip operations before one that ask for a reading of a characteristic, by the characteristic. */
const askedBefore = (job: OpenJob, { name }: Operation): ReadonlyMap<string, Operation> => {
  const { operations } = job.sheet.engine;
  const strip = [...workBefore(job.sheet.engine, name)].flatMap((before) => {
    const operation = operations.get(before);
    return operation?.phase === 'strip' ? [operation] : [];
  });
  return new Map(
    strip.flatMap((operation) =>
      operation.asks.flatMap(({ reads }) => (reads ? [[reads, operation] as const] : [])),
    ),
  );
};

/** The cells of a characteristic whose last reading is from before an operation was signed. */
const readBefore = (job: OpenJob, characteristic: string, operation: Operation): readonly Cell[] => {
  const { engine, readings } = job.sheet;
  const known = engine.characteristics.get(characteristic);
  const signed = job.done.get(operation.name)?.at;
  if (known === undefined || signed === undefined) return [];
  return placesInQuestion(job, known)
    .flatMap(({ id }) => cellsOf(engine, characteristic, id))
    .filter((cell) => {
      const last = readings.get(cellKey(cell))?.at(-1);
      return last !== undefined && (job.takenBy.get(last.id)?.at ?? '') < signed;
    });
};

export const lackingSinceFound = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  if (operation.phase === 'strip' || operation.needs.length === 0) return [];
  const asked = askedBefore(job, operation);
  if (asked.size === 0) return [];
  return [...measuredFor(job.sheet.engine, operation.needs)].flatMap((name) => {
    const apart = asked.get(name);
    const [cell] = apart === undefined ? [] : readBefore(job, name, apart);
    if (apart === undefined || cell === undefined) return [];
    return [
      lacking(
        `${cellTitle(job.sheet.engine, cell)} was read as found, before “${apart.title}”`,
        'read it again as it is built',
        { kind: 'cell', cell },
      ),
    ];
  });
};
