/** @module A labelled field big enough for a gloved hand; what is wrong stands under it in words. */
import { type KeyboardEvent, type ReactNode, type Ref, useId } from 'react';
import { FieldError, Input, Label, Text, TextArea, TextField } from 'react-aria-components';

export interface FieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly hint?: ReactNode;
  /** What is wrong with it, in words. */
  readonly wrong?: string | undefined;
  readonly rows?: number;
  readonly name?: string;
  readonly required?: boolean;
  readonly numeric?: boolean;
  readonly className?: string;
  readonly inputRef?: Ref<HTMLInputElement>;
  /** The hands have left the field. */
  readonly onLeave?: () => void;
  /** Enter was pressed in it; it then does nothing else. */
  readonly onEnter?: () => void;
}

const onEnterOnly = (enter: () => void) => (event: KeyboardEvent) => {
  if (event.key !== 'Enter') return;
  event.preventDefault();
  enter();
};

export const Field = (props: FieldProps) => (
  <TextField
    className={`field ${props.className ?? ''}`}
    value={props.value}
    onChange={props.onChange}
    isInvalid={props.wrong !== undefined}
    validationBehavior="aria"
    {...(props.name === undefined ? {} : { name: props.name })}
    {...(props.required === undefined ? {} : { isRequired: props.required })}
    {...(props.onLeave === undefined ? {} : { onBlur: props.onLeave })}
    {...(props.onEnter === undefined ? {} : { onKeyDown: onEnterOnly(props.onEnter) })}
  >
    <Label>{props.label}</Label>
    {props.rows === undefined ? (
      <Input
        autoComplete="off"
        spellCheck={false}
        {...(props.numeric === true ? { inputMode: 'decimal' as const } : {})}
        {...(props.inputRef === undefined ? {} : { ref: props.inputRef })}
      />
    ) : (
      <TextArea rows={props.rows} />
    )}
    {props.hint === undefined ? null : (
      <Text slot="description" className="hint">
        {props.hint}
      </Text>
    )}
    <FieldError className="wrong">{props.wrong}</FieldError>
  </TextField>
);

/** A choice among few or many, as the platform offers it: works with gloves, keys and readers alike. */
export const Choice = ({
  label,
  value,
  onChange,
  of,
  hint,
}: {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
  readonly of: readonly { readonly value: string; readonly words: string }[];
  readonly hint?: string;
}) => {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value}
        onChange={(event) => onChange(event.target.value)}
        {...(hint === undefined ? {} : { 'aria-describedby': `${id}-hint` })}
      >
        {of.map((one) => (
          <option key={one.value} value={one.value}>
            {one.words}
          </option>
        ))}
      </select>
      {hint === undefined ? null : (
        <span id={`${id}-hint`} className="hint">
          {hint}
        </span>
      )}
    </div>
  );
};
