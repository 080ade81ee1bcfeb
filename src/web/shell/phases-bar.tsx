/** @module The seven sheets of a job as a row to turn to, each with how far it is. */
import { Link } from 'wouter';
import { phasesOf } from '../../job/phase.ts';
import { useJob } from '../journal/use-desk.tsx';
import { addressOf, phaseNamed } from './phases.ts';

export const Phases = ({ slug }: { readonly slug: string }) => {
  const job = useJob();
  return (
    <nav className="phases" aria-label="Phases of the job">
      {phasesOf(job).map(({ name, state, done, of }) => {
        const sheet = phaseNamed(name);
        return (
          <Link
            key={name}
            href={addressOf(job.head.event?.job ?? '', sheet.slug)}
            aria-current={sheet.slug === slug ? 'page' : undefined}
          >
            {name}
            <span className="state">
              {state === 'done' ? '✓ done' : state === 'begun' ? `${done} of ${of}` : 'ahead'}
            </span>
          </Link>
        );
      })}
    </nav>
  );
};
