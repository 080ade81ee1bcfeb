/** @module An engine that wants nothing but gaskets: booked in, and once stripped measured in the middle of its limits and agreed. */

import { bookIn, bringInstruments } from '../../demo/bench-work.ts';
import { instruments } from '../../demo/instruments.ts';
import { type Story, story } from '../../demo/story.ts';
import type { EngineType } from '../../src/engine/engine-type.ts';
import { measuredFor } from '../../src/engine/measured-for.ts';
import { bareFigure, quantityOf } from '../../src/engine/shown-in.ts';
import { cellTitle } from '../../src/job/cell-title.ts';
import type { Request, RequestOf } from '../../src/job/command.ts';
import { decide } from '../../src/job/decide.ts';
import { evolve, replay } from '../../src/job/evolve.ts';
import type { OpenJob } from '../../src/job/job.ts';
import { choosePlan, demandsOf, planQuestionOf } from '../../src/job/planning.ts';
import { type Cell, cellKey } from '../../src/measure/reading.ts';
import { entryOrder } from '../../src/measure/scheme.ts';
import { planEngine } from '../../src/plan/plan.ts';
import { type Answer, refusalText } from '../../src/quantity/refusal.ts';
import { amountOf } from '../../src/quantity/typed.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import type { Store } from '../../src/store/sql-store.ts';
import { planAndAgree } from '../job/partial.ts';
import { workOff } from '../job/work-off.ts';
import { engineText } from './workshop.ts';

/** The engine booked in, its instruments beside it. */
const bookedSound = async (number: string, engineType = engineText): Promise<Story> => {
  const told = story(60, '2026-11-02T08:10:00Z');
  await bookIn(told, './engines/quillfeather-3w.yaml', {
    number,
    engineType,
    owner: 'Long Withy Growers',
    plate: 'QF-0603',
    hoursRun: { text: '2100', unit: 'h' },
    complaint: 'head gasket weeps',
  });
  bringInstruments(
    told,
    instruments.map(({ name }) => name),
  );
  return told;
};

/** Books the engine in; tells the job's id. */
export const bookSound = async (store: Store, number: string): Promise<string> => {
  const told = await bookedSound(number);
  await store.append(told.id, 0, told.events());
  return told.id;
};

/** About the middle of the limits, no two alike: rows that read the same to the last digit look copied. */
const middle = (engine: EngineType, { characteristic }: Cell, at: number): number => {
  const { least, greatest = 0 } = engine.characteristics.get(characteristic)?.limits?.new ?? {};
  // A flatness has no least: nobody reads less than the thinnest feeler that does not go in.
  if (least === undefined) return greatest;
  return (least + greatest) / 2 + ((greatest - least) * (((at * 7) % 11) - 5)) / 60;
};

/** A reading in the middle of the limits, with the finest instrument of the demo that takes it. */
export const readingOf = (engine: EngineType, cell: Cell, at: number): RequestOf<'take reading'> => {
  const known = engine.characteristics.get(cell.characteristic);
  const size = middle(engine, cell, at);
  const within = ({ range }: (typeof instruments)[number]): boolean => {
    const [least, greatest] = [range.least, range.greatest].map((typed) =>
      amountOf(typed, quantityOf(known)),
    ) as [Answer<number>, Answer<number>];
    return (
      least.kind === 'answer' && greatest.kind === 'answer' && least.value <= size && size <= greatest.value
    );
  };
  const fitting = instruments.filter((one) => one.kind === known?.instrument && within(one));
  const [instrument] = fitting.toSorted((a, b) => Number(a.resolution.text) - Number(b.resolution.text));
  if (!instrument) throw new Error(`no instrument of the demo reads ${cell.characteristic}`);
  const { unit, text } = instrument.resolution;
  const typed = { text: bareFigure(size, { unit, decimals: text.split('.')[1]?.length ?? 0 }), unit };
  return { kind: 'take reading', cell, typed, instrument: instrument.name };
};

/** What the sound engine reads in each cell, by its title on the screen. */
export const soundReadings = (engine: EngineType): ReadonlyMap<string, string> =>
  new Map(
    entryOrder(engine).map((cell, at) => [cellTitle(engine, cell), readingOf(engine, cell, at).typed.text]),
  );

/** Asks things of a job in a store, one after another; what is refused is a fault of the test. */
const ask = async (store: Store, id: string, by: string, requests: (job: OpenJob) => readonly Request[]) => {
  const events = await store.readFrom(id, 0);
  let job = replay(events);
  if (job.kind !== 'open') throw new Error(`job ${id} is not open`);
  const before = job.head.sequence;
  const added = [];
  for (const [index, request] of requests(job).entries()) {
    const at = new Date(Date.parse(job.head.event?.at ?? '') + 1000).toISOString();
    const command = { id: `told-${before}-${index}`, job: id, at, actor: by, bench: 'bench 2', request };
    const event = decide(job, command);
    if (event.kind === 'refused') throw new Error(`${request.kind}: ${refusalText(event.refusal)}`);
    added.push(event.value);
    job = evolve(job, event.value);
  }
  await store.append(id, before, added);
};

/** Reads everything that is not read yet, in the middle of its limits; chooses the cheapest plan; the owner agrees. */
export const measureSound = async (store: Store, id: string): Promise<void> => {
  await ask(store, id, 'Pip Ansell', (job) =>
    entryOrder(job.sheet.engine)
      .map((cell, at) => readingOf(job.sheet.engine, cell, at))
      .filter(({ cell }) => !job.sheet.readings.has(cellKey(cell))),
  );
  const job = replay(await store.readFrom(id, 0));
  if (job.kind !== 'open') throw new Error(`job ${id} is not open`);
  const plan = await planEngine(planQuestionOf(job, demandsOf(job)), await highsSolver());
  if (plan.kind !== 'plan') throw new Error(`the sound engine has no plan: ${JSON.stringify(plan)}`);
  await ask(store, id, 'Odo Ferrick', () => [
    choosePlan(plan),
    { kind: 'note agreement', name: 'Long Withy Growers', how: 'by telephone' },
  ]);
};

/** What is read as the engine is set: nobody has read it while it is built. */
const readWhenSet = (engine: EngineType): ReadonlySet<string> =>
  measuredFor(
    engine,
    [...engine.operations.values()].flatMap(({ phase, needs }) =>
      phase === 'set' || phase === 'run' ? needs : [],
    ),
  );

/** An engine that is stripped, measured, agreed and built, nothing on it set; tells the job's id. */
export const buildSound = async (store: Store, number: string, engineType: string): Promise<string> => {
  const told = await bookedSound(number, engineType);
  workOff(told, ['strip']);
  const { engine } = told.job().sheet;
  const later = readWhenSet(engine);
  for (const [at, cell] of entryOrder(engine).entries())
    if (!later.has(cell.characteristic) && !told.job().sheet.readings.has(cellKey(cell)))
      told.tell('Pip Ansell', 1, readingOf(engine, cell, at));
  await planAndAgree(told);
  workOff(told, ['build']);
  await store.append(told.id, 0, told.events());
  return told.id;
};
