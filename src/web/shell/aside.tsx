/** @module Something that is seldom wanted: folded away, and not even made before it is opened. */
import { type ReactNode, useState } from 'react';

export const Aside = ({ words, children }: { readonly words: ReactNode; readonly children: ReactNode }) => {
  const [open, setOpen] = useState(false);
  return (
    <details className="no-print" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{words}</summary>
      {open ? children : null}
    </details>
  );
};
