/** @module Who gave the owner's word, and how: asked alike for a plan and for an offer. */
import { Field } from '../shell/field.tsx';

export interface Word {
  readonly name: string;
  readonly how: string;
}

export const WhoAndHow = ({
  word,
  onWord,
}: {
  readonly word: Word;
  readonly onWord: (word: Word) => void;
}) => (
  <>
    <Field
      className="grow"
      label="Who agreed"
      value={word.name}
      onChange={(name) => onWord({ ...word, name })}
    />
    <Field
      className="grow"
      label="How"
      value={word.how}
      onChange={(how) => onWord({ ...word, how })}
      hint="by telephone, in writing, at the bench"
    />
  </>
);
