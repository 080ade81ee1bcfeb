/** @module The three things a screen always says: where am I on the engine, what do I do now, is it right. */
import type { ReactNode } from 'react';

export const ThreeAnswers = ({
  where,
  now,
  right,
}: {
  readonly where: ReactNode;
  readonly now: ReactNode;
  readonly right: ReactNode;
}) => (
  <dl className="three">
    <div>
      <dt>Where am I</dt>
      <dd>{where}</dd>
    </div>
    <div>
      <dt>What now</dt>
      <dd>{now}</dd>
    </div>
    <div>
      <dt>Is it right</dt>
      <dd>{right}</dd>
    </div>
  </dl>
);
