/** @module Books in an engine: whose, which, how many hours, why, and how far the owner wants to go. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { v7 } from 'uuid';
import { useLocation } from 'wouter';
import { engineOfJob } from '../../job/engine-of-job.ts';
import { fittingTo } from '../../measure/former.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { slipChancesNow } from '../../register/slip-chance.ts';
import { useRegister } from '../instruments/register-shelf.ts';
import { keeperOf } from '../journal/use-desk.tsx';
import { ReachChoice } from '../scope/reach-choice.tsx';
import { setScope } from '../scope/set-scope.ts';
import { Aside } from '../shell/aside.tsx';
import { Field } from '../shell/field.tsx';
import { addressOf } from '../shell/phases.ts';
import { Refused } from '../shell/refused.tsx';
import { Sheet } from '../shell/sheet.tsx';
import { type BookInForm, blankForm, bookInRequest } from './book-in.ts';
import { bringSlipChances } from './bring-slip-chances.ts';
import { EngineChoice } from './engine-choice.tsx';
import { bringFormer, FormerProposal, useFormers } from './former-proposal.tsx';

const fields: readonly {
  readonly name: Exclude<keyof BookInForm, 'engineType'>;
  readonly label: string;
  readonly hint?: string;
  readonly rows?: number;
}[] = [
  { name: 'number', label: 'Job number' },
  { name: 'owner', label: 'Owner' },
  {
    name: 'plate',
    label: 'Plate or serial number',
    hint: 'As found on the engine; leave empty if there is none.',
  },
  { name: 'hoursRun', label: 'Hours run' },
  { name: 'complaint', label: 'Complaint', hint: "Why it is here, in the owner's words.", rows: 3 },
  {
    name: 'hoursWanted',
    label: 'Hours wanted',
    hint: 'How long it shall run after the overhaul; may stay empty.',
  },
  { name: 'daysWanted', label: 'Days at most', hint: 'May stay empty.' },
  { name: 'currency', label: 'Currency of the prices' },
  { name: 'shop', label: 'Workshop', hint: 'Stands at the head of the record; may stay empty.' },
];

const BookInScreen = () => {
  const [typed, setTyped] = useState<Partial<BookInForm>>({});
  const [source, setSource] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const register = useRegister().data;
  const { workshop } = register ?? {};
  const form: BookInForm = {
    ...blankForm,
    // As the workshop says, until somebody types otherwise.
    ...(workshop && { currency: workshop.currency, shop: workshop.name }),
    ...typed,
  };
  // Asked for when the hands have left the field, not at every letter.
  const [plate, setPlate] = useState('');
  const [picked, setPicked] = useState<string>();
  const { engine } = form.engineType === '' ? { engine: undefined } : engineOfJob(form.engineType);
  const formers = useFormers(engine?.title ?? '', plate);
  const former = picked === undefined ? formers[0] : formers.find(({ number }) => number === picked);
  const [reach, setReach] = useState<readonly string[]>([]);
  const [, go] = useLocation();
  const bookIn = (event: FormEvent) => {
    event.preventDefault();
    const request = bookInRequest(form);
    if (request.kind === 'refused') return setRefusal(request.refusal);
    const job = v7();
    const asked = keeperOf(job).ask(request.value);
    if (asked.kind === 'refused') return setRefusal(asked.refusal);
    if (reach.length > 0) keeperOf(job).ask(setScope.request({ reach, says: 'as booked in' }));
    // Away from the store it begins with the usual ones; they can be brought later.
    const chances = register ? slipChancesNow(register) : [];
    if (chances.length > 0) keeperOf(job).ask(bringSlipChances.request({ chances }));
    if (former && engine) keeperOf(job).ask(bringFormer.request(fittingTo(former, engine)));
    go(addressOf(job, 'strip'));
  };
  return (
    <Sheet heading="Book in an engine">
      <h1>Book in an engine</h1>
      <form className="column" style={{ maxWidth: 900 }} onSubmit={bookIn}>
        <EngineChoice
          text={form.engineType}
          source={source}
          onChange={(engineType, from) => {
            setSource(from);
            setTyped({ ...typed, engineType });
            setReach([]);
          }}
        />
        <div className="two-up">
          {fields.map(({ name, label, hint, rows }) => (
            <Field
              key={name}
              name={name}
              label={label}
              value={form[name]}
              onChange={(value) => setTyped({ ...typed, [name]: value })}
              {...(name === 'plate' ? { onLeave: () => setPlate(form.plate) } : {})}
              {...(hint === undefined ? {} : { hint })}
              {...(rows === undefined ? {} : { rows })}
            />
          ))}
        </div>
        {engine ? (
          <Aside words="Not the whole engine: the top end only, one pump only …">
            <ReachChoice engine={engine} reach={reach} onChange={setReach} />
          </Aside>
        ) : null}
        <FormerProposal formers={formers} chosen={former?.number ?? ''} onChange={setPicked} />
        <Refused refusal={refusal} />
        <div>
          <Button type="submit" className="first">
            Book in
          </Button>
        </div>
      </form>
    </Sheet>
  );
};

export default BookInScreen;
