/** @module Operations in the maker's order: cautions where the harm is, hold points with what they lack, a signature. */
import { useEffect, useMemo, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import { Link } from 'wouter';
import type { Operation } from '../../engine/engine-type.ts';
import { type OperationStanding, operationsOf } from '../../job/holds.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import { useAct, useJob } from '../journal/use-desk.tsx';
import { PicturesOf } from '../picture/pictures-of.tsx';
import { announce } from '../shell/announce.ts';
import { Field } from '../shell/field.tsx';
import { Refused } from '../shell/refused.tsx';
import { doOperation } from './operation-actions.ts';
import { addressOfOperation } from './operation-address.ts';
import { signedWords } from './signed-words.ts';

/** Of what an operation lacks, as much as a list has room for; its own sheet tells all. */
const shownLacking = 3;

const Standing = ({ standing }: Pick<OperationStanding, 'standing'>) => {
  switch (standing.kind) {
    case 'done':
      return <p className="faint">✓ {signedWords(standing.signed)}</p>;
    case 'held':
      return (
        <div>
          <p>
            <strong>✕ Held.</strong> It lacks:
          </p>
          <ul>
            {standing.lacking.slice(0, shownLacking).map((one) => (
              <li key={one.says}>
                {one.says}: {one.remedy}
              </li>
            ))}
            {standing.lacking.length > shownLacking ? (
              <li>and {standing.lacking.length - shownLacking} more</li>
            ) : null}
          </ul>
        </div>
      );
    case 'open':
      return <p className="faint">open: can be done now</p>;
    default:
      return standing satisfies never;
  }
};

const OneOperation = ({
  operation,
  standing,
  onSigned,
}: OperationStanding & { readonly onSigned: () => void }) => {
  const job = useJob();
  const act = useAct();
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<Refusal>();
  const sign = () => {
    const refused = act(doOperation, { operation: operation.name, note });
    setRefusal(refused);
    if (refused) return;
    announce(`${operation.title}: done.`);
    onSigned();
  };
  return (
    <li data-operation={operation.name} data-standing={standing.kind}>
      <div className="what">
        <h3>
          <Link href={addressOfOperation(job, operation.name)}>{operation.title}</Link>
          {operation.needs.length > 0 ? ' (hold point)' : ''}
        </h3>
        {operation.cautions.map((caution) => (
          <p key={caution} className="caution">
            <strong>Caution:</strong> {caution}
          </p>
        ))}
        <Standing standing={standing} />
        <Refused refusal={refusal} />
        <PicturesOf of={{ operation: operation.name }} title={operation.title} />
      </div>
      {standing.kind === 'open' ? (
        <div className="row">
          <Field label="Note" value={note} onChange={setNote} />
          <Button
            className="first"
            aria-label={`${doOperation.label}: ${operation.title}`}
            isDisabled={!doOperation.enabled(job)}
            onPress={sign}
          >
            {doOperation.label}
          </Button>
        </div>
      ) : null}
    </li>
  );
};

export const useOperations = (phases: readonly Operation['phase'][]): readonly OperationStanding[] => {
  const job = useJob();
  const all = useMemo(() => operationsOf(job), [job]);
  return all.filter(({ operation }) => phases.includes(operation.phase));
};

export const OperationList = ({ operations }: { readonly operations: readonly OperationStanding[] }) => {
  const list = useRef<HTMLOListElement>(null);
  const [signed, setSigned] = useState(0);
  // The button that was pressed is gone: whoever works by keys or a foot switch stands at the next one.
  useEffect(() => {
    if (signed > 0) list.current?.querySelector<HTMLElement>('button.first')?.focus();
  }, [signed]);
  if (operations.length === 0) return <p>The engine type lists no operations here.</p>;
  return (
    <ol className="steps" ref={list}>
      {operations.map(({ operation, standing }) => (
        <OneOperation
          key={operation.name}
          operation={operation}
          standing={standing}
          onSigned={() => setSigned(signed + 1)}
        />
      ))}
    </ol>
  );
};
