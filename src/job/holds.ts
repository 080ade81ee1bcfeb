/** @module Operations and their hold points: done, open, or held back by what is not yet proved. */
import type { EngineType, Operation } from '../engine/engine-type.ts';
import type { Signed } from '../journal/event.ts';
import { doubtsOf } from '../measure/doubts.ts';
import { judge } from '../measure/judge.ts';
import { placesOf } from '../measure/scheme.ts';
import type { Doubt, Judged } from '../measure/verdict-model.ts';
import { cellTitle } from './cell-title.ts';
import type { OpenJob } from './job.ts';
import { openLines } from './order/open-lines.ts';
import { standingWords } from './order/standing-words.ts';

export type Standing =
  | { readonly kind: 'done'; readonly signed: Signed & { readonly note: string } }
  | { readonly kind: 'open' }
  /** What is lacking, each in words with its remedy; never empty. */
  | { readonly kind: 'held'; readonly lacking: readonly Lacking[] };

export interface Lacking {
  readonly says: string;
  readonly remedy: string;
}

export interface OperationStanding {
  readonly operation: Operation;
  readonly standing: Standing;
}

const unproved = (engine: EngineType, judged: Judged): Lacking | undefined => {
  const name = `${engine.characteristics.get(judged.characteristic)?.title ?? judged.characteristic} at ${
    engine.places.get(judged.place)?.title ?? judged.place
  }`;
  switch (judged.verdict) {
    case 'within':
      return undefined;
    case 'outside':
      return { says: `${name} is outside its limits`, remedy: 'put it right and measure it again' };
    case 'unsure':
      return {
        says: `${name} is too near its limit for how it was measured`,
        remedy: 'measure it again, or with a finer instrument',
      };
    case 'not yet known': {
      const [cell] = judged.missing;
      return {
        says: `${name} is not yet known`,
        remedy: cell === undefined ? 'measure it' : `read ${cellTitle(engine, cell)}`,
      };
    }
    default:
      return judged.verdict satisfies never;
  }
};

/** Doubts nobody has answered: the reading was neither taken again nor said to stand. */
export const openDoubts = (job: OpenJob): readonly Doubt[] =>
  doubtsOf(job.sheet).filter(({ id }) => !job.doubtsAnswered.has(id));

/** What an operation's hold point lacks; none where it has no hold point or all is proved. */
const lackingProof = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  if (operation.needs.length === 0) return [];
  const { engine } = job.sheet;
  const judged = operation.needs.flatMap((name) => {
    const needed = engine.characteristics.get(name);
    return needed === undefined ? [] : placesOf(engine, needed).map(({ id }) => judge(job.sheet, name, id));
  });
  const lacking = judged.flatMap((one) => unproved(engine, one) ?? []);
  if (lacking.length > 0) return lacking;
  const proofs = new Set(judged.flatMap(({ cells }) => cells.flatMap(({ reading }) => reading ?? [])));
  return openDoubts(job)
    .filter(({ readings }) => readings.some((id) => proofs.has(id)))
    .map(({ says }) => ({
      says: `a reading is in doubt: ${says}`,
      remedy: 'measure again, or say why it stands',
    }));
};

const lackingBefore = (job: OpenJob, operation: Operation): readonly Lacking[] =>
  operation.after
    .filter((name) => !job.done.has(name))
    .map((name) => {
      const title = job.sheet.engine.operations.get(name)?.title ?? name;
      return { says: `“${title}” is not done`, remedy: 'do it first, and sign it' };
    });

const lackingAgreement = (job: OpenJob, operation: Operation): readonly Lacking[] => {
  if (operation.phase === 'strip' || job.agreed !== undefined) return [];
  return job.plan === undefined
    ? [{ says: 'no plan is chosen', remedy: 'choose a plan and have the owner agree to it' }]
    : [{ says: 'the owner has not agreed to the plan', remedy: 'ask the owner, and note the agreement' }];
};

/** What is awaited or not as ordered, and goes in here. */
const lackingParts = (job: OpenJob, { phase, at, needs }: Operation): readonly Lacking[] => {
  if (phase === 'strip' || job.orders.size === 0) return [];
  return openLines(job).flatMap(({ order, line, standing }) => {
    const component = job.sheet.engine.components.get(line.component ?? '');
    const here = component?.at === at || component?.judgedBy.some((name) => needs.includes(name)) === true;
    return here
      ? [
          {
            says: `${line.says}, order ${order.order}, is not taken in: ${standingWords(standing)}`,
            remedy: 'receive and check it first',
          },
        ]
      : [];
  });
};

/** How one operation stands. */
export const standingOf = (job: OpenJob, operation: Operation): Standing => {
  const signed = job.done.get(operation.name);
  if (signed !== undefined) return { kind: 'done', signed };
  const lacking = [
    ...lackingAgreement(job, operation),
    ...lackingBefore(job, operation),
    ...lackingParts(job, operation),
    ...lackingProof(job, operation),
  ];
  return lacking.length === 0 ? { kind: 'open' } : { kind: 'held', lacking };
};

/** Every operation of the engine type, in its order, with how it stands. */
export const operationsOf = (job: OpenJob): readonly OperationStanding[] =>
  [...job.sheet.engine.operations.values()].map((operation) => ({
    operation,
    standing: standingOf(job, operation),
  }));
