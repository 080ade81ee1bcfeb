/** @module Valve clearances of a job, position by position: which to set where, what was read, what is next and which way to turn. */
import type { EngineType, Place } from '../engine/engine-type.ts';
import type { ValveSetting } from '../engine/valve-setting.ts';
import { judge } from '../measure/judge.ts';
import type { Verdict } from '../measure/verdict-model.ts';
import { type Millimetres, mm, toDegrees } from '../quantity/brand.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { fewestPositions, type SettingPosition, settingPositions } from '../reckon/valve-clearance-order.ts';
import type { OpenJob } from './job.ts';
import { scopeOf } from './scope.ts';

export interface ValveToSet {
  readonly place: string;
  readonly title: string;
  readonly cylinder: number;
  readonly kind: 'inlet' | 'exhaust';
  readonly characteristic: string;
  readonly clearance?: Millimetres;
  readonly verdict: Verdict;
  /** What to do with the adjuster, where it was read and is not within. */
  readonly adjust?: 'open it' | 'close it';
}

export interface ValvePosition {
  /** The cylinder at the top of its firing stroke. */
  readonly cylinder: number;
  /** Its valves rock there, where there is such a cylinder. */
  readonly rocking?: number;
  /** Degrees of crank from the position before, in running direction; from the last one for the first. */
  readonly turn: number;
  readonly valves: readonly ValveToSet[];
}

export interface ValvesOfJob {
  readonly setting: ValveSetting;
  readonly positions: readonly ValvePosition[];
  /** The first that is not within, in the order in which they are set. */
  readonly next?: ValveToSet;
  readonly within: number;
  readonly of: number;
}

const kinds = ['inlet', 'exhaust'] as const;

/** The cylinder of a place that stands along them, in turn. */
const cylinderOf = (engine: EngineType, { kind, number }: Place): number => {
  const count = engine.placeKinds.get(kind)?.count ?? engine.cylinders;
  return Math.ceil((number * engine.cylinders) / count);
};

const adjustFor = (
  verdict: Verdict,
  value: number | undefined,
  limits: { readonly least?: number; readonly greatest?: number },
): ValveToSet['adjust'] => {
  if (value === undefined || verdict === 'within') return undefined;
  const middle = ((limits.least ?? 0) + (limits.greatest ?? 0)) / 2;
  return value < middle ? 'open it' : 'close it';
};

const valvesOf = (job: OpenJob, setting: ValveSetting): readonly ValveToSet[] => {
  const { engine } = job.sheet;
  const { whole, inQuestion } = scopeOf(job);
  return kinds.flatMap((kind) => {
    const of = engine.characteristics.get(setting[kind]);
    if (of === undefined) return [];
    return [...engine.places.values()]
      .filter((place) => place.kind === of.at && (whole || inQuestion(of.name, place.id)))
      .map((place): ValveToSet => {
        const { value, verdict } = judge(job.sheet, of.name, place.id);
        const adjust = adjustFor(verdict, value?.value, of.limits?.new ?? {});
        return {
          place: place.id,
          title: place.title,
          cylinder: cylinderOf(engine, place),
          kind,
          characteristic: of.name,
          verdict,
          ...(value && { clearance: mm(value.value) }),
          ...(adjust && { adjust }),
        };
      });
  });
};

/** The maker's own order, else the fewest positions by firing order and events. */
const orderOf = (
  { firingOrder }: EngineType,
  { order, events, rest }: ValveSetting,
): readonly SettingPosition[] | undefined =>
  order?.map(({ top, inlet, exhaust }) => ({
    cylinder: top,
    valves: [...inlet.map((each) => `${each} inlet`), ...exhaust.map((each) => `${each} exhaust`)],
  })) ??
  fewestPositions(
    settingPositions(
      firingOrder,
      {
        inletOpensBeforeTop: toDegrees(events.inletOpens),
        inletClosesAfterBottom: toDegrees(events.inletCloses),
        exhaustOpensBeforeBottom: toDegrees(events.exhaustOpens),
        exhaustClosesAfterTop: toDegrees(events.exhaustCloses),
      },
      toDegrees(rest),
    ),
  );

/** Evenly fired: how far the crank runs from one cylinder's firing top to another's. */
const between = (order: readonly number[], from: number, to: number): number => {
  const steps = (order.indexOf(to) - order.indexOf(from) + order.length) % order.length;
  return ((steps === 0 ? order.length : steps) * 720) / order.length;
};

const rockingWith = (order: readonly number[], cylinder: number): number | undefined =>
  order.length % 2 === 0 ? order[(order.indexOf(cylinder) + order.length / 2) % order.length] : undefined;

/**
 * The valve clearances of a job.
 *
 * @returns positions in the order in which the crank is turned to them; lengths in mm, angles in degrees of crank;
 *   undefined where the engine type says nothing of them; refused where no position leaves every valve at rest
 * @source  the maker's own order where the engine type has one; else `fewestPositions`
 */
export const valvesOfJob = (job: OpenJob): Answer<ValvesOfJob> | undefined => {
  const { engine } = job.sheet;
  const setting = engine.valveSetting;
  if (setting === undefined) return undefined;
  const order = orderOf(engine, setting);
  if (order === undefined)
    return refuse(
      'no position of the crank leaves every valve at rest',
      'valve clearances',
      "compare the valves' angles and the crank past closing (`rest`) with the manual",
    );
  const valves = valvesOf(job, setting);
  const positions = order
    .map(({ cylinder, valves: named }, at): ValvePosition => {
      const rocking = rockingWith(engine.firingOrder, cylinder);
      return {
        cylinder,
        ...(rocking !== undefined && { rocking }),
        turn: between(engine.firingOrder, order.at(at - 1)?.cylinder ?? cylinder, cylinder),
        valves: named.flatMap((name) => valves.filter((one) => `${one.cylinder} ${one.kind}` === name)),
      };
    })
    .filter((position) => position.valves.length > 0);
  const inTurn = positions.flatMap((position) => position.valves);
  const next = inTurn.find(({ verdict }) => verdict !== 'within');
  return answer({
    setting,
    positions,
    ...(next && { next }),
    within: inTurn.filter(({ verdict }) => verdict === 'within').length,
    of: inTurn.length,
  });
};
