/** @module What options come to together: their own prices, what is paid once, what is taken off for quantities. */
import type { Option, SetUp } from './plan-model.ts';

/** What is paid once however many share it, and what is taken off where several are bought together. */
export const besideOptions = (chosen: readonly Option[]): readonly SetUp[] => {
  const setUps = new Map(chosen.flatMap((option) => option.setUps.map((setUp) => [setUp.name, setUp])));
  const bought = Map.groupBy(chosen, ({ quantity }) => quantity?.name);
  return [
    ...setUps.values(),
    ...[...bought.values()].flatMap((together) => {
      const { name, cents } = together[0]?.quantity ?? { name: '', cents: [] };
      const off = cents[together.length] ?? 0;
      return off === 0 ? [] : [{ name: `${name}, ${together.length} together`, cents: off }];
    }),
  ];
};

/** Exact, in hundredths. */
export const centsTogether = (chosen: readonly Option[]): number =>
  [...chosen, ...besideOptions(chosen)].reduce((sum, { cents }) => sum + cents, 0);

/** As a plan lists it: what is paid once is a set-up, what is taken off for a quantity says so itself. */
export const besideWords = ({ name, cents }: SetUp): string => (cents < 0 ? name : `set-up: ${name}`);
