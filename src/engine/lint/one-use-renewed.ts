/** @module Rule: every part used but once is renewed by an operation that builds, after whatever spoils it. */
import type { EngineType, OneUse, Operation } from '../engine-type.ts';
import { doubtful, type Finding, wrong } from '../finding.ts';
import { chooseName } from '../nearest-name.ts';
import { workBefore } from '../work-before.ts';

const never = (engine: EngineType, { name, disturbedBy, renewedWith }: OneUse): Finding => {
  const named = [...engine.operations.values()].flatMap(({ renews }) => renews);
  const spoilt = disturbedBy.length > 0;
  const why = spoilt ? `spoilt by ${disturbedBy.join(', ')}` : `to be new with ${renewedWith.join(', ')}`;
  return wrong(
    ['one-use', name, spoilt ? 'disturbed-by' : 'renewed-with'],
    `${name} is ${why}, and no operation renews it`,
    `put ${name} under the \`renews\` of the operation that fits it: ${chooseName(name, named)}`,
  );
};

/** What may renew a part before that part is spoilt. */
const tooSoon = (engine: EngineType, { name, disturbedBy }: OneUse, by: Operation): readonly Finding[] =>
  disturbedBy
    .filter((spoiling) => !workBefore(engine, by.name).has(spoiling))
    .map((spoiling) =>
      wrong(
        ['operations', by.name, 'renews', by.renews.indexOf(name)],
        `${by.name} may renew ${name} before ${spoiling}, which spoils it`,
        `put ${spoiling}, or what comes after it, in the \`after\` of ${by.name}`,
      ),
    );

const ofOne = (engine: EngineType, item: OneUse): readonly Finding[] => {
  if (item.disturbedBy.length + item.renewedWith.length === 0) return [];
  const by = [...engine.operations.values()].filter(({ renews }) => renews.includes(item.name));
  if (by.length === 0) return [never(engine, item)];
  const sooner = by.map((operation) => tooSoon(engine, item, operation));
  // One that comes after all that spoils it is enough: another may serve where less was taken apart.
  return sooner.some((findings) => findings.length === 0) ? [] : sooner.flat();
};

const inStrip = ({ operations }: EngineType): readonly Finding[] =>
  [...operations.values()].flatMap(({ name, phase, renews }) =>
    phase === 'strip' && renews.length > 0
      ? [
          wrong(
            ['operations', name, 'renews'],
            `${name} takes apart, and is said to renew ${renews.join(', ')}`,
            'put them under the `renews` of the operation that fits them',
          ),
        ]
      : [],
  );

export const oneUseRenewed = (engine: EngineType): readonly Finding[] => {
  if (engine.oneUse.size === 0 || engine.operations.size === 0) return [];
  if ([...engine.operations.values()].every(({ renews }) => renews.length === 0))
    return [
      doubtful(
        ['one-use'],
        'no operation says which parts used but once go in new with it',
        'put each under the `renews` of the operation that fits it',
      ),
    ];
  return [...inStrip(engine), ...[...engine.oneUse.values()].flatMap((item) => ofOne(engine, item))];
};
