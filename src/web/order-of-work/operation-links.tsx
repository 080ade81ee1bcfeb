/** @module Operations in an order, each a way to its own sheet. */
import { Link } from 'wouter';
import type { Operation } from '../../engine/engine-type.ts';
import { useJob } from '../journal/use-desk.tsx';
import { addressOfOperation } from '../operation/operation-address.ts';

export const OperationLinks = ({
  operations,
  beside,
}: {
  readonly operations: readonly Operation[];
  /** Said behind each. */
  readonly beside?: (operation: Operation) => string;
}) => {
  const job = useJob();
  return (
    <ol className="order-of-work">
      {operations.map((operation) => (
        <li key={operation.name}>
          <Link href={addressOfOperation(job, operation.name)}>{operation.title}</Link>
          {beside === undefined || beside(operation) === '' ? null : (
            <span className="faint">; {beside(operation)}</span>
          )}
        </li>
      ))}
    </ol>
  );
};
