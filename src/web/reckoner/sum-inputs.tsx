/** @module What a sum asks for, one field an input; what is wrong with one stands under it. */
import type { Refusal } from '../../quantity/refusal.ts';
import type { Input, Reckoning } from '../../reckon/reckoning.ts';
import { Choice, Field } from '../shell/field.tsx';

/** Words under the field: what is sensible, and what is taken when nothing is typed. */
const hintOf = ({ range, example, unlessGiven, optional }: Input): string => {
  const empty =
    unlessGiven !== undefined ? `; left empty: ${unlessGiven}` : optional ? '; may be left empty' : '';
  return `${range}; for example ${example}${empty}`;
};

/** A refusal names the inputs that it is about: `rod`, `rod=98`, `least, greatest`. */
const isAbout = ({ where }: Refusal, key: string): boolean =>
  where.split(/,\s*/).some((part) => part === key || part.startsWith(`${key}=`));

const SumInput = ({
  input,
  text,
  refusal,
  onText,
}: {
  readonly input: Input;
  readonly text: string;
  readonly refusal: Refusal | undefined;
  readonly onText: (text: string) => void;
}) => {
  if (input.kind === 'text' && input.oneOf !== undefined) {
    const choices = input.oneOf.map((value) => ({ value, words: value }));
    const nothing = { value: '', words: input.unlessGiven ?? 'not said yet' };
    return (
      <Choice
        label={input.title}
        value={text}
        onChange={onText}
        of={[nothing, ...choices]}
        hint={input.range}
      />
    );
  }
  const wrong = refusal && isAbout(refusal, input.key) ? `${refusal.what}: ${refusal.remedy}` : undefined;
  return (
    <Field
      label={input.title}
      name={input.key}
      value={text}
      onChange={onText}
      hint={hintOf(input)}
      wrong={wrong}
      {...(input.kind === 'text' && input.example.length > 40 ? { rows: 3 } : {})}
    />
  );
};

export const SumInputs = ({
  reckoning,
  texts,
  refusal,
  onText,
  label = 'What is given',
  asks = () => true,
}: {
  readonly reckoning: Reckoning;
  readonly texts: Readonly<Record<string, string>>;
  readonly refusal: Refusal | undefined;
  readonly onText: (key: string, text: string) => void;
  readonly label?: string;
  /** Which of them are shown. */
  readonly asks?: (key: string) => boolean;
}) => (
  <form aria-label={label} onSubmit={(event) => event.preventDefault()}>
    {reckoning.inputs
      .filter(({ key }) => asks(key))
      .map((input) => (
        <SumInput
          key={input.key}
          input={input}
          text={texts[input.key] ?? ''}
          refusal={refusal}
          onText={(text) => onText(input.key, text)}
        />
      ))}
  </form>
);
