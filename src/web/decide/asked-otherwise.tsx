/** @module What is asked otherwise than when the engine was booked in, and the way back. */
import { Button } from 'react-aria-components';
import { otherwiseThanBooked } from '../../job/asked-of-plan.ts';
import { demandsOf } from '../../job/planning.ts';
import type { Demands, Option } from '../../plan/plan-model.ts';
import { useJob } from '../journal/use-desk.tsx';

export const AskedOtherwise = ({
  options,
  demands,
  onDemands,
}: {
  readonly options: readonly Option[];
  readonly demands: Demands;
  readonly onDemands: (demands: Demands) => void;
}) => {
  const job = useJob();
  const booked = demandsOf(job);
  const otherwise = otherwiseThanBooked(job.sheet.engine, options, booked, demands);
  if (otherwise.length === 0) return <p className="faint">Asked as booked.</p>;
  return (
    <div className="note row" data-otherwise={otherwise.length}>
      <p className="what grow">
        <strong>Otherwise than booked:</strong> {otherwise.join('; ')}. Kept nowhere until a plan is chosen.
        {demands.prices === undefined
          ? ''
          : ' A plan at other prices than those offered cannot be chosen or put into the offer.'}
      </p>
      <Button onPress={() => onDemands(booked)}>Ask as booked again</Button>
    </div>
  );
};
