/** @module Enters an instrument in the register; what is usual for its kind can be filled in. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { instrumentKinds, kindOf } from '../../engine/instrument-kind.ts';
import { usualInstrument } from '../../measure/usual-instrument.ts';
import { type Answer, answer } from '../../quantity/refusal.ts';
import { amountOf, type Typed, typedText } from '../../quantity/typed.ts';
import { unitsOf } from '../../quantity/unit.ts';
import type { RegisterRequest } from '../../register/command.ts';
import { Choice, Field } from '../shell/field.tsx';
import { Asking } from './asking.tsx';
import { typedFigure, typedIfAny } from './typed-figure.ts';

const figures = [
  ['least', 'Range from'],
  ['greatest', 'Range to'],
  ['resolution', 'Reads to'],
  ['permissibleError', 'Permissible error, ±'],
  ['repeatability', 'Repeats within (1 s)'],
] as const;

type Figure = (typeof figures)[number][0] | 'turn';
type Texts = Readonly<Record<Figure, string>>;

const none: Texts = {
  least: '',
  greatest: '',
  resolution: '',
  permissibleError: '',
  repeatability: '',
  turn: '',
};

/** What its standard or common practice gives, where its own figures are not known yet. */
const usual = (kind: string, { least, greatest }: Texts): Partial<Texts> => {
  const top = typedFigure(greatest === '' ? least : greatest, 'mm', 'length', '');
  const size = top.kind === 'answer' ? amountOf(top.value, 'length') : top;
  const one = usualInstrument(kind, '', size.kind === 'answer' ? size.value : undefined);
  return {
    resolution: typedText(one.resolution),
    permissibleError: typedText(one.permissibleError),
    repeatability: typedText(one.repeatability),
    turn: one.turn ? typedText(one.turn) : '',
  };
};

const requestOf = (name: string, kind: string, texts: Texts): Answer<RegisterRequest> => {
  const { measures } = kindOf(kind);
  const unit = unitsOf(measures)[0] ?? '';
  const read: Partial<Record<Figure, Typed>> = {};
  for (const [figure, label] of figures) {
    const typed = typedFigure(texts[figure], unit, measures, label);
    if (typed.kind === 'refused') return typed;
    read[figure] = typed.value;
  }
  const turn = typedIfAny(texts.turn, unit, measures, 'One turn');
  if (turn.kind === 'refused') return turn;
  const { least, greatest, resolution, permissibleError, repeatability } = read;
  if (!least || !greatest || !resolution || !permissibleError || !repeatability)
    throw new Error('every figure was read');
  return answer({
    kind: 'enter instrument',
    instrument: {
      name: name.trim(),
      kind,
      range: { least, greatest },
      resolution,
      permissibleError,
      repeatability,
      ...(turn.value && { turn: turn.value }),
    },
  });
};

export const EnterForm = () => {
  const [name, setName] = useState('');
  const [kind, setKind] = useState(instrumentKinds[0]?.name ?? '');
  const [texts, setTexts] = useState(none);
  const set = (figure: Figure) => (text: string) => setTexts({ ...texts, [figure]: text });
  const { measures } = kindOf(kind);
  return (
    <Asking
      name="Enter an instrument"
      does="Enter it in the register"
      said={`${name.trim()} is in the register.`}
      onDone={() => {
        setName('');
        setTexts(none);
      }}
      request={() => requestOf(name, kind, texts)}
    >
      <div className="row" style={{ alignItems: 'start' }}>
        <Field
          className="grow"
          label="Its number on the bench"
          value={name}
          onChange={setName}
          hint="as it is marked on it, for example mic-50-75; one that is there already gets these figures"
        />
        <Choice
          label="Kind"
          value={kind}
          onChange={setKind}
          of={instrumentKinds.map((one) => ({ value: one.name, words: one.name }))}
        />
      </div>
      <div className="row" style={{ alignItems: 'start' }}>
        {figures.map(([figure, label]) => (
          <Field key={figure} className="grow" label={label} value={texts[figure]} onChange={set(figure)} />
        ))}
        <Field
          className="grow"
          label="One turn"
          value={texts.turn}
          onChange={set('turn')}
          hint="of its thimble or pointer, where it has one"
        />
      </div>
      <div className="row">
        <p className="grow faint">In {unitsOf(measures)[0]} unless you type another unit.</p>
        <Button
          isDisabled={measures !== 'length' || kindOf(kind).master === true}
          onPress={() => setTexts({ ...texts, ...usual(kind, texts) })}
        >
          Fill in what is usual for its kind
        </Button>
      </div>
    </Asking>
  );
};
