/** @module The slips that readings are doubted by: what each is, how often it usually happens, and how often here. */
import { Link } from 'wouter';
import { chanceWords, knownSlips, priorsWith } from '../../measure/slips/priors.ts';
import type { KnownSlip } from '../../measure/slips/slip.ts';
import type { Register } from '../../register/register.ts';
import { slipChancesNow } from '../../register/slip-chance.ts';
import { slipChanceWords } from '../../register/words.ts';
import { Aside } from '../shell/aside.tsx';
import { Fetched } from '../shell/fetched.tsx';
import { Sheet } from '../shell/sheet.tsx';
import { useRegister } from './register-shelf.ts';
import { SlipForm } from './slip-form.tsx';

const Row = ({ slip, register }: { readonly slip: KnownSlip; readonly register: Register }) => {
  const here = priorsWith(slipChancesNow(register))[slip.name] ?? 0;
  const history = register.slipChances.filter(({ fact }) => fact.slip === slip.name).toReversed();
  return (
    <tr>
      <th scope="row">{slip.name}</th>
      <td>{slip.says}</td>
      <td>{chanceWords(slip, slip.chance)}</td>
      <td>
        <p>{here === slip.chance ? 'as usual' : <strong>{chanceWords(slip, here)}</strong>}</p>
        {history.map(({ id, fact, by, at }) => (
          <p key={id} className="faint">
            {at.slice(0, 10)}, {by}: {slipChanceWords(fact)}
          </p>
        ))}
        <Aside words={`Change ${slip.name}`}>
          <SlipForm slip={slip} />
        </Aside>
      </td>
    </tr>
  );
};

const SlipsScreen = () => {
  const register = useRegister();
  const { data } = register;
  return (
    <Sheet heading="Slips looked for">
      <div className="row" style={{ justifyContent: 'space-between' }}>
        <h1>Slips looked for</h1>
        <Link href="/instruments" className="button">
          Instruments
        </Link>
      </div>
      <p>
        A reading is doubted by how often each slip happens and by how far the figure lies from what is
        expected. A job goes by the chances that it was booked in with, until they are brought to it anew.
      </p>
      <Fetched query={register} what="the register" />
      {data ? (
        <section className="scroll" aria-label="List of slips">
          <table>
            <thead>
              <tr>
                <th scope="col">slip</th>
                <th scope="col">what it is</th>
                <th scope="col">usually</th>
                <th scope="col">in this shop</th>
              </tr>
            </thead>
            <tbody>
              {knownSlips.map((slip) => (
                <Row key={slip.name} slip={slip} register={data} />
              ))}
            </tbody>
          </table>
        </section>
      ) : null}
    </Sheet>
  );
};

export default SlipsScreen;
