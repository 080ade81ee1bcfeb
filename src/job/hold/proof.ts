/** @module What a hold point asks to be measured, and is not proved yet. */
import type { EngineType, Operation } from '../../engine/engine-type.ts';
import { judge } from '../../measure/judge.ts';
import { cellsOf } from '../../measure/scheme.ts';
import type { Doubt, Judged } from '../../measure/verdict-model.ts';
import { cellTitle } from '../cell-title.ts';
import { doubtsIn } from '../doubted.ts';
import type { OpenJob } from '../job.ts';
import { placesInQuestion } from '../scope.ts';
import { type GoTo, type Lacking, lacking } from './lacking.ts';
import { lackingPack } from './packs.ts';
import { lackingTightening } from './tightening.ts';

const wayTo = (engine: EngineType, { place, characteristic, cells, missing }: Judged): GoTo | undefined => {
  const cell = missing[0] ?? cells[0]?.cell ?? cellsOf(engine, characteristic, place)[0];
  return cell && { kind: 'cell', cell };
};

const unproved = (engine: EngineType, judged: Judged): Lacking | undefined => {
  const name = `${engine.characteristics.get(judged.characteristic)?.title ?? judged.characteristic} at ${
    engine.places.get(judged.place)?.title ?? judged.place
  }`;
  const there = wayTo(engine, judged);
  switch (judged.verdict) {
    case 'within':
      return undefined;
    case 'outside':
      return lacking(`${name} is outside its limits`, 'put it right and measure it again', there);
    case 'unsure':
      return lacking(
        `${name} is too near its limit for how it was measured`,
        'measure it again, or with a finer instrument',
        there,
      );
    case 'not yet known': {
      const [cell] = judged.missing;
      return lacking(
        `${name} is not yet known`,
        cell === undefined ? 'measure it' : `read ${cellTitle(engine, cell)}`,
        there,
      );
    }
    default:
      return judged.verdict satisfies never;
  }
};

/** Doubts nobody has answered: the reading was neither taken again nor said to stand. */
export const openDoubts = (job: OpenJob): readonly Doubt[] =>
  doubtsIn(job).filter(({ id }) => !job.doubtsAnswered.has(id));

/** What is not proved of some characteristics, at all their places. */
export const lackingProofOf = (job: OpenJob, names: readonly string[]): readonly Lacking[] => {
  if (names.length === 0) return [];
  const { engine } = job.sheet;
  const judged = names.flatMap((name) => {
    const needed = engine.characteristics.get(name);
    return needed === undefined
      ? []
      : placesInQuestion(job, needed).map(({ id }) => judge(job.sheet, name, id));
  });
  const left = judged.flatMap(
    (one) => lackingPack(job, one.characteristic, one.place) ?? unproved(engine, one) ?? [],
  );
  if (left.length > 0) return left;
  const proofs = new Set(judged.flatMap(({ cells }) => cells.flatMap(({ reading }) => reading ?? [])));
  return openDoubts(job)
    .filter(({ readings }) => readings.some((id) => proofs.has(id)))
    .map(({ says }) =>
      lacking(`a reading is in doubt: ${says}`, 'measure again, or say why it stands', {
        kind: 'phase',
        phase: 'measure',
      }),
    );
};

/**
 * What an operation's hold point lacks; none where it has no hold point or all is proved. Where it reads again after its
 * own joints are tightened, nothing is asked before: it would be read in vain.
 */
export const lackingProof = (job: OpenJob, operation: Operation): readonly Lacking[] =>
  operation.readAgain && lackingTightening(job, operation).length > 0
    ? []
    : lackingProofOf(job, operation.needs);
