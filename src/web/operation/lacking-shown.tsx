/** @module What an operation lacks, one line each, with a way to where it is put right. */
import { Button } from 'react-aria-components';
import { useLocation } from 'wouter';
import type { Operation } from '../../engine/engine-type.ts';
import type { GoTo, Lacking } from '../../job/hold/lacking.ts';
import type { OpenJob } from '../../job/job.ts';
import { useJob } from '../journal/use-desk.tsx';
import type { SentFrom } from '../shell/back-to.tsx';
import { addressOf } from '../shell/phases.ts';
import { useStanding } from '../shell/standing-on.ts';
import { addressOfOperation } from './operation-address.ts';

const addressFor = (job: OpenJob, goTo: GoTo): string => {
  const id = job.head.event?.job ?? '';
  switch (goTo.kind) {
    case 'cell':
      return addressOf(id, 'measure');
    case 'operation':
      return addressOfOperation(job, goTo.operation);
    case 'phase':
      return addressOf(id, goTo.phase);
    case 'orders':
      return `${addressOf(id, 'decide')}/receiving`;
    default:
      return goTo satisfies never;
  }
};

export const LackingShown = ({
  operation,
  lacking,
}: {
  readonly operation: Operation;
  readonly lacking: readonly Lacking[];
}) => {
  const job = useJob();
  const standing = useStanding();
  const [, go] = useLocation();
  const goThere = (goTo: GoTo) => {
    if (goTo.kind === 'cell') standing.goTo(goTo.cell);
    const from: SentFrom = { address: addressOfOperation(job, operation.name), title: operation.title };
    go(addressFor(job, goTo), { state: from });
  };
  return (
    <ul className="lacking">
      {lacking.map(({ says, remedy, goTo }) => (
        <li key={says}>
          <span>
            {says}: <strong>{remedy}</strong>
          </span>
          {goTo ? (
            <Button onPress={() => goThere(goTo)}>
              Go there<span className="heard-only">: {says}</span>
            </Button>
          ) : null}
        </li>
      ))}
    </ul>
  );
};
