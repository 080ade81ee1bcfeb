/** @module Options of the plan that are ordered already, and what was ordered that a plan does not use. */
import { optionId } from '../../plan/options.ts';
import { slotsOf } from '../../plan/slot.ts';
import type { OpenJob } from '../job.ts';
import type { Choice } from '../offer.ts';
import { lineOf } from './needed.ts';
import { oneUseLineOf, oneUseNeeded } from './one-use.ts';
import { orderedCount, orderedPlaces } from './ordered.ts';
import { orderedLines } from './standing.ts';

/** By the ids of the options: a set covers all places of its component, a piece the place that it was ordered for. */
export const orderedOptions = (job: Pick<OpenJob, 'sheet' | 'orders'>): readonly string[] =>
  job.orders.size === 0
    ? []
    : job.sheet.engine.offers.flatMap((offer) => {
        const line = lineOf(offer);
        const places = orderedPlaces(job, line);
        const whole = offer.per === 'set' && orderedCount(job, line) > 0;
        return slotsOf(job.sheet.engine)
          .filter((slot) => slot.component.name === offer.component)
          .filter((slot) => whole || slot.places.every(({ id }) => places.has(id)))
          .map((slot) => optionId(slot, offer.does, offer.size, offer.supplier));
      });

/** In words: `main bearing shells: new, 0.25, order O-2 to Ashlar Parts`. What has come and goes back in is used. */
export const orderedUnused = (
  job: Pick<OpenJob, 'sheet' | 'orders' | 'done' | 'scopes'>,
  choices: readonly Pick<Choice, 'slot' | 'option'>[],
): readonly string[] => {
  const { engine } = job.sheet;
  const chosen = new Map(choices.map(({ slot, option }) => [slot, option]));
  const does = (option: string) => option.split(':')[1] ?? '';
  const once = oneUseNeeded(
    job,
    choices.map(({ slot, option }) => ({ slot, does: does(option) })),
  ).map(({ item }) => oneUseLineOf(item));
  return orderedLines(job).flatMap(({ order, line, standing }) => {
    const slots = slotsOf(engine).filter(
      ({ component, places }) =>
        component.name === line.component && places.some(({ id }) => line.places.includes(id)),
    );
    const used =
      line.component === undefined
        ? once.includes(line.line)
        : slots.some((slot) => {
            const option = chosen.get(slot.name) ?? '';
            return (
              (does(option) === 'put back' && standing.kind === 'taken in') ||
              option === optionId(slot, line.does ?? '', line.size ?? '', order.supplier)
            );
          });
    return used ? [] : [`${line.says}, order ${order.order} to ${order.supplier}`];
  });
};
