/** @module For each place of a component, or all of it, a choice of what is done: one of its options, or free. */
import type { EngineType } from '../../engine/engine-type.ts';
import { optionWords } from '../../job/planning.ts';
import type { Demands, Option } from '../../plan/plan-model.ts';
import { fixedTo } from '../../plan/what-if.ts';
import { Choice } from '../shell/field.tsx';
import { amount, hoursText, slotWords } from './plan-words.ts';

const free = { value: '', words: 'free: the plan decides' };

const figures = ({ cents, days, hours }: Option): string =>
  `${cents === 0 ? '' : `${amount(cents)}, `}${days} days, ${hoursText(hours)}`;

export const FixedChoices = ({
  engine,
  options,
  demands,
  onDemands,
}: {
  readonly engine: EngineType;
  /** Of one component. */
  readonly options: readonly Option[];
  readonly demands: Demands;
  readonly onDemands: (demands: Demands) => void;
}) => {
  const bySlot = Map.groupBy(options, ({ slot }) => slot);
  const fixed = (slot: string): string => demands.fixed?.[slot] ?? '';
  /** What every place has on offer. */
  const everywhere = [...Map.groupBy(options, optionWords)].filter(([, same]) => same.length === bySlot.size);
  const allAlike = everywhere.find(([, same]) => same.every(({ slot, id }) => fixed(slot) === id))?.[0] ?? '';
  const fixAll = (words: string) => {
    const same = everywhere.find(([name]) => name === words)?.[1] ?? [];
    const freed = Object.fromEntries([...bySlot.keys()].map((slot) => [slot, undefined]));
    onDemands(fixedTo(demands, { ...freed, ...Object.fromEntries(same.map(({ slot, id }) => [slot, id])) }));
  };
  return (
    <div className="two-up">
      {bySlot.size > 1 ? (
        <Choice
          label="All places alike"
          value={allAlike}
          onChange={fixAll}
          of={[
            { value: '', words: 'free, or each by itself' },
            ...everywhere.map(([words]) => ({ value: words, words })),
          ]}
        />
      ) : null}
      {[...bySlot].map(([slot, own]) => (
        <Choice
          key={slot}
          label={slotWords(engine, slot)}
          value={fixed(slot)}
          onChange={(id) => onDemands(fixedTo(demands, { [slot]: id === '' ? undefined : id }))}
          of={[
            free,
            ...own.map((option) => ({
              value: option.id,
              words: `${optionWords(option)} (${figures(option)})`,
            })),
          ]}
        />
      ))}
    </div>
  );
};
