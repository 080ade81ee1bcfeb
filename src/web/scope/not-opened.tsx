/** @module What a job that goes part of the way leaves shut, said plainly at the foot of its sheets, with the way to go further. */
import { Link } from 'wouter';
import { scopeOf } from '../../job/scope.ts';
import { knownInPart, notOpened } from '../../job/scope-words.ts';
import { useJob } from '../journal/use-desk.tsx';
import { addressOf } from '../shell/phases.ts';

/** Where it is set how far the job goes. */
export const GoFurther = () => {
  const job = useJob();
  return job.handedOver ? null : (
    <p className="no-print">
      <Link className="button" href={`${addressOf(job.head.event?.job ?? '', 'book-in')}#how-far`}>
        Go further
      </Link>
    </p>
  );
};

export const NotOpenedWords = () => {
  const job = useJob();
  const [shut, inPart] = [notOpened(job), knownInPart(job)];
  return (
    <>
      {shut.length === 0 ? null : (
        <p>
          Not opened: <strong>{shut.join('; ')}</strong>. Nothing is asked or said of it.
        </p>
      )}
      {inPart.length === 0 ? null : (
        <p>Left shut, and known only by what is read there: {inPart.join('; ')}.</p>
      )}
    </>
  );
};

export const NotOpenedPart = () => {
  const job = useJob();
  if (scopeOf(job).whole) return null;
  return (
    <section className="part" aria-label="Not opened in this job">
      <h2>Not opened in this job</h2>
      <NotOpenedWords />
      <GoFurther />
    </section>
  );
};
