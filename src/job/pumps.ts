/** @module Shim packs of every pump: needed, as found, chosen from the box, fitted and checked, with their errors. */
import type { Place } from '../engine/engine-type.ts';
import { type PumpTiming, packNeeded } from '../engine/pump-timing.ts';
import { judge } from '../measure/judge.ts';
import { type Millimetres, mm } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { lengthOf } from '../quantity/typed.ts';
import { chooseShims, type PackSet, type ShimPack, type ShimQuestion } from '../reckon/shim-pack.ts';
import { shimsInAll } from './box.ts';
import { cellTitle } from './cell-title.ts';
import type { AnsweredAsk, OpenJob } from './job.ts';
import { type PackAgainstNeed, packAgainst } from './pack-against.ts';
import { type Beyond, beyondRange } from './pack-beyond.ts';
import { type Checked, checkedOf } from './pack-correction.ts';
import { packLost } from './pack-lost.ts';
import { scopeOf } from './scope.ts';
import { type PumpCheck, spillCheck, thicknessOf } from './spill-check.ts';

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
  /** Why it could not be measured as found, and who said so. */
  readonly lost?: AnsweredAsk;
  /** Where the pack needed is none that the pump is made to take. */
  readonly beyond?: Beyond;
  /** From the set chosen for all pumps together. */
  readonly chosen?: ShimPack;
  readonly fitted?: FittedAgainstNeed;
  /** By the second spill, since the pack was fitted. */
  readonly check?: PumpCheck;
  /** From the packs that put right what the second spill showed. */
  readonly putRight?: ShimPack;
  /** What must come first, in words. */
  readonly missing: readonly string[];
}

export interface PumpPacks {
  /** Missing where the engine type times no pumps by shims. */
  readonly timing?: PumpTiming;
  readonly pumps: readonly Pump[];
  /** Packs for all pumps together; refused, with what is missing, until they can be chosen. */
  readonly set: Answer<PackSet>;
  /** The second checks together; missing where the engine type asks for none. */
  readonly checked?: Checked;
}

const fittedOf = (
  job: OpenJob,
  timing: PumpTiming,
  place: string,
  needed: Millimetres | undefined,
): FittedAgainstNeed | undefined => {
  const pack = job.packs.get(place);
  if (pack === undefined) return undefined;
  const shims = pack.shims.flatMap((shim) => {
    const length = lengthOf(shim);
    return length.kind === 'answer' ? [length.value] : [];
  });
  return { shims, ...packAgainst(timing, thicknessOf(pack.shims), needed) };
};

const pumpOf = (job: OpenJob, timing: PumpTiming, place: Place): Pump => {
  const { value: depth, missing } = judge(job.sheet, timing.depth, place.id);
  const needed = depth === undefined ? undefined : packNeeded(timing, depth.value);
  const found = timing.found === undefined ? undefined : judge(job.sheet, timing.found, place.id).value;
  const lost = packLost(job, place.id);
  const fitted = fittedOf(job, timing, place.id, needed);
  const check = spillCheck(job, timing, place.id);
  return {
    place: place.id,
    title: place.title,
    ...(depth && { depth: mm(depth.value) }),
    ...(needed !== undefined && { needed }),
    ...(found && { found: packAgainst(timing, mm(found.value), needed) }),
    ...(lost && { lost }),
    ...(fitted && { fitted }),
    ...(check && { check }),
    missing: missing.map((cell) => `read ${cellTitle(job.sheet.engine, cell)}`),
  };
};

/**
 * Whether a pump runs on a pack that is further off than the manual lets it be. Its depth says so only until its timing
 * is proved: a pump that spills where it should has the right pack, whatever its pad and tappet measured.
 */
export const packIsOff = ({ fitted, check }: Pick<Pump, 'fitted' | 'check'>): boolean =>
  fitted?.withinTolerance === false && check?.verdict !== 'within';

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

/** The pumps that are timed by shims, with what is needed, found, fitted and checked; nothing is chosen for them. */
export const pumpsAsFitted = (job: OpenJob): readonly Pump[] => {
  const timing = job.sheet.engine.pumpTiming;
  if (timing === undefined) return [];
  const pumps = pumpPlaces(job).map((place) => pumpOf(job, timing, place));
  const needed = pumps.flatMap(({ place, needed: pack }) =>
    pack === undefined ? [] : [[place, pack] as const],
  );
  const beyond = beyondRange(job, timing, new Map(needed));
  return pumps.map((pump) => {
    const out = beyond.get(pump.place);
    return out === undefined ? pump : { ...pump, beyond: out };
  });
};

const checkOf = (job: OpenJob, timing: PumpTiming, pumps: readonly Pump[]): Checked | undefined =>
  timing.check &&
  checkedOf(
    job,
    timing,
    pumps.flatMap(({ place, title, fitted, check }) =>
      fitted && check ? [{ place, title, thickness: fitted.thickness, check }] : [],
    ),
    pumps.length,
  );

const packsByPump = (set: Answer<PackSet> | undefined): ReadonlyMap<string, ShimPack> =>
  new Map(set?.kind === 'answer' ? set.value.packs.map((pack) => [pack.pump, pack] as const) : []);

/**
 * Shim packs of all pumps of a job.
 *
 * needed = datum dimension less the depth measured at the timing point, or the other way round, zero check of the gauge
 * corrected; packs are chosen from all shims there are for this engine, those already fitted included. What the second
 * spill shows off is put right pump by pump, from the box and what comes out.
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
  const checked = checkOf(job, timing, pumps);
  const [chosen, right] = [packsByPump(set), packsByPump(checked?.putRight)];
  return {
    timing,
    set: set.kind === 'refused' ? set : answer(set.value),
    ...(checked && { checked }),
    pumps: pumps.map((pump) => {
      const [pack, other] = [chosen.get(pump.place), right.get(pump.place)];
      return { ...pump, ...(pack && { chosen: pack }), ...(other && { putRight: other }) };
    }),
  };
};
