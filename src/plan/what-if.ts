/** @module What if it cost otherwise: options at the prices asked about. */
import type { Demands, Option, SetUp } from './plan-model.ts';

/** Options and their set-ups at other prices, by an option's id or a set-up's name; a price given is no longer one of a quantity. */
export const atPrices = (
  options: readonly Option[],
  prices: NonNullable<Demands['prices']> = {},
): readonly Option[] => {
  const setUp = (each: SetUp): SetUp => ({ ...each, cents: prices[each.name] ?? each.cents });
  return options.map(({ quantity, ...option }) => {
    const cents = prices[option.id];
    return {
      ...option,
      setUps: option.setUps.map(setUp),
      ...(cents === undefined ? quantity && { quantity } : { cents }),
    };
  });
};
