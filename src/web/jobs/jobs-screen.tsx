/** @module The first sheet: the board: every job in the workshop, what it does next and what it waits for. */
import { Link } from 'wouter';
import { type Board, isOverdue, spentWords, waitingWords } from '../../job/board-line.ts';
import type { JobLine } from '../../job/job-line.ts';
import { leftWords } from '../../work/time-words.ts';
import { Fetched } from '../shell/fetched.tsx';
import { addressOf, phaseNamed } from '../shell/phases.ts';
import { Sheet } from '../shell/sheet.tsx';
import { useJobs } from './workshop-lists.ts';

const addressOfNext = ({ job, phase, board }: JobLine): string => {
  const sheet = addressOf(job, phaseNamed(board.next?.phase ?? phase).slug);
  return board.next?.operation === undefined ? sheet : `${sheet}/${encodeURIComponent(board.next.operation)}`;
};

const Waits = ({ waitsFor, today }: { readonly waitsFor: Board['waitsFor']; readonly today: string }) =>
  waitsFor.length === 0 ? (
    <>nothing</>
  ) : (
    <ul className="waits-for">
      {waitsFor.map((waiting) => (
        <li key={waiting.says} data-overdue={isOverdue(waiting, today)}>
          {waitingWords(waiting, today)}
        </li>
      ))}
    </ul>
  );

const JobRow = ({ listed, today }: { readonly listed: JobLine; readonly today: string }) => {
  const phase = phaseNamed(listed.phase);
  const { next, waitsFor, running, scope } = listed.board;
  return (
    <tr>
      <th scope="row">
        <Link className="button" href={addressOf(listed.job, phase.slug)}>
          {listed.number}
        </Link>
      </th>
      <td>
        {listed.engine}, {listed.plate === '' ? 'no plate' : listed.plate}
        <br />
        <span className="faint">
          {listed.owner}
          {scope === '' ? '' : `; only ${scope}`}
        </span>
      </td>
      <td>
        <strong>{phase.name}</strong>
        <br />
        {next === undefined ? 'nothing is left to do' : <Link href={addressOfNext(listed)}>{next.says}</Link>}
        {running.length === 0 ? null : (
          <>
            <br />
            <span className="faint">at it: {[...new Set(running.map(({ by }) => by))].join(', ')}</span>
          </>
        )}
      </td>
      <td>
        <Waits waitsFor={waitsFor} today={today} />
      </td>
      <td>
        {spentWords(listed.board)}
        <br />
        <span className="faint">{next === undefined ? 'none' : leftWords(listed.board)} left</span>
      </td>
    </tr>
  );
};

export const JobsScreen = () => {
  const jobs = useJobs();
  const today = new Date().toISOString();
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
                <th scope="col">engine and owner</th>
                <th scope="col">does next</th>
                <th scope="col">waits for</th>
                <th scope="col">hours of all hands</th>
              </tr>
            </thead>
            <tbody>
              {jobs.data.map((listed) => (
                <JobRow key={listed.job} listed={listed} today={today} />
              ))}
            </tbody>
          </table>
        </section>
      )}
    </Sheet>
  );
};
