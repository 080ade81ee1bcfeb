/** @module What is asked of a plan, each in words and with what is asked once it is let go; and what differs from the booking. */
import type { EngineType } from '../engine/engine-type.ts';
import { costDemand, daysDemand, fixedDemand, hoursDemand, withoutDemand } from '../plan/demand-rows.ts';
import type { Demands, Option } from '../plan/plan-model.ts';
import { slotsOf } from '../plan/slot.ts';
import { demanding, fixedTo, leavingOut, pricedAt } from '../plan/what-if.ts';
import { formatFigure } from '../quantity/figure.ts';
import { centsText } from '../quantity/money.ts';
import { optionWords } from './planning.ts';

export interface AskedOfPlan {
  readonly says: string;
  /** As a conflict names it; a price has a part in none under its own name. */
  readonly stands: string;
  readonly lettingGo: Demands;
}

const figure = (value: number): string => formatFigure(value, Number.isInteger(value) ? 0 : 1);

const slotTitle = (engine: EngineType, slot: string): string =>
  slotsOf(engine).find(({ name }) => name === slot)?.title ?? slot;

/** Options that are alike but for their place have one price in words. */
const priceWords = (
  engine: EngineType,
  options: readonly Option[],
  demands: Demands,
): readonly AskedOfPlan[] => {
  const byWords = Map.groupBy(Object.entries(demands.prices ?? {}), ([name, cents]) => {
    const option = options.find(({ id }) => id === name);
    const setUp = options.flatMap(({ setUps }) => setUps).find((each) => each.name === name);
    const what = option
      ? `${engine.components.get(option.component)?.title ?? option.component}: ${optionWords(option)}`
      : name;
    const own = option?.cents ?? setUp?.cents;
    return `${what} at ${centsText(cents)}${own === undefined ? '' : ` instead of ${centsText(own)}`}`;
  });
  return [...byWords].map(([says, entries]) => ({
    says,
    stands: says,
    lettingGo: pricedAt(
      demands,
      entries.map(([name]) => name),
      undefined,
    ),
  }));
};

/**
 * @param options  that are open, at their own prices: for the words of what is fixed or priced
 */
export const askedOfPlan = (
  engine: EngineType,
  options: readonly Option[],
  demands: Demands,
): readonly AskedOfPlan[] => {
  const { hours, days, cents, fixed = {}, withoutSuppliers = [] } = demands;
  const fixedWords = (id: string): string => {
    const option = options.find((each) => each.id === id);
    return option ? optionWords(option) : `${id} (not open)`;
  };
  return [
    ...(hours === undefined
      ? []
      : [
          {
            says: `${figure(hours)} h wanted`,
            stands: hoursDemand(hours),
            lettingGo: demanding(demands, { hours: undefined }),
          },
        ]),
    ...(days === undefined
      ? []
      : [
          {
            says: `ready in ${figure(days)} days`,
            stands: daysDemand(days),
            lettingGo: demanding(demands, { days: undefined }),
          },
        ]),
    ...(cents === undefined
      ? []
      : [
          {
            says: `cost at most ${centsText(cents)}`,
            stands: costDemand(cents),
            lettingGo: demanding(demands, { cents: undefined }),
          },
        ]),
    ...withoutSuppliers.map((supplier) => ({
      says: `nothing from ${supplier}`,
      stands: withoutDemand(supplier),
      lettingGo: leavingOut(demands, supplier, false),
    })),
    ...Object.entries(fixed).map(([slot, id]) => ({
      says: `${slotTitle(engine, slot)}: ${fixedWords(id)}`,
      stands: fixedDemand(id),
      lettingGo: fixedTo(demands, { [slot]: undefined }),
    })),
    ...priceWords(engine, options, demands),
  ];
};

/** What is asked otherwise than as booked: what came to it, and what is no longer asked. */
export const otherwiseThanBooked = (
  engine: EngineType,
  options: readonly Option[],
  booked: Demands,
  demands: Demands,
): readonly string[] => {
  const before = askedOfPlan(engine, options, booked);
  const now = askedOfPlan(engine, options, demands);
  const isIn = (one: AskedOfPlan, list: readonly AskedOfPlan[]) =>
    list.some(({ stands }) => stands === one.stands);
  return [
    ...now.filter((one) => !isIn(one, before)).map(({ says }) => says),
    ...before.filter((one) => !isIn(one, now)).map(({ says }) => `no longer asked: ${says}`),
  ];
};
