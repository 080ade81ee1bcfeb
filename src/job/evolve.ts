/** @module Folds events into the state of a job. It takes whatever was stored: it never refuses and never throws. */

import type { Trouble } from '../engine/trouble.ts';
import type { Signed } from '../journal/event.ts';
import { type Head, headAt, noHead } from '../journal/head.ts';
import { isSound } from '../measure/decision-rule.ts';
import { withFound } from '../measure/fitted-size.ts';
import { cellKey, type Reading } from '../measure/reading.ts';
import { priorsWith } from '../measure/slips/priors.ts';
import type { Refusal } from '../quantity/refusal.ts';
import { amountOf } from '../quantity/typed.ts';
import { afterAgreement, afterOffer, afterPlan } from './agreement.ts';
import { answerKey } from './asked.ts';
import { engineOfJob } from './engine-of-job.ts';
import type { Fact, JobEvent } from './event.ts';
import type { Booked, Job, OpenJob, WorkLogged } from './job.ts';
import { withNewParts } from './order/new-parts.ts';
import { afterPack } from './pack-after.ts';
import { readAnewAfter, readAnewAt } from './read-anew.ts';
import { afterReopening } from './reopened.ts';
import { stockAfter } from './stock-after.ts';
import { sumKey } from './sum/sum-places.ts';
import { jointKey } from './tighten/joint-key.ts';

export const blankJob: Job = { kind: 'blank', head: noHead };

/** How an entry is added to a map: by copying it, or, in a replay that nobody else sees, in place. */
type Grow = <Value>(map: ReadonlyMap<string, Value>, key: string, value: Value) => ReadonlyMap<string, Value>;
const copied: Grow = (map, key, value) => new Map(map).set(key, value);
// Only on maps that `opened` or `owned` made for this very replay.
const inPlace: Grow = <Value>(map: ReadonlyMap<string, Value>, key: string, value: Value) =>
  (map as Map<string, Value>).set(key, value);

/** The conformance of a rule that makes no sense falls back to the default of ISO 14253-1. */
const soundConformance = (asked: number): number => (asked >= 0.5 && asked < 1 ? asked : 0.95);

const whyUnreadable = (troubles: readonly Trouble[]): Refusal => {
  const worst = troubles.find(({ weight }) => weight === 'error');
  return {
    what: `the engine type of this job cannot be read: ${worst?.what ?? 'it is empty'}`,
    where: worst === undefined ? 'engine type' : `line ${worst.line}, column ${worst.column}`,
    remedy: 'the journal is kept whole; open the job with the Endfloat that wrote it, or a newer one',
  };
};

const opened = (head: Head<Fact>, booked: Booked): Job => {
  const { engine, troubles } = engineOfJob(booked.engineType);
  if (engine === undefined) return { kind: 'unreadable', head, why: whyUnreadable(troubles), booked };
  const hoursRun = amountOf(booked.hoursRun, 'time');
  return {
    kind: 'open',
    head,
    booked,
    sheet: {
      engine,
      instruments: new Map(),
      readings: new Map(),
      sizesFound: new Map(),
      conformance: soundConformance(booked.conformance),
      ...(booked.rule && isSound(booked.rule) && { rule: booked.rule }),
      ...(hoursRun.kind === 'answer' && { hoursRun: hoursRun.value }),
    },
    scopes: [],
    slipChances: [],
    takenBy: new Map(),
    struckOut: [],
    doubtsAnswered: new Map(),
    findings: [],
    pictures: [],
    picturesStruckOut: [],
    shims: [],
    orders: new Map(),
    readBefore: new Map(),
    stock: new Map(),
    assigned: new Map(),
    packs: new Map(),
    packsAtCount: new Map(),
    packsTried: new Map(),
    answers: new Map(),
    sums: new Map(),
    tightened: new Map(),
    done: new Map(),
    reopened: [],
    homing: [],
    workLog: [],
    runLog: [],
    running: [],
    agreedBefore: [],
    offers: [],
  };
};

type Cells = ReadonlyMap<string, readonly Reading[]>;

/** The readings of cells without one of them. */
const without = (cells: Cells, id: string): { readonly left: Cells; readonly reading?: Reading } => {
  for (const [key, taken] of cells) {
    const reading = taken.find((one) => one.id === id);
    if (reading === undefined) continue;
    const rest = taken.filter((one) => one.id !== id);
    const left = new Map(cells);
    if (rest.length === 0) left.delete(key);
    else left.set(key, rest);
    return { left, reading };
  }
  return { left: cells };
};

