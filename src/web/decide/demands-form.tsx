/** @module What is asked of the plan: hours, days, money. A change plans anew. */
import { type FormEvent, useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Demands } from '../../plan/plan-model.ts';
import { demanding } from '../../plan/what-if.ts';
import { Field } from '../shell/field.tsx';

const text = (value: number | undefined): string => (value === undefined ? '' : String(value));

/** Missing where nothing is asked; NaN where it cannot be read. */
const asked = (typed: string): number | undefined => {
  const bare = typed.trim().replace(',', '.');
  if (bare === '') return undefined;
  return /^\d{1,9}(\.\d{1,2})?$/.test(bare) ? Number(bare) : Number.NaN;
};

/** What is typed, until the demand is changed elsewhere. */
const useTyped = (value: number | undefined) => {
  const [typed, setTyped] = useState(text(value));
  useEffect(() => setTyped(text(value)), [value]);
  return [typed, setTyped] as const;
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
  const [hours, setHours] = useTyped(demands.hours);
  const [days, setDays] = useTyped(demands.days);
  const [most, setMost] = useTyped(demands.cents === undefined ? undefined : demands.cents / 100);
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
    onDemands(
      demanding(demands, {
        hours: figures.hours,
        days: figures.days,
        cents: figures.most === undefined ? undefined : Math.round(figures.most * 100),
      }),
    );
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
