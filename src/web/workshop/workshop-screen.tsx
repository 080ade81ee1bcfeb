/** @module The workshop: what stands on its offers, and on what terms it works. */
import { useState } from 'react';
import type { Register } from '../../register/register.ts';
import { Asking } from '../instruments/asking.tsx';
import { useRegister } from '../instruments/register-shelf.ts';
import { Fetched } from '../shell/fetched.tsx';
import { Field } from '../shell/field.tsx';
import { Sheet } from '../shell/sheet.tsx';
import { PairsField } from './pairs-field.tsx';
import { describeRequest, formOf, type WorkshopForm } from './workshop-form.ts';

const Describing = ({ workshop }: { readonly workshop: Register['workshop'] }) => {
  const [form, setForm] = useState(() => formOf(workshop));
  const set = (part: Partial<WorkshopForm>) => setForm({ ...form, ...part });
  return (
    <Asking
      name="The workshop"
      does="Keep this"
      said="Kept; offers made from now on say it."
      request={() => describeRequest(form)}
    >
      <div className="two-up">
        <Field label="Name" value={form.name} onChange={(name) => set({ name })} />
        <Field
          label="Currency"
          value={form.currency}
          onChange={(currency) => set({ currency })}
          hint="Of jobs booked in from now on."
        />
        <Field
          label="Address"
          rows={3}
          value={form.address}
          onChange={(address) => set({ address })}
          hint="As it stands at the head of an offer, line by line."
        />
        <Field
          label="Terms"
          rows={3}
          value={form.terms}
          onChange={(terms) => set({ terms })}
          hint="Paying, parts taken out, guarantee."
        />
        <Field
          numeric
          label="Days an offer holds"
          value={form.validDays}
          onChange={(validDays) => set({ validDays })}
        />
        <Field
          numeric
          label="An hour of labour costs"
          value={form.labourRate}
          onChange={(labourRate) => set({ labourRate })}
          hint="Leave it empty where labour is charged by fixed lines alone."
        />
      </div>
      <PairsField
        legend="Labour that costs the same whatever the plan"
        nameLabel="Work"
        figureLabel="Costs"
        add="Put in a line of labour"
        pairs={form.labour}
        onChange={(labour) => set({ labour })}
      />
      <PairsField
        legend="Taxes, each on the sum before tax"
        nameLabel="Tax"
        figureLabel="Rate in %"
        add="Put in a tax"
        pairs={form.taxes}
        onChange={(taxes) => set({ taxes })}
      />
      <p className="faint">
        A tax is reckoned on the sum of all lines, once, and rounded to the nearest hundredth, half up.
      </p>
    </Asking>
  );
};

const WorkshopScreen = () => {
  const register = useRegister();
  const { workshop } = register.data ?? {};
  return (
    <Sheet heading="The workshop">
      <h1>The workshop</h1>
      <p>
        What stands on its offers. An offer keeps what it was made with: what is changed here holds for the
        next.
      </p>
      <Fetched query={register} what="what the workshop says of itself" />
      {register.data ? <Describing workshop={workshop} /> : null}
      {workshop ? (
        <p className="faint">
          last written by {workshop.by}, {workshop.at.slice(0, 10)}
        </p>
      ) : null}
    </Sheet>
  );
};

export default WorkshopScreen;
