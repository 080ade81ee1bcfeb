/** @module What is tightened again: within the job as it stands, and with the owner after so many hours. */
import { Link } from 'wouter';
import { dueWords, type TightenDue, tightenDue } from '../../job/tighten/due.ts';
import { useJob } from '../journal/use-desk.tsx';
import { addressOfOperation } from '../operation/operation-address.ts';

const standsWords = (due: TightenDue): string => {
  if (due.when === 'after hand-over') return 'tell the owner; it stands in the record';
  switch (due.standing) {
    case 'waits':
      return 'not due yet';
    case 'due':
      return '✕ due now';
    case 'done':
      return '✓ done';
    default:
      return due.standing satisfies never;
  }
};

export const TightenAgain = () => {
  const job = useJob();
  const all = tightenDue(job);
  if (all.length === 0) return null;
  return (
    <section className="part" aria-label="To be tightened again">
      <h2>To be tightened again</h2>
      <ul>
        {all.map((due) => (
          <li key={`${due.fastener.name} ${due.when === 'after hand-over' ? due.hours : due.by}`}>
            {due.when === 'within the job' ? (
              <Link href={addressOfOperation(job, due.by)}>{dueWords(job, due)}</Link>
            ) : (
              dueWords(job, due)
            )}{' '}
            <strong>{standsWords(due)}</strong>
          </li>
        ))}
      </ul>
    </section>
  );
};
