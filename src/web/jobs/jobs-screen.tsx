/** @module The first sheet: every job in the workshop, where it stands and what comes next. */
import { Link } from 'wouter';
import type { JobLine } from '../../job/job-line.ts';
import { Fetched } from '../shell/fetched.tsx';
import { addressOf, phaseNamed } from '../shell/phases.ts';
import { Sheet } from '../shell/sheet.tsx';
import { useJobs } from './workshop-lists.ts';

const JobRow = ({ listed }: { readonly listed: JobLine }) => {
  const phase = phaseNamed(listed.phase);
  return (
    <tr>
      <th scope="row">
        <Link className="button" href={addressOf(listed.job, phase.slug)}>
          {listed.number}
        </Link>
      </th>
      <td>{listed.engine}</td>
      <td>{listed.owner}</td>
      <td>{listed.plate === '' ? 'no plate' : listed.plate}</td>
      <td>
        <strong>{phase.name}</strong>
        <br />
        <span className="faint">next: {phase.next}</span>
      </td>
      <td className="number figure">{listed.readings}</td>
    </tr>
  );
};

export const JobsScreen = () => {
  const jobs = useJobs();
  return (
    <Sheet heading="Jobs">
      <div className="row" style={{ justifyContent: 'space-between' }}>
        <h1>Jobs in the workshop</h1>
        <div className="row">
          <Link href="/engine-types" className="button">
            Engine types
          </Link>
          <Link href="/workshop" className="button">
            Workshop
          </Link>
          <Link href="/instruments" className="button">
            Instruments
          </Link>
          <Link href="/reckoner" className="button">
            Reckoner
          </Link>
          <Link href="/book-in" className="button first">
            Book in an engine
          </Link>
        </div>
      </div>
      <Fetched
        query={jobs}
        what="the list"
        still="Jobs opened on this bench before still open at their own address."
      />
      {jobs.data === undefined ? null : jobs.data.length === 0 ? (
        <p>No job yet. Book in the first engine.</p>
      ) : (
        <section className="scroll" aria-label="List of jobs">
          <table>
            <thead>
              <tr>
                <th scope="col">job</th>
                <th scope="col">engine</th>
                <th scope="col">owner</th>
                <th scope="col">plate</th>
                <th scope="col">stands at</th>
                <th scope="col" className="number">
                  readings
                </th>
              </tr>
            </thead>
            <tbody>
              {jobs.data.map((listed) => (
                <JobRow key={listed.job} listed={listed} />
              ))}
            </tbody>
          </table>
        </section>
      )}
    </Sheet>
  );
};
