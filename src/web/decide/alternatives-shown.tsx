/** @module What else could be done for little more than the best plan: a margin, and the plans within it. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import { readCents } from '../../quantity/money.ts';
import { Field } from '../shell/field.tsx';
import type { PlanAsked } from './plan-worker.ts';
import { type PlansPart, PlansTable } from './plans-table.tsx';
import { usePlanning } from './use-planning.ts';
import { Working } from './working.tsx';

export const AlternativesShown = ({ engine, question, currency, shown, onShow }: PlansPart) => {
  const [margin, setMargin] = useState('50');
  const [wrong, setWrong] = useState<string>();
  const [sought, setSought] = useState<PlanAsked>();
  // Once another question is asked, what was found of the last one is no answer.
  const { planning, again } = usePlanning(sought?.question === question ? sought : undefined);
  const seek = (event: FormEvent) => {
    event.preventDefault();
    const read = readCents(margin);
    setWrong(read.kind === 'refused' ? `${read.refusal.what}: ${read.refusal.remedy}` : undefined);
    if (read.kind === 'answer') setSought({ kind: 'alternatives', question, marginCents: read.value });
  };
  const found =
    planning.kind === 'answered' && planning.answer.kind === 'several' ? planning.answer.found : undefined;
  return (
    <section className="part no-print" aria-label="Alternatives">
      <h2>What else could be done for little more</h2>
      <form className="row" onSubmit={seek} aria-label="Margin of the alternatives">
        <Field
          className="grow"
          numeric
          label={`More than the cheapest, at most, ${currency}`}
          value={margin}
          onChange={setMargin}
          wrong={wrong}
        />
        <Button type="submit">Show alternatives</Button>
      </form>
      {planning.kind === 'answered' ? null : (
        <Working planning={planning} what="Looking for alternatives" again={again} />
      )}
      {found?.kind === 'alternatives' ? (
        <>
          <PlansTable
            engine={engine}
            plans={found.plans}
            name="alternative"
            caption="They differ in what is done, not only in who does it"
            currency={currency}
            asked={question.demands}
            shown={shown}
            onShow={onShow}
          />
          {found.more ? <p className="faint">There are more within this margin.</p> : null}
        </>
      ) : null}
    </section>
  );
};
