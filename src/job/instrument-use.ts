/** @module What was done in a job with instruments, as its journal tells: readings that count, and joints tightened. */

import { kindOf } from '../engine/instrument-kind.ts';
import type { Instrument } from '../measure/instrument.ts';
import { cellKey } from '../measure/reading.ts';
import type { JobUses, Use } from '../register/in-question.ts';
import { cellTitle } from './cell-title.ts';
import type { Fact, JobEvent } from './event.ts';
import type { OpenJob } from './job.ts';
import { jointKey } from './tighten/joint-key.ts';
import { tighteningsOf } from './tighten/tightening.ts';

type Brought = ReadonlyMap<string, { readonly instrument: Instrument; readonly at: string }>;

/** What an instrument was set in, that in turn, and so on; a circle ends where it began. */
const mastersOf = (name: string, brought: Brought): Use['masters'] => {
  const masters: { name: string; at: string }[] = [];
  const seen = new Set([name]);
  let one = brought.get(name);
  while (one?.instrument.setTo && !seen.has(one.instrument.setTo.master)) {
    const { master } = one.instrument.setTo;
    masters.push({ name: master, at: one.at });
    seen.add(master);
    one = brought.get(master);
  }
  return masters;
};

const wrenchesOf = (brought: Brought): readonly string[] =>
  [...brought.values()]
    .filter(({ instrument }) => kindOf(instrument.kind).measures === 'torque')
    .map(({ instrument }) => instrument.name);

/** Where no stage was noted, nobody knows which wrench tightened the joint: each that was at the bench may have. */
const joints = (job: OpenJob, { id, at, actor: by, fact }: JobEvent, brought: Brought): readonly Use[] => {
  const operation =
    fact.kind === 'operation done' ? job.sheet.engine.operations.get(fact.operation) : undefined;
  if (operation === undefined || operation.phase === 'strip') return [];
  if (tighteningsOf(job, operation).some(({ stages }) => stages.some(({ noted }) => noted.length > 0)))
    return [];
  return wrenchesOf(brought).map((instrument) => ({
    id,
    at,
    by,
    instrument,
    masters: mastersOf(instrument, brought),
    where: operation.title,
  }));
};

/** A stage that was pulled with a wrench, as long as its operation was not opened again since. */
const stage = (job: OpenJob, { id, at, actor: by, fact }: JobEvent, brought: Brought): readonly Use[] => {
  if (fact.kind !== 'stage tightened' || fact.wrench === undefined) return [];
  const counts = job.tightened.get(jointKey(fact))?.some((one) => one.at === at && one.stage === fact.stage);
  const { engine } = job.sheet;
  if (counts !== true) return [];
  const { fastener, place, wrench: instrument } = fact;
  const where = `${engine.fasteners.get(fastener)?.title ?? fastener}, ${engine.places.get(place)?.title ?? place}, stage ${fact.stage + 1}`;
  return [{ id, at, by, instrument, masters: mastersOf(instrument, brought), where }];
};

const reading = (
  job: OpenJob,
  { id, at, actor: by }: JobEvent,
  { cell, typed, instrument }: Extract<Fact, { kind: 'reading taken' }>,
  brought: Brought,
): readonly Use[] => {
  const counts = job.sheet.readings.get(cellKey(cell))?.some((one) => one.id === id) ?? false;
  if (!counts) return [];
  const where = cellTitle(job.sheet.engine, cell);
  return [{ id, at, by, instrument, masters: mastersOf(instrument, brought), where, typed }];
};

/** The uses of instruments in a job, oldest first; readings struck out are none. */
export const usesOf = (job: OpenJob, events: readonly JobEvent[]): JobUses => {
  const brought = new Map<string, { instrument: Instrument; at: string }>();
  const uses: Use[] = [];
  for (const event of events) {
    const { fact, at } = event;
    if (fact.kind === 'instrument brought')
      brought.set(fact.instrument.name, { instrument: fact.instrument, at });
    if (fact.kind === 'reading taken') uses.push(...reading(job, event, fact, brought));
    if (fact.kind === 'stage tightened') uses.push(...stage(job, event, brought));
    if (fact.kind === 'operation done') uses.push(...joints(job, event, brought));
  }
  const { number } = job.booked;
  return { job: events[0]?.job ?? '', number, engine: job.sheet.engine.title, uses };
};
