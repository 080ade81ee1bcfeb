/** @module One number at a time, in large print: what it is of, what is expected, what is wrong; Enter takes it. */
import { type FormEvent, type ReactNode, type RefObject, useId } from 'react';

export const OneNumber = ({
  label,
  hint,
  text,
  onText,
  wrong,
  button,
  onTake,
  inputRef,
  disabled = false,
}: {
  readonly label: string;
  readonly hint: ReactNode;
  readonly text: string;
  readonly onText: (text: string) => void;
  readonly wrong: string | undefined;
  readonly button: string;
  readonly onTake: (event: FormEvent) => void;
  readonly inputRef: RefObject<HTMLInputElement | null>;
  readonly disabled?: boolean;
}) => {
  const id = useId();
  return (
    <form onSubmit={onTake} className="row">
      <div className="field grow big">
        <label htmlFor={id}>{label}</label>
        <input
          id={id}
          ref={inputRef}
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          value={text}
          disabled={disabled}
          aria-invalid={wrong !== undefined}
          aria-describedby={`${id}-hint ${id}-wrong`}
          onChange={(event) => onText(event.target.value)}
        />
        <span id={`${id}-hint`} className="hint">
          {hint}
        </span>
        <span id={`${id}-wrong`} role="alert" className={wrong === undefined ? '' : 'wrong'}>
          {wrong}
        </span>
      </div>
      <button type="submit" className="first" disabled={disabled}>
        {button}
      </button>
    </form>
  );
};
