/** @module One instrument: how it stands, what to note of it, what is in question by it, and its history. */
import { Link } from 'wouter';
import { typedText } from '../../quantity/typed.ts';
import type { Register, Registered } from '../../register/register.ts';
import { standingInRegister } from '../../register/standing.ts';
import { checkedWords, rangeWords } from '../../register/words.ts';
import { Aside } from '../shell/aside.tsx';
import { Fetched } from '../shell/fetched.tsx';
import { Cell, Sheet } from '../shell/sheet.tsx';
import { CalibrationForm } from './calibration-form.tsx';
import { CheckForm } from './check-form.tsx';
import { History } from './history.tsx';
import { today } from './instrument-address.ts';
import { Questions } from './questions.tsx';
import { useInQuestion, useRegister } from './register-shelf.ts';
import { WithdrawForm } from './withdraw-form.tsx';

const Stands = ({ registered }: { readonly registered: Registered }) => {
  const against = standingInRegister(registered, today()).map(({ says }) => says);
  return (
    <section className="part" aria-label="How it stands">
      <p>{checkedWords(registered)}.</p>
      {against.length === 0 ? <p>✓ Nothing speaks against it.</p> : null}
      {against.map((says) => (
        <p key={says} className="caution">
          <strong>Caution:</strong> it {says}.
        </p>
      ))}
    </section>
  );
};

const Whole = ({
  registered,
  register,
}: {
  readonly registered: Registered;
  readonly register: Register;
}) => {
  const questions = useInQuestion();
  const { instrument, history } = registered;
  const question = questions.data?.find((one) => one.instrument === instrument.name);
  return (
    <>
      <Stands registered={registered} />
      <section className="part" aria-label="Check">
        <h2>Check it</h2>
        <CheckForm instrument={instrument} register={register} />
      </section>
      <Aside words="Note a calibration">
        <CalibrationForm instrument={instrument} />
      </Aside>
      <Aside words={registered.withdrawn ? 'Put it back into use' : 'Withdraw it from use'}>
        <WithdrawForm registered={registered} />
      </Aside>
      {question ? <Questions question={question} /> : null}
      <History history={history} />
    </>
  );
};

const InstrumentScreen = ({ name }: { readonly name: string }) => {
  const register = useRegister();
  const registered = register.data?.instruments.get(name);
  const { instrument } = registered ?? {};
  return (
    <Sheet
      heading={`Instrument ${name}`}
      block={
        instrument ? (
          <>
            <Cell name="kind">{instrument.kind}</Cell>
            <Cell name="range">{rangeWords(instrument)}</Cell>
            <Cell name="reads to">{typedText(instrument.resolution)}</Cell>
            <Cell name="allowed">± {typedText(instrument.permissibleError)}</Cell>
          </>
        ) : undefined
      }
    >
      <div className="row" style={{ justifyContent: 'space-between' }}>
        <h1>{name}</h1>
        <Link href="/instruments" className="button">
          All instruments
        </Link>
      </div>
      <Fetched query={register} what="the register" />
      {register.data && !registered ? <p>No instrument of this number is in the register.</p> : null}
      {register.data && registered ? (
        <Whole key={name} registered={registered} register={register.data} />
      ) : null}
    </Sheet>
  );
};

export default InstrumentScreen;
