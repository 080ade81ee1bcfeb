/** @module What if it cost otherwise: the prices of a component's options and set-ups, to be typed over. */
import { useState } from 'react';
import { optionWords } from '../../job/planning.ts';
import type { Demands, Option } from '../../plan/plan-model.ts';
import { pricedAt } from '../../plan/what-if.ts';
import { centsText, readCents } from '../../quantity/money.ts';
import { Field } from '../shell/field.tsx';

interface Priced {
  readonly words: string;
  /** Ids of options or the name of a set-up. */
  readonly names: readonly string[];
  readonly cents: number;
}

const pricedOf = (options: readonly Option[]): readonly Priced[] => {
  const parts = [
    ...Map.groupBy(
      options.filter(({ cents }) => cents > 0),
      optionWords,
    ),
  ].map(
    ([words, same]): Priced => ({
      words: same.length > 1 ? `${words}, each` : words,
      names: same.map(({ id }) => id),
      cents: same[0]?.cents ?? 0,
    }),
  );
  const setUps = new Map(options.flatMap(({ setUps: own }) => own.map((each) => [each.name, each])));
  return [
    ...parts,
    ...[...setUps.values()].map(({ name, cents }) => ({ words: `${name}, once`, names: [name], cents })),
  ];
};

const PriceField = ({
  priced,
  asked,
  currency,
  onPrice,
}: {
  readonly priced: Priced;
  readonly asked: number | undefined;
  readonly currency: string;
  readonly onPrice: (cents: number | undefined) => void;
}) => {
  const [typed, setTyped] = useState(centsText(asked ?? priced.cents));
  const [wrong, setWrong] = useState<string>();
  const take = () => {
    const read = readCents(typed);
    setWrong(read.kind === 'refused' ? `${read.refusal.what}: ${read.refusal.remedy}` : undefined);
    if (read.kind === 'refused' || read.value === (asked ?? priced.cents)) return;
    onPrice(read.value === priced.cents ? undefined : read.value);
  };
  return (
    <Field
      numeric
      label={priced.words}
      value={typed}
      onChange={setTyped}
      onLeave={take}
      onEnter={take}
      wrong={wrong}
      hint={`${centsText(priced.cents)} ${currency} as offered`}
    />
  );
};

export const PricesAsked = ({
  options,
  demands,
  currency,
  onDemands,
}: {
  /** Of one component. */
  readonly options: readonly Option[];
  readonly demands: Demands;
  readonly currency: string;
  readonly onDemands: (demands: Demands) => void;
}) => {
  const priced = pricedOf(options);
  if (priced.length === 0) return null;
  return (
    <fieldset>
      <legend>If it cost, {currency}</legend>
      <div className="two-up">
        {priced.map((each) => {
          const asked = demands.prices?.[each.names[0] ?? ''];
          return (
            <PriceField
              key={`${each.words} ${asked ?? 'as offered'}`}
              priced={each}
              asked={asked}
              currency={currency}
              onPrice={(cents) => onDemands(pricedAt(demands, each.names, cents))}
            />
          );
        })}
      </div>
    </fieldset>
  );
};
