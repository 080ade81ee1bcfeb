/** @module An operation opened again: it is undone, and with it all that rested on it. */
import { measuredFor } from '../engine/measured-for.ts';
import { workBefore } from '../engine/work-before.ts';
import type { Signed } from '../journal/event.ts';
import type { Cell } from '../measure/reading.ts';
import type { Fact } from './event.ts';
import { homingWithout } from './home/homing.ts';
import type { DoneOperation, OpenJob } from './job.ts';
import { setAside } from './set-aside.ts';

/** Those that were signed and rest on an operation, itself among them, as they were signed. */
export const restingOn = (job: OpenJob, operation: string): ReadonlyMap<string, DoneOperation> =>
  new Map(
    [...job.done].filter(([name]) => name === operation || workBefore(job.sheet.engine, name).has(operation)),
  );

/** What was read after it was signed, to prove an operation that rested on it, was read on what is now apart. */
const readOnIt = (job: OpenJob, operation: string, undone: ReadonlySet<string>): readonly Cell[] => {
  const { engine, readings } = job.sheet;
  const signed = job.done.get(operation)?.at ?? '';
  const proving = measuredFor(
    engine,
    [...undone]
      .filter((name) => name !== operation)
      .flatMap((name) => {
        const { needs = [], asks = [], sums = [] } = engine.operations.get(name) ?? {};
        const given = sums.flatMap((sum) => [...sum.given.values()]);
        return [
          ...needs,
          ...asks.flatMap(({ reads }) => reads ?? []),
          ...given.flatMap((source) =>
            source.kind === 'characteristic' || source.kind === 'list' ? source.name : [],
          ),
        ];
      }),
  );
  return [...readings.values()].flatMap((taken) => {
    const last = taken.at(-1);
    if (last === undefined || !proving.has(last.cell.characteristic)) return [];
    return (job.takenBy.get(last.id)?.at ?? '') > signed ? [last.cell] : [];
  });
};

const without = <Value>(
  map: ReadonlyMap<string, Value>,
  dropped: (value: Value, key: string) => boolean,
): ReadonlyMap<string, Value> => new Map([...map].filter(([key, value]) => !dropped(value, key)));

/** The job after an operation was opened again. */
export const afterReopening = (
  job: OpenJob,
  { operation, why }: Extract<Fact, { kind: 'operation reopened' }>,
  signed: Signed,
): OpenJob => {
  const undone = restingOn(job, operation);
  const names = new Set(undone.keys());
  const keys = readOnIt(job, operation, names);
  const of = (one: { readonly operation: string }) => names.has(one.operation);
  return {
    ...setAside(job, keys),
    answers: without(job.answers, of),
    sums: without(job.sums, of),
    tightened: without(job.tightened, ([first]) => first !== undefined && of(first)),
    homing: homingWithout(job.sheet.engine, job.homing, names),
    done: without(job.done, (_, name) => names.has(name)),
    reopened: [...job.reopened, { operation, why, undone, ...signed }],
  };
};
