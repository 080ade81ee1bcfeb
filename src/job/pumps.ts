/** @module Shim packs of every pump: needed, as found, chosen from the box, and fitted, with their errors. */
import type { Place } from '../engine/engine-type.ts';
import { type PumpTiming, packNeeded } from '../engine/pump-timing.ts';
import { judge } from '../measure/judge.ts';
import { type Millimetres, mm, type Radians, radians } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { lengthOf } from '../quantity/typed.ts';
import { chooseShims, type PackSet, type ShimPack, type ShimQuestion } from '../reckon/shim-pack.ts';
import { shimsInAll } from './box.ts';
import { cellTitle } from './cell-title.ts';
import type { OpenJob } from './job.ts';
import { scopeOf } from './scope.ts';

/** A pack as it is, against the pack needed; errors are missing as long as the need is not known. */
export interface PackAgainstNeed {
  readonly thickness: Millimetres;
  /** Thickness less needed. */
  readonly error?: Millimetres;
  /** The same as crank angle; positive is early (advanced). */
  readonly timingError?: Radians;
  readonly withinTolerance?: boolean;
}

export interface FittedAgainstNeed extends PackAgainstNeed {
  /** As they were put in. */
  readonly shims: readonly Millimetres[];
}

export interface Pump {
  readonly place: string;
  readonly title: string;
  /** Measured at the timing point. */
  readonly depth?: Millimetres;
  /** By the depth: datum less depth, or depth less datum. */
  readonly needed?: Millimetres;
  readonly found?: PackAgainstNeed;
  /** From the set chosen for all pumps together. */
  readonly chosen?: ShimPack;
  readonly fitted?: FittedAgainstNeed;
  /** What must come first, in words. */
  readonly missing: readonly string[];
}

export interface PumpPacks {
  /** Missing where the engine type times no pumps by shims. */
  readonly timing?: PumpTiming;
  readonly pumps: readonly Pump[];
  /** Packs for all pumps together; refused, with what is missing, until they can be chosen. */
  readonly set: Answer<PackSet>;
}

/** Tolerances and sums of decimals meet to a rounding of the machine: a nanometre. */
const rounding = 1e-6;

const against = (
  timing: PumpTiming,
  thickness: Millimetres,
  needed: Millimetres | undefined,
): PackAgainstNeed => {
  if (needed === undefined) return { thickness };
  const error = mm(thickness - needed);
  const sign = timing.addingShims === 'retards' ? -1 : 1;
  return {
    thickness,
    error,
    timingError: radians(sign * error * timing.rate + 0),
    withinTolerance: Math.abs(error) <= timing.tolerance + rounding,
  };
};

const lengthsOf = (job: OpenJob, place: string): readonly Millimetres[] | undefined =>
  job.packs.get(place)?.shims.flatMap((shim) => {
    const length = lengthOf(shim);
    return length.kind === 'answer' ? [length.value] : [];
  });

const pumpOf = (job: OpenJob, timing: PumpTiming, place: Place): Pump => {
  const { value: depth, missing } = judge(job.sheet, timing.depth, place.id);
  const needed = depth === undefined ? undefined : packNeeded(timing, depth.value);
  const found = timing.found === undefined ? undefined : judge(job.sheet, timing.found, place.id).value;
  const shims = lengthsOf(job, place.id);
  const fitted = shims && {
    shims,
    ...against(timing, mm(shims.reduce((sum, shim) => sum + shim, 0)), needed),
  };
  return {
    place: place.id,
    title: place.title,
    ...(depth && { depth: mm(depth.value) }),
    ...(needed !== undefined && { needed }),
    ...(found && { found: against(timing, mm(found.value), needed) }),
    ...(fitted && { fitted }),
    missing: missing.map((cell) => `read ${cellTitle(job.sheet.engine, cell)}`),
  };
};

const setOf = (job: OpenJob, timing: PumpTiming, pumps: readonly Pump[]): Answer<PackSet> => {
  const missing = pumps.flatMap((pump) => pump.missing);
  const [first] = missing;
  if (first !== undefined)
    return refuse(
      `${missing.length} ${missing.length === 1 ? 'depth is' : 'depths are'} not yet measured`,
      'shim packs',
      first,
    );
  const box = shimsInAll(job);
  if (box.length === 0) return refuse('no shims are counted', 'shim packs', 'count the shims in the box');
  const needs = pumps.flatMap(({ place, needed }) => (needed === undefined ? [] : [{ pump: place, needed }]));
  const { mostShims, rate, addingShims } = timing;
  return chosenFor({ needs, box, mostShims, rate, addingShims });
};

/** The last question and its answer: a job is looked at again and again between two changes to its depths or its box. */
let lastChosen: { readonly key: string; readonly set: Answer<PackSet> } | undefined;

const chosenFor = (question: ShimQuestion): Answer<PackSet> => {
  const key = JSON.stringify(question);
  if (lastChosen?.key !== key) lastChosen = { key, set: chooseShims(question) };
  return lastChosen.set;
};

/** The places of the pumps that are timed by shims in this job: those that come off, or whose depth is to be proved. */
export const pumpPlaces = (job: OpenJob): readonly Place[] => {
  const { pumpTiming: timing, places } = job.sheet.engine;
  if (timing === undefined) return [];
  const { open, inQuestion } = scopeOf(job);
  return [...places.values()].filter(
    ({ kind, id }) => kind === timing.at && (open.has(id) || inQuestion(timing.depth, id)),
  );
};

/** The pumps that are timed by shims, with what is needed, found and fitted; nothing is chosen for them. */
export const pumpsAsFitted = (job: OpenJob): readonly Pump[] => {
  const timing = job.sheet.engine.pumpTiming;
  if (timing === undefined) return [];
  return pumpPlaces(job).map((place) => pumpOf(job, timing, place));
};

/**
 * Shim packs of all pumps of a job.
 *
 * needed = datum dimension less the depth measured at the timing point, or the other way round, zero check of the gauge corrected; packs are
 * chosen from all shims there are for this engine, those already fitted included.
 *
 * @returns lengths in mm, angles in radians, positive early; what is missing in words
 * @source  the pump's manual gives datum, rate and sign; the choice is `chooseShims`
 */
export const pumpPacksOf = (job: OpenJob): PumpPacks => {
  const timing = job.sheet.engine.pumpTiming;
  if (timing === undefined)
    return {
      pumps: [],
      set: refuse('no pump is timed by shims here', 'shim packs', 'nothing is to be done'),
    };
  const pumps = pumpsAsFitted(job);
  const set = setOf(job, timing, pumps);
  if (set.kind === 'refused') return { timing, pumps, set };
  const chosen = new Map(set.value.packs.map((pack) => [pack.pump, pack]));
  return {
    timing,
    set: answer(set.value),
    pumps: pumps.map((pump) => {
      const pack = chosen.get(pump.place);
      return pack === undefined ? pump : { ...pump, chosen: pack };
    }),
  };
};
