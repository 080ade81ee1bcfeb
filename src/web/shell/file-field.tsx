/** @module A file to choose, with its label and what may be in it. */
import { type ReactNode, useId } from 'react';

export const FileField = ({
  label,
  accept,
  hint,
  onFile,
}: {
  readonly label: string;
  /** Endings, as the browser's own dialogue takes them: `.yaml,.yml`. */
  readonly accept: string;
  readonly hint?: ReactNode;
  readonly onFile: (file: File) => void;
}) => {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="file"
        accept={accept}
        {...(hint === undefined ? {} : { 'aria-describedby': `${id}-hint` })}
        onChange={(event) => {
          const file = event.target.files?.[0];
          if (file) onFile(file);
        }}
      />
      {hint === undefined ? null : (
        <span id={`${id}-hint`} className="hint">
          {hint}
        </span>
      )}
    </div>
  );
};
