/** @module The register of instruments: each with its range, when it is due, and how it stands today. */
import { Link } from 'wouter';
import type { InstrumentInQuestion } from '../../register/in-question.ts';
import type { Register, Registered } from '../../register/register.ts';
import { standingInRegister } from '../../register/standing.ts';
import { checkedWords, rangeWords } from '../../register/words.ts';
import { Aside } from '../shell/aside.tsx';
import { Fetched } from '../shell/fetched.tsx';
import { Sheet } from '../shell/sheet.tsx';
import { EnterForm } from './enter-form.tsx';
import { instrumentAddress, today } from './instrument-address.ts';
import { useInQuestion, useRegister } from './register-shelf.ts';

const inWords = (question: InstrumentInQuestion): string => {
  const uses = question.jobs.reduce((sum, job) => sum + job.uses.length, 0);
  return `${uses} in question in ${question.jobs.map(({ number }) => number).join(', ')}`;
};

const Row = ({
  registered,
  question,
}: {
  readonly registered: Registered;
  readonly question: InstrumentInQuestion | undefined;
}) => {
  const { instrument } = registered;
  const against = standingInRegister(registered, today()).map(({ says }) => says);
  return (
    <tr>
      <th scope="row">
        <Link className="button" style={{ whiteSpace: 'nowrap' }} href={instrumentAddress(instrument.name)}>
          {instrument.name}
        </Link>
      </th>
      <td>
        {instrument.kind}
        <br />
        <span className="figure">{rangeWords(instrument)}</span>
      </td>
      <td>{checkedWords(registered)}</td>
      <td>
        {against.length === 0 ? '✓ good' : null}
        {against.map((says) => (
          <p key={says}>
            <strong>✕</strong> {says}
          </p>
        ))}
        {question ? (
          <p>
            <strong>?</strong> {inWords(question)}
          </p>
        ) : null}
      </td>
    </tr>
  );
};

const List = ({ register }: { readonly register: Register }) => {
  const questions = useInQuestion();
  const all = [...register.instruments.values()].sort((a, b) =>
    a.instrument.name < b.instrument.name ? -1 : 1,
  );
  if (all.length === 0) return <p>No instrument yet. Enter the first one below.</p>;
  return (
    <section className="scroll" aria-label="List of instruments">
      <table>
        <thead>
          <tr>
            <th scope="col">instrument</th>
            <th scope="col">kind and range</th>
            <th scope="col">known of it</th>
            <th scope="col">stands</th>
          </tr>
        </thead>
        <tbody>
          {all.map((registered) => (
            <Row
              key={registered.instrument.name}
              registered={registered}
              question={questions.data?.find(({ instrument }) => instrument === registered.instrument.name)}
            />
          ))}
        </tbody>
      </table>
    </section>
  );
};

const InstrumentsScreen = () => {
  const register = useRegister();
  return (
    <Sheet heading="Instruments">
      <div className="row" style={{ justifyContent: 'space-between' }}>
        <h1>Instruments of the workshop</h1>
        <Link href="/slips" className="button">
          Slips looked for
        </Link>
      </div>
      <p>
        What each showed when it was checked, when it is due, and what was measured while one may have been
        wrong.
      </p>
      <Fetched query={register} what="the register" />
      {register.data ? <List register={register.data} /> : null}
      <Aside words="Enter an instrument">
        <EnterForm />
      </Aside>
    </Sheet>
  );
};

export default InstrumentsScreen;
