/** @module What is not done yet that comes before an operation: what would be broken, and what covered unproved. */

import type { Characteristic, Operation } from '../../engine/engine-type.ts';
import { measuredFor } from '../../engine/measured-for.ts';
import { workBefore } from '../../engine/work-before.ts';
import type { OpenJob } from '../job.ts';
import { scopeOf } from '../scope.ts';
import { type Lacking, outOfOrder } from './lacking.ts';
import { lackingProofOf } from './proof.ts';

export const lackingBefore = (job: OpenJob, operation: Operation): readonly Lacking[] =>
  (scopeOf(job).before.get(operation.name) ?? [])
    .filter((name) => !job.done.has(name))
    .map((name) => {
      const title = job.sheet.engine.operations.get(name)?.title ?? name;
      const broken = operation.breaks.get(name);
      return outOfOrder(
        `“${title}” is not done${broken === undefined ? '' : `: ${broken}`}`,
        'do it first, and sign it',
        { kind: 'operation', operation: name },
      );
    });

/** Proofs of hold points that were passed over, and that nobody comes to any more afterwards. */
export const lackingUnderCover = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  const { engine } = job.sheet;
  const { operations } = scopeOf(job);
  if (operation.covers.length === 0) return [];
  const passedOver = [...workBefore(engine, operation.name)].filter(
    (name) => operations.has(name) && !job.done.has(name),
  );
  if (passedOver.length === 0) return [];
  const hidden = ({ name, at }: Pick<Characteristic, 'name' | 'at'>): boolean =>
    operation.covers.includes(name) || operation.covers.includes(at);
  const asked = new Set(passedOver.flatMap((name) => engine.operations.get(name)?.needs ?? []));
  const covered = [...asked].filter((name) =>
    [...measuredFor(engine, [name])].some((one) => {
      const characteristic = engine.characteristics.get(one);
      return characteristic !== undefined && hidden(characteristic);
    }),
  );
  return lackingProofOf(
    job,
    covered.filter((name) => !operation.needs.includes(name)),
  ).map(({ says, remedy, goTo }) => outOfOrder(`covered by this, and ${says}`, remedy, goTo));
};
