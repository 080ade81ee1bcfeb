/** @module A place that this job does not open: nothing is asked of it; what is seen of it all the same can be read. */
import type { ReactNode } from 'react';
import { GoFurther } from '../scope/not-opened.tsx';
import { Aside } from '../shell/aside.tsx';

export const ShutPlace = ({
  title,
  children,
}: {
  readonly title: string;
  /** The entry of a reading; none once the journal is closed. */
  readonly children: ReactNode;
}) => (
  <section className="part" aria-label="Not opened">
    <p>
      <strong>The {title} is not opened in this job, and nothing is asked of it.</strong> Where it must be
      looked into, have the owner agree, and go further: then all that it brings with it is asked.
    </p>
    <GoFurther />
    {children === null ? null : <Aside words="Read something here all the same">{children}</Aside>}
  </section>
);
