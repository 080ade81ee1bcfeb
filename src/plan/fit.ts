/** @module How a new or machined part would fit a used one: the clearance predicted before anything is bought. */
import type { Bounds, Characteristic, Component, EngineType, Limits } from '../engine/engine-type.ts';
import { figureText, shownIn } from '../engine/shown-in.ts';
import { sizeInCell } from '../measure/cell-size.ts';
import { operandCells } from '../measure/expression.ts';
import { judgementOfSum } from '../measure/judgement.ts';
import type { Cell } from '../measure/reading.ts';
import { placesOf } from '../measure/scheme.ts';
import { type Uncertain, uncertain } from '../quantity/uncertain.ts';
import { countedOn, usualLifeOf } from './life.ts';
import { type Fit, type Option, sizeWith } from './plan-model.ts';
import type { PlanQuestion } from './question.ts';
import { judgingPlaces, placePairs, type Slot, slotsOf } from './slot.ts';

/** A sum of sizes of two components: a clearance. */
interface Joint {
  readonly sum: Characteristic;
  readonly limits: Limits;
  /** Characteristics measured on each. */
  readonly sides: ReadonlyMap<Component, ReadonlySet<string>>;
}

/** The one component that a characteristic is measured on, where there is just one. */
const partOf = (engine: EngineType, characteristic: string): Component | undefined => {
  const own = [...engine.components.values()].filter(
    ({ judgedBy, sizes }) => sizes?.of === characteristic || judgedBy.includes(characteristic),
  );
  return own.length === 1 ? own[0] : undefined;
};

const jointsOf = (engine: EngineType): readonly Joint[] =>
  [...engine.characteristics.values()].flatMap((sum): readonly Joint[] => {
    const place = placesOf(engine, sum)[0];
    if (!sum.limits || sum.derived?.kind !== 'difference' || !place) return [];
    const sides = new Map<Component, Set<string>>();
    for (const name of new Set(operandCells(sum.derived, place, engine).map((cell) => cell.characteristic))) {
      const part = partOf(engine, name);
      if (!part) return [];
      sides.set(part, (sides.get(part) ?? new Set()).add(name));
    }
    return sides.size === 2 ? [{ sum, limits: sum.limits, sides }] : [];
  });

/** A size as made to a step: anywhere within its limits alike, and of one part the same wherever it is taken. */
const asMade = (engine: EngineType, part: Component, size: string, cell: Cell): Uncertain | undefined => {
  const step =
    part.sizes?.of === cell.characteristic
      ? part.sizes.steps.find(({ name }) => name === size)?.limits.new
      : undefined;
  const standard =
    size === 'standard' ? engine.characteristics.get(cell.characteristic)?.limits?.new : undefined;
  const { least, greatest }: Bounds = step ?? standard ?? {};
  if (least === undefined || greatest === undefined) return undefined;
  const name = `as made ${part.name} ${cell.place} ${cell.characteristic}`;
  // source: JCGM 100:2008, 4.3.7 (rectangular: half the width over √3)
  return uncertain((least + greatest) / 2, name, (greatest - least) / Math.sqrt(12));
};

/** Share of the usual wear that a fit has left: none at its limit, all where it is as in the middle as made. */
const shareLeft = (
  value: number,
  { new: made, goesBack }: Limits,
  wears: Characteristic['wears'],
): number => {
  const limit = wears === 'smaller' ? goesBack.least : goesBack.greatest;
  const middle = ((made.least ?? made.greatest ?? value) + (made.greatest ?? made.least ?? value)) / 2;
  if (limit === undefined || wears === 'either' || limit === middle) return 1;
  return Math.max(0, Math.min(1, (limit - value) / (limit - middle)));
};

interface Predicted {
  readonly hours: number;
  readonly says: string;
}

