/** @module Building: shims counted, packs chosen and fitted, operations signed with their hold points. */
import { useMemo } from 'react';
import { packIsOff, pumpPacksOf } from '../../job/pumps.ts';
import { TagsLink } from '../home/tags-link.tsx';
import { useJob } from '../journal/use-desk.tsx';
import { OperationList, useOperations } from '../operation/operation-list.tsx';
import { OrderPart } from '../order-of-work/order-part.tsx';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { Fittings } from './fitting.tsx';
import { Packs } from './packs.tsx';
import { ShimBox } from './shim-box.tsx';

const phases = ['build'] as const;

export const BuildSheet = () => {
  const job = useJob();
  const operations = useOperations(phases);
  const packs = useMemo(() => pumpPacksOf(job), [job]);
  const next = operations.find(({ standing }) => standing.kind === 'open');
  const lacking = operations.flatMap(({ standing }) => (standing.kind === 'held' ? standing.lacking : []))[0];
  const fitted = packs.pumps.filter(({ fitted: pack }) => pack !== undefined);
  const off = fitted.filter(packIsOff).length;
  const done = operations.filter(({ standing }) => standing.kind === 'done').length;
  return (
    <>
      <ThreeAnswers
        where="putting it together"
        now={
          next
            ? next.operation.title
            : lacking
              ? `${lacking.remedy}: ${lacking.says}`
              : fitted.length < packs.pumps.length
                ? 'fit the shim packs'
                : 'go on to Run'
        }
        right={`${done} of ${operations.length} signed${packs.pumps.length > 0 ? `; ${fitted.length} of ${packs.pumps.length} packs fitted` : ''}${off > 0 ? `, ${off} outside tolerance` : ''}`}
      />
      <Fittings />
      {packs.timing && packs.pumps.length > 0 ? <ShimBox timing={packs.timing} /> : null}
      {packs.pumps.length > 0 ? <Packs packs={packs} /> : null}
      <section className="part" aria-label="Operations">
        <h2>Build order</h2>
        <TagsLink />
        <OperationList operations={operations} />
        <OrderPart phases={phases} />
      </section>
    </>
  );
};
