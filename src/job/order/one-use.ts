/** @module Parts that are used but once, as far as this engine needs new ones: spoilt by the strip, or brought by the plan. */
import type { EngineType, OneUse } from '../../engine/engine-type.ts';
import { operandPlace } from '../../measure/expression.ts';
import { slotsOf } from '../../plan/slot.ts';
import type { OpenJob } from '../job.ts';
import type { Choice } from '../offer.ts';
import { scopeOf } from '../scope.ts';
import { strippedOf } from '../stripped.ts';

/** What is decided of a slot, as far as it bears on other parts. */
interface Decided {
  readonly slot: string;
  readonly does: string;
}

/** A choice of a plan, by its slot and option. */
export type Chosen = Pick<Choice, 'slot' | 'option'>;

export const decidedBy = (choices: readonly Chosen[]): readonly Decided[] =>
  choices.map(({ slot, option }) => ({ slot, does: option.split(':')[1] ?? '' }));

export interface OneUseNeeded {
  readonly item: OneUse;
  readonly places: readonly string[];
  readonly count: number;
  /** For all of them, in hundredths. */
  readonly cents: number;
  /** In words: `spoilt by “Lift the head”`, `goes with new liners`. */
  readonly why: readonly string[];
}

/** As it stands on an order. */
export const oneUseLineOf = ({ name }: OneUse): string => `one-use:${name}`;

const placesOfKind = (engine: EngineType, kind: string): readonly string[] =>
  [...engine.places.values()].filter((place) => place.kind === kind).map(({ id }) => id);

/** The item's own places that belong to some places of a part: by number, or all of them. */
const placesWith = (engine: EngineType, item: OneUse, places: readonly string[]): readonly string[] => {
  const own = placesOfKind(engine, item.at);
  return places.flatMap((id) => {
    const place = engine.places.get(id);
    const at = place === undefined ? '' : operandPlace(engine, place, item.at);
    return own.includes(at) ? [at] : own;
  });
};

/**
 * One-use parts that must be had for this engine.
 *
 * @param job      its engine type, and what of the strip is signed
 * @param decided  what the plan does with each slot
 * @returns each item that is needed at all, in the order of the engine type, with its places, count, price and why
 */
export const oneUseNeeded = (
  job: Pick<OpenJob, 'sheet' | 'done' | 'scopes'>,
  decided: readonly Decided[],
): readonly OneUseNeeded[] => {
  const { engine } = job.sheet;
  const stripped = strippedOf(job);
  const { placesAt } = scopeOf(job);
  const slots = slotsOf(engine);
  const renewed = slots.filter(({ name }) =>
    decided.some(({ slot, does }) => slot === name && does !== 'put back'),
  );
  return [...engine.oneUse.values()].flatMap((item) => {
    const spoiling = item.disturbedBy.filter(stripped);
    const bringing = renewed.filter(({ component }) => item.renewedWith.includes(component.name));
    const places = new Set([
      ...spoiling.flatMap((name) => [...placesAt(name, item.at)]),
      ...bringing.flatMap((slot) =>
        placesWith(
          engine,
          item,
          slot.places.map(({ id }) => id),
        ),
      ),
    ]);
    if (places.size === 0) return [];
    const brought = new Set(bringing.map(({ component }) => `goes with ${component.title}`));
    const count = item.each * places.size;
    return [
      {
        item,
        places: [...places],
        count,
        cents: item.cents * count,
        why: [
          ...spoiling.map((name) => `spoilt by “${engine.operations.get(name)?.title ?? name}”`),
          ...brought,
        ],
      },
    ];
  });
};
