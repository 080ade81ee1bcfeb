/** @module What is asked of the plan: hours, days, money. A change plans anew. */
import { type FormEvent, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Demands } from '../../plan/plan-model.ts';
import { Field } from '../shell/field.tsx';

const text = (value: number | undefined): string => (value === undefined ? '' : String(value));

/** Missing where nothing is asked; NaN where it cannot be read. */
const asked = (typed: string): number | undefined => {
  const bare = typed.trim().replace(',', '.');
  if (bare === '') return undefined;
  return /^\d{1,9}(\.\d{1,2})?$/.test(bare) ? Number(bare) : Number.NaN;
};

export const DemandsForm = ({
  demands,
  currency,
  onDemands,
}: {
  readonly demands: Demands;
  readonly currency: string;
  readonly onDemands: (demands: Demands) => void;
}) => {
  const [hours, setHours] = useState(text(demands.hours));
  const [days, setDays] = useState(text(demands.days));
  const [most, setMost] = useState(text(demands.cents === undefined ? undefined : demands.cents / 100));
  const [wrong, setWrong] = useState<string>();
  const plan = (event: FormEvent) => {
    event.preventDefault();
    const figures = { hours: asked(hours), days: asked(days), most: asked(most) };
    const bad = Object.entries(figures).find(([, value]) => Number.isNaN(value));
    setWrong(
      bad === undefined
        ? undefined
        : `${bad[0] === 'most' ? 'the cost' : bad[0]}: type a number, or leave it empty`,
    );
    if (bad !== undefined) return;
    onDemands({
      ...(figures.hours === undefined ? {} : { hours: figures.hours }),
      ...(figures.days === undefined ? {} : { days: figures.days }),
      ...(figures.most === undefined ? {} : { cents: Math.round(figures.most * 100) }),
      ...(demands.fixed === undefined ? {} : { fixed: demands.fixed }),
    });
  };
  return (
    <form className="row no-print" onSubmit={plan} aria-label="What is asked of the plan">
      <Field className="grow" numeric label="Hours wanted" value={hours} onChange={setHours} wrong={wrong} />
      <Field className="grow" numeric label="Days at most" value={days} onChange={setDays} />
      <Field className="grow" numeric label={`Cost at most, ${currency}`} value={most} onChange={setMost} />
      <Button type="submit">Plan anew</Button>
    </form>
  );
};
