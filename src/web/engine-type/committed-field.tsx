/** @module A field whose text counts once the hands leave it, or Enter is pressed: half a figure is no figure yet. */
import { useEffect, useState } from 'react';
import { Field, type FieldProps } from '../shell/field.tsx';

export const CommittedField = ({
  value,
  onCommit,
  ...props
}: Omit<FieldProps, 'onChange'> & { readonly onCommit: (value: string) => void }) => {
  const [text, setText] = useState(value);
  useEffect(() => setText(value), [value]);
  const commit = () => {
    if (text.trim() !== value) onCommit(text.trim());
  };
  return <Field {...props} value={text} onChange={setText} onLeave={commit} onEnter={commit} />;
};