/** A reading struck out leaves its cell, and is kept beside it. */
const struck = (job: OpenJob, id: string, why: string, signed: Signed): OpenJob => {
  const now = without(job.sheet.readings, id);
  const before = now.reading === undefined ? without(job.readBefore, id) : { left: job.readBefore };
  const reading = now.reading ?? before.reading;
  if (reading === undefined) return job;
  return {
    ...job,
    sheet: { ...job.sheet, readings: now.left },
    readBefore: before.left,
    struckOut: [...job.struckOut, { reading, why, ...signed }],
  };
};

/** A picture struck out is shown no more, and is kept beside those that count. */
const pictureStruck = (job: OpenJob, id: string, why: string, signed: Signed): OpenJob => {
  const picture = job.pictures.find((one) => one.id === id);
  if (picture === undefined) return job;
  return {
    ...job,
    pictures: job.pictures.filter((one) => one !== picture),
    picturesStruckOut: [...job.picturesStruckOut, { picture, why, ...signed }],
  };
};

const taken = (
  job: OpenJob,
  id: string,
  fact: Extract<Fact, { kind: 'reading taken' }>,
  signed: Signed,
  grow: Grow,
): OpenJob => {
  const { kind: _, ...told } = fact;
  const reading: Reading = { id, ...told, on: signed.at.slice(0, 10) };
  const key = cellKey(fact.cell);
  const readings = grow(job.sheet.readings, key, [...(job.sheet.readings.get(key) ?? []), reading]);
  return { ...job, sheet: { ...job.sheet, readings }, takenBy: grow(job.takenBy, id, signed) };
};

const logged = (job: OpenJob, one: WorkLogged): OpenJob => ({ ...job, workLog: [...job.workLog, one] });

/** Reading a journal admits no strange fact; one that came in by another door changes nothing. */
const strange = (job: OpenJob, _: never): OpenJob => job;