/** The worst place of a new or machined part against a used one; undefined where it cannot be told. */
const predict = (
  { sheet }: PlanQuestion,
  { sum, limits, sides }: Joint,
  [used, made]: readonly [Slot, Slot],
  size: string,
): Predicted | undefined => {
  const { engine } = sheet;
  const places = placesOf(engine, sum).filter(({ id }) =>
    [used, made].every((slot) => judgingPlaces(engine, slot, sum.at).includes(id)),
  );
  const lives = [...sides.keys()].filter(({ judgedBy }) => judgedBy.includes(sum.name));
  const life = Math.min(
    ...(lives.length > 0 ? lives : [...sides.keys()]).map((part) => countedOn(usualLifeOf(part))),
  );
  let worst: Predicted | undefined;
  for (const place of places) {
    const judged = judgementOfSum(sheet, sum, place, (cell) =>
      sides.get(made.component)?.has(cell.characteristic)
        ? asMade(engine, made.component, size, cell)
        : sizeInCell(sheet, cell),
    );
    if (!judged.value || judged.conformance === undefined) return undefined;
    const likelyOut = judged.conformance < 0.5;
    const hours = likelyOut ? 0 : Math.floor(life * shareLeft(judged.value.value, limits, sum.wears));
    if (worst && hours >= worst.hours) continue;
    const shown = shownIn(sum);
    const { least = Number.NEGATIVE_INFINITY, greatest } = limits.goesBack;
    const limit = judged.value.value < least ? least : greatest;
    const value = figureText(judged.value.value, shown);
    const beyond = limit === undefined ? '' : ` ${figureText(limit, shown)}`;
    worst = {
      hours,
      says: `${made.component.title} ${size} with ${used.component.title} as found: ${sum.title} at ${place.id} ${value} would be ${likelyOut ? `outside${beyond}` : 'within its limits'}`,
    };
  }
  return worst;
};

/** Sizes that must be the same anyway need no second rule. */
const ruledOut = (
  engine: EngineType,
  [a, one]: readonly [Option, Slot],
  [b, other]: readonly [Option, Slot],
): boolean =>
  engine.couplings.some(
    (each) =>
      each.kind === 'same size' &&
      [each.leader, each.follower].includes(a.component) &&
      [each.leader, each.follower].includes(b.component),
  ) && placePairs(engine, one, other).some(([at, there]) => sizeWith(a, at) !== sizeWith(b, there));

/**
 * Options with how they would fit what goes back beside them, where that is barred or shortens their hours.
 *
 * For every clearance between two components of which one goes back as measured and the other comes new or machined:
 * the measured sizes less or more the limits as made of the other, which may lie anywhere in them. Barred where it is
 * likelier outside its limits for going back than within; else the share of the usual wear that is left gives hours.
 *
 * @source  JCGM 100:2008, 4.3.7 and JCGM 106:2012 (probability of conformance); hours: common practice, no source
 */
export const withFits = (question: PlanQuestion, options: readonly Option[]): readonly Option[] => {
  const { engine } = question.sheet;
  const slots = new Map(slotsOf(engine).map((slot) => [slot.name, slot]));
  const fits = new Map<string, Fit[]>();
  for (const joint of jointsOf(engine)) {
    const [one, other] = [...joint.sides.keys()];
    for (const [usedPart, madePart] of [
      [one, other],
      [other, one],
    ]) {
      const kept = new Map<string, Predicted | undefined>();
      for (const back of options) {
        if (back.component !== usedPart?.name || back.does !== 'put back') continue;
        for (const made of options) {
          if (made.component !== madePart?.name || made.does === 'put back') continue;
          const [used, renewed] = [slots.get(back.slot), slots.get(made.slot)];
          if (!used || !renewed || ruledOut(engine, [back, used], [made, renewed])) continue;
          const key = [back.slot, made.slot, made.size].join('|');
          if (!kept.has(key)) kept.set(key, predict(question, joint, [used, renewed], made.size));
          const found = kept.get(key);
          if (!found || found.hours >= Math.min(back.hours, made.hours)) continue;
          fits.set(made.id, [...(fits.get(made.id) ?? []), { with: back.id, ...found }]);
        }
      }
    }
  }
  return options.map((option) => {
    const own = fits.get(option.id);
    return own ? { ...option, fits: own } : option;
  });
};
