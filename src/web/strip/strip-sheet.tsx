/** @module Stripping: what comes off in which order, with its cautions, and what is found on the way. */
import { pumpPlaces } from '../../job/pumps.ts';
import { TagsLink } from '../home/tags-link.tsx';
import { useJob } from '../journal/use-desk.tsx';
import { OperationList, useOperations } from '../operation/operation-list.tsx';
import { OrderPart } from '../order-of-work/order-part.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { Findings } from './findings.tsx';
import { SizesFound } from './sizes-found.tsx';

const phases = ['strip'] as const;

export const StripSheet = () => {
  const job = useJob();
  const operations = useOperations(phases);
  const done = operations.filter(({ standing }) => standing.kind === 'done').length;
  const left = operations.filter(({ standing }) => standing.kind !== 'done');
  // What only lacks an answer or a reading is next as well: its own sheet asks for it.
  const next = left.find(({ standing }) => standing.kind === 'open') ?? left[0];
  return (
    <>
      <ThreeAnswers
        where="taking it apart"
        now={next ? next.operation.title : 'go on to Measure'}
        right={`${done} of ${operations.length} operations signed`}
      />
      <p>
        Write down what is worth knowing as found before it is disturbed: marks, turned shells, loose nuts.
        {pumpPlaces(job).length > 0 ? ' Shim packs as found are entered under Measure.' : ''}
      </p>
      <section className="part" aria-label="Operations">
        <h2>Strip order</h2>
        <TagsLink />
        <OperationList operations={operations} />
        <OrderPart phases={phases} />
      </section>
      <Findings />
      <SizesFound />
    </>
  );
};
