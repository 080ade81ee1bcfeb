/** @module The sheet that every screen is drawn on: frame, title block, body. */
import { type ReactNode, useEffect } from 'react';
import { Link } from 'wouter';
import { SignedOn } from './sign-on.tsx';

/** One cell of the title block. */
export const Cell = ({
  name,
  long = false,
  children,
}: {
  readonly name: string;
  /** Whether it may run over two lines. */
  readonly long?: boolean;
  readonly children: ReactNode;
}) => (
  <dl className={long ? 'long' : 'short'}>
    <dt>{name}</dt>
    <dd>{children}</dd>
  </dl>
);

export const Sheet = ({
  heading,
  block,
  phases,
  children,
}: {
  /** What this sheet is, for the window's title and the heading that readers jump to. */
  readonly heading: string;
  readonly block?: ReactNode;
  readonly phases?: ReactNode;
  readonly children: ReactNode;
}) => {
  useEffect(() => {
    document.title = `${heading} · Endfloat`;
  }, [heading]);
  return (
    <div className="sheet">
      <a className="skip" href="#work">
        Skip to the work
      </a>
      <div className="frame">
        <header className="title-block">
          <Link href="/" className="mark-of-house">
            <img src="/icon.svg" alt="" width="30" height="30" />
            <span>
              Endfloat
              <span className="cell-name">all jobs</span>
            </span>
          </Link>
          {block}
          <SignedOn />
        </header>
        {phases}
        <main id="work" tabIndex={-1} className="body" aria-label={heading}>
          {children}
        </main>
      </div>
    </div>
  );
};
