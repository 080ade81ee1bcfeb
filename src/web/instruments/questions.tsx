/** @module What was measured and tightened with an instrument while it may have been wrong, job by job. */
import { Link } from 'wouter';
import { typedText } from '../../quantity/typed.ts';
import type { InstrumentInQuestion } from '../../register/in-question.ts';
import { addressOf } from '../shell/phases.ts';

export const Questions = ({ question }: { readonly question: InstrumentInQuestion }) => (
  <section className="part scroll" aria-label={`In question: ${question.instrument}`}>
    <h2>In question</h2>
    {question.spans.map(({ says }) => (
      <p key={says} className="caution">
        <strong>Caution:</strong> {question.instrument} {says}.
      </p>
    ))}
    <p>
      Measure these places again with an instrument that is good, or calibrate this one: found good, it lifts
      the question.
    </p>
    {question.jobs.map(({ job, number, engine, uses }) => (
      <table key={job}>
        <caption>
          <Link className="button" href={addressOf(job, 'measure')}>
            {number}
          </Link>{' '}
          {engine}: {uses.length} in question
        </caption>
        <thead>
          <tr>
            <th scope="col">what</th>
            <th scope="col" className="number">
              showed
            </th>
            <th scope="col">by</th>
            <th scope="col">when</th>
            <th scope="col">since</th>
          </tr>
        </thead>
        <tbody>
          {uses.map((use) => (
            <tr key={`${use.id} ${use.instrument}`}>
              <th scope="row">{use.where}</th>
              <td className="number figure">{use.typed ? typedText(use.typed) : '—'}</td>
              <td>{use.by}</td>
              <td>{use.at.slice(0, 16).replace('T', ' ')}</td>
              <td>{use.doneAgain ? '✓ done again' : '? in question'}</td>
            </tr>
          ))}
        </tbody>
      </table>
    ))}
  </section>
);
