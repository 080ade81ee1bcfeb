/** @module Notes what an instrument showed on its zero or in a master, and says at once whether that is good. */
import { useState } from 'react';
import { kindOf } from '../../engine/instrument-kind.ts';
import type { Instrument } from '../../measure/instrument.ts';
import { answer } from '../../quantity/refusal.ts';
import { typedText } from '../../quantity/typed.ts';
import { deviationOf, withinPermissible } from '../../register/deviation.ts';
import { inUse, type Register } from '../../register/register.ts';
import { Choice, Field } from '../shell/field.tsx';
import { Asking } from './asking.tsx';
import { typedFigure, typedIfAny } from './typed-figure.ts';

const other = 'something else';

const againstWhat = (register: Register, { name }: Instrument) => [
  { value: 'zero', words: 'its own zero' },
  ...inUse(register)
    .filter((one) => one.name !== name)
    .map((one) => ({ value: one.name, words: `${one.name}, ${one.kind}` })),
  { value: other, words: other },
];

export const CheckForm = ({
  instrument,
  register,
}: {
  readonly instrument: Instrument;
  readonly register: Register;
}) => {
  const [against, setAgainst] = useState('zero');
  const [named, setNamed] = useState('');
  const [size, setSize] = useState('');
  const [showed, setShowed] = useState('');
  const [judged, setJudged] = useState('figures');
  const [note, setNote] = useState('');
  const { unit } = instrument.resolution;
  const { measures } = kindOf(instrument.kind);
  const read = typedFigure(showed, unit, measures, 'It showed');
  const held = typedIfAny(size, unit, measures, 'Size of the master');
  const found =
    read.kind === 'answer' && held.kind === 'answer'
      ? { showed: read.value, ...(held.value && { size: held.value }) }
      : undefined;
  const good = found !== undefined && judged === 'figures' && withinPermissible(instrument, found);
  const off = found && deviationOf(found, measures);
  const clear = () => {
    setSize('');
    setShowed('');
    setNote('');
    setJudged('figures');
  };
  return (
    <Asking
      name="Note a check"
      does="Note the check"
      said={`${instrument.name}: check noted.`}
      onDone={clear}
      request={() => {
        if (held.kind === 'refused') return held;
        if (read.kind === 'refused') return read;
        return answer({
          kind: 'check instrument',
          name: instrument.name,
          against: against === other ? named : against,
          showed: read.value,
          ...(held.value && { size: held.value }),
          good,
          note,
        });
      }}
    >
      <Choice
        label="Held against"
        value={against}
        onChange={setAgainst}
        of={againstWhat(register, instrument)}
      />
      {against === other ? (
        <Field label="What it was held against" value={named} onChange={setNamed} />
      ) : null}
      <div className="row" style={{ alignItems: 'start' }}>
        <Field
          className="grow"
          label="It showed"
          value={showed}
          onChange={setShowed}
          hint={`in ${unit} unless you type another unit`}
          numeric
        />
        {against === 'zero' ? null : (
          <Field
            className="grow"
            label="Size of what it was held against"
            value={size}
            onChange={setSize}
            hint="leave empty where it shows only how far off it is"
            numeric
          />
        )}
      </div>
      <p role="status">
        {off
          ? `${typedText(off)} off, allowed ± ${typedText(instrument.permissibleError)}: ${good ? '✓ good' : '✕ not good'}`
          : ''}
      </p>
      <div className="row" style={{ alignItems: 'start' }}>
        <Choice
          label="Judged"
          value={judged}
          onChange={setJudged}
          of={[
            { value: 'figures', words: 'by the figures' },
            { value: 'bad', words: 'not good, for another reason' },
          ]}
        />
        <Field className="grow" label="Note" value={note} onChange={setNote} />
      </div>
    </Asking>
  );
};
