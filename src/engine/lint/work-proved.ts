/** @module What is proved of an engine type's order of work, in whichever order its precedence allows it to be worked. */
import type { EngineType } from '../engine-type.ts';
import type { Finding } from '../finding.ts';
import { coveredProved, hidden } from './covered-proved.ts';
import { fittedAgain } from './fitted-again.ts';
import { oneUseRenewed } from './one-use-renewed.ts';
import { orderOfWork } from './order-of-work.ts';

export interface Proof {
  readonly says: string;
  /** Never where nothing is said that could be proved. */
  readonly proved: boolean;
}

const proof = (count: number, findings: readonly Finding[], holds: string, lacks: string): Proof => {
  if (count === 0) return { says: lacks, proved: false };
  return { says: `${count} ${holds}`, proved: findings.every(({ weight }) => weight !== 'error') };
};

/** @param engine  one that was read without errors; nothing is said of one without operations */
export const workProved = (engine: EngineType): readonly Proof[] => {
  const operations = [...engine.operations.values()];
  if (operations.length === 0) return [];
  const off = new Set(operations.flatMap(({ removes }) => removes));
  const covered = new Set(operations.flatMap(({ covers }) => covers.flatMap((name) => hidden(engine, name))));
  const renewed = new Set(operations.flatMap(({ renews }) => renews));
  return [
    proof(
      operations.length,
      orderOfWork(engine),
      'operations can be worked in an order, strip before build, and none waits for itself',
      '',
    ),
    proof(
      off.size,
      fittedAgain(engine),
      'kinds of part are taken off, and each is fitted again after it came off',
      'no operation says what it takes off, under `removes`',
    ),
    proof(
      covered.size,
      coveredProved(engine),
      'characteristics are covered, and each is asked for by a hold point before its cover',
      'no operation says what it hides, under `covers`',
    ),
    ...(engine.oneUse.size === 0
      ? []
      : [
          proof(
            renewed.size,
            oneUseRenewed(engine),
            'kinds of part are used but once, and each is renewed after what spoils it',
            'no operation says what goes in new with it, under `renews`',
          ),
        ]),
  ];
};
