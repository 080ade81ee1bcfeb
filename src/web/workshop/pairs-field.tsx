/** @module A list of names, each with its figure: lines are put in and taken out. */
import { Button } from 'react-aria-components';
import { Field } from '../shell/field.tsx';
import type { Pair } from './workshop-form.ts';

export const PairsField = ({
  legend,
  nameLabel,
  figureLabel,
  add,
  pairs,
  onChange,
}: {
  readonly legend: string;
  readonly nameLabel: string;
  readonly figureLabel: string;
  /** On the button that puts in a line. */
  readonly add: string;
  readonly pairs: readonly Pair[];
  readonly onChange: (pairs: readonly Pair[]) => void;
}) => {
  const change = (key: number, part: Partial<Pair>) =>
    onChange(pairs.map((pair) => (pair.key === key ? { ...pair, ...part } : pair)));
  return (
    <fieldset className="part">
      <legend>
        <strong>{legend}</strong>
      </legend>
      {pairs.map(({ key, name, figure }, at) => (
        <div key={key} className="row">
          <Field
            className="grow"
            label={`${nameLabel} ${at + 1}`}
            value={name}
            onChange={(text) => change(key, { name: text })}
          />
          <Field
            numeric
            label={`${figureLabel} ${at + 1}`}
            value={figure}
            onChange={(text) => change(key, { figure: text })}
          />
          <Button onPress={() => onChange(pairs.filter((pair) => pair.key !== key))}>
            Take out {nameLabel.toLowerCase()} {at + 1}
          </Button>
        </div>
      ))}
      <div>
        <Button
          onPress={() =>
            onChange([
              ...pairs,
              { key: Math.max(0, ...pairs.map(({ key }) => key + 1)), name: '', figure: '' },
            ])
          }
        >
          {add}
        </Button>
      </div>
    </fieldset>
  );
};