const folded = (job: OpenJob, { id, fact, actor, at }: JobEvent, grow: Grow): OpenJob => {
  const signed: Signed = { by: actor, at };
  switch (fact.kind) {
    case 'booked in':
      return job;
    case 'slip chances brought':
      return {
        ...job,
        sheet: { ...job.sheet, priors: priorsWith(fact.chances) },
        slipChances: fact.chances,
      };
    case 'former overhaul brought': {
      const { kind: _, ...former } = fact;
      return { ...job, sheet: { ...job.sheet, former } };
    }
    case 'scope set': {
      const { kind: _, ...told } = fact;
      return { ...job, scopes: [...job.scopes, { ...told, ...signed }] };
    }
    case 'instrument brought': {
      const instruments = grow(job.sheet.instruments, fact.instrument.name, fact.instrument);
      return { ...job, sheet: { ...job.sheet, instruments } };
    }
    case 'reading taken':
      return taken(job, id, fact, signed, grow);
    case 'reading struck out':
      return struck(job, fact.reading, fact.why, signed);
    case 'doubt answered':
      return {
        ...job,
        doubtsAnswered: grow(job.doubtsAnswered, fact.doubt, { why: fact.why, ...signed }),
      };
    case 'size found':
      return { ...job, sheet: withFound(job.sheet, fact) };
    case 'finding noted': {
      const { kind: _, ...told } = fact;
      return { ...job, findings: [...job.findings, { ...told, id, ...signed }] };
    }
    case 'picture taken': {
      const { kind: _, ...told } = fact;
      return { ...job, pictures: [...job.pictures, { ...told, id, ...signed }] };
    }
    case 'picture struck out':
      return pictureStruck(job, fact.picture, fact.why, signed);
    case 'shims counted':
      return { ...job, shims: fact.shims, packsAtCount: new Map(job.packs) };
    case 'plan chosen':
      return afterPlan(job, fact, signed);
    case 'offer made': {
      const { kind: _, ...offer } = fact;
      return afterOffer(job, offer, signed);
    }
    case 'owner agreed': {
      const { kind: _, ...told } = fact;
      return afterAgreement(job, told, signed);
    }
    case 'order placed': {
      const { kind: _, ...told } = fact;
      return { ...job, orders: grow(job.orders, fact.order, { ...told, ...signed, since: [] }) };
    }
    case 'delivery received':
    case 'certificate noted':
    case 'line sent back':
    case 'line accepted': {
      const order = job.orders.get(fact.order);
      if (order === undefined) return job;
      const since = [...order.since, { ...fact, ...signed }];
      return { ...withNewParts(job, order, fact), orders: grow(job.orders, fact.order, { ...order, since }) };
    }
    case 'part measured':
    case 'part set aside':
    case 'parts assigned':
      return stockAfter(job, fact, id, signed);
    case 'pack fitted':
      return afterPack(job, fact, signed);
    case 'ask answered': {
      const { kind: _, ...told } = fact;
      return { ...job, answers: grow(job.answers, answerKey(fact), { ...told, ...signed }) };
    }
    case 'stage tightened': {
      const { kind: _, ...told } = fact;
      const key = jointKey(fact);
      const before = job.tightened.get(key) ?? [];
      return {
        ...readAnewAt(job, fact.operation),
        tightened: grow(job.tightened, key, [...before, { ...told, ...signed }]),
      };
    }
    case 'operation done': {
      const { kind: _, operation, ...told } = fact;
      const done = grow(job.done, operation, { ...told, ...signed });
      return logged({ ...readAnewAfter(job, operation), done }, { kind: 'signed', operation, ...signed });
    }
    case 'work begun':
      return logged(job, { kind: 'begun', operation: fact.operation, ...signed });
    case 'work stopped': {
      const { kind: _, ...told } = fact;
      return logged(job, { kind: 'stopped', ...told, ...signed });
    }
    case 'operation reopened':
      return {
        ...afterReopening(job, fact, signed),
        running: [...job.running, { ...fact, id, ...signed }],
      };
    case 'sum noted': {
      const { kind: _, ...told } = fact;
      const key = sumKey(fact.operation, fact.sum, fact.place);
      return { ...job, sums: grow(job.sums, key, { ...told, ...signed }) };
    }
    case 'part homed':
    case 'part strayed':
    case 'home decided':
      return { ...job, homing: [...job.homing, { ...fact, ...signed }] };
    case 'run step logged': {
      const { kind: _, ...told } = fact;
      return { ...job, runLog: [...job.runLog, { ...told, ...signed }] };
    }
    case 'run step begun':
    case 'run reading taken':
    case 'run reading struck out':
    case 'fault noted':
    case 'fault put right':
      return { ...job, running: [...job.running, { ...fact, id, ...signed }] };
    case 'handed over': {
      const { kind: _, ...told } = fact;
      return { ...job, handedOver: { ...told, ...signed } };
    }
    default:
      return strange(job, fact);
  }
};

const evolved = (job: Job, event: JobEvent, grow: Grow): Job => {
  const head = headAt(event);
  if (job.kind === 'open') return folded({ ...job, head }, event, grow);
  if (job.kind === 'unreadable') return { ...job, head };
  if (event.fact.kind === 'booked in') {
    const { kind: _, ...told } = event.fact;
    return opened(head, { ...told, by: event.actor, at: event.at });
  }
  const why = {
    what: 'the journal does not begin with a booking in',
    where: `event ${event.sequence}`,
    remedy: 'take the journal again from where it was made',
  };
  return { kind: 'unreadable', head, why };
};

/** The job after one more event. */
export const evolve = (job: Job, event: JobEvent): Job => evolved(job, event, copied);

/** The same job with maps of its own. */
const owned = (job: Job): Job =>
  job.kind !== 'open'
    ? job
    : {
        ...job,
        sheet: {
          ...job.sheet,
          instruments: new Map(job.sheet.instruments),
          readings: new Map(job.sheet.readings),
        },
        takenBy: new Map(job.takenBy),
        doubtsAnswered: new Map(job.doubtsAnswered),
        orders: new Map(job.orders),
        answers: new Map(job.answers),
        sums: new Map(job.sums),
        tightened: new Map(job.tightened),
        done: new Map(job.done),
      };

/** The job after several more events; as if they were evolved one by one, and quick with thousands. */
export const evolveAll = (job: Job, events: readonly JobEvent[]): Job => {
  const [first, second] = events;
  if (first === undefined) return job;
  if (second === undefined) return evolve(job, first);
  return events.reduce<Job>((state, event) => evolved(state, event, inPlace), owned(job));
};

/** The job that a whole journal comes to. */
export const replay = (events: readonly JobEvent[]): Job => evolveAll(blankJob, events);
