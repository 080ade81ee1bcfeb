/** @module What has to come off to reach a place: each step with how it stands, what it disturbs, what lies beyond the job. */
import { useMemo } from 'react';
import { Link } from 'wouter';
import type { Operation } from '../../engine/engine-type.ts';
import { type WayStep, type WayToPlace, wayToPlace } from '../../job/way-to-place.ts';
import { timeWords } from '../../work/time-words.ts';
import { useJob } from '../journal/use-desk.tsx';
import { addressOfOperation } from '../operation/operation-address.ts';
import { OperationLinks } from '../order-of-work/operation-links.tsx';
import { Aside } from '../shell/aside.tsx';
import { Refused } from '../shell/refused.tsx';
import { BeyondShown } from './beyond-shown.tsx';
import './place.css';

const signs = { done: '✓ done', 'open now': '→ open now', 'not yet': '… not yet' } as const;

const Step = ({ step: { operation, standing, says } }: { readonly step: WayStep }) => {
  const job = useJob();
  return (
    <li data-step={operation.name} data-standing={standing}>
      <Link href={addressOfOperation(job, operation.name)}>{operation.title}</Link>
      <span>
        <strong>{signs[standing]}</strong>
        {says === '' ? '' : `: ${says}`}
      </span>
    </li>
  );
};

const Disturbed = ({ way }: { readonly way: WayToPlace }) => {
  const { sheet } = useJob();
  const { off, spoilt, renew, again, prove } = way;
  const lines: readonly (readonly [string, string])[] = [
    [
      'Comes off',
      off.map((part) => sheet.engine.placeKinds.get(part)?.title ?? part.replaceAll('-', ' ')).join(', '),
    ],
    [
      'New ones needed',
      [
        ...spoilt.map(({ item, count }) => `${count} × ${item.title}`),
        ...renew.map(({ title }) => title),
      ].join(', '),
    ],
    [
      'To be proved on the way back',
      prove.map((name) => sheet.engine.characteristics.get(name)?.title ?? name).join(', '),
    ],
  ];
  return (
    <>
      <dl className="facts">
        {lines.map(([name, says]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{says === '' ? 'none' : says}</dd>
          </div>
        ))}
      </dl>
      <Aside words={`Fitted and set again afterwards: ${again.length} operations, ${timeWords(again)}`}>
        <OperationLinks operations={again} />
      </Aside>
    </>
  );
};

const headOf = (title: string, steps: readonly WayStep[]): string => {
  const left = steps
    .filter(({ standing }) => standing !== 'done')
    .map(({ operation }): Operation => operation);
  if (left.length === 0) return `The ${title} is open: all ${steps.length} steps to it are done`;
  return `${steps.length - left.length} of ${steps.length} steps to it are done; ${timeWords(left)} left`;
};

export const WayShown = ({ place }: { readonly place: string }) => {
  const job = useJob();
  const found = useMemo(() => wayToPlace(job, place), [job, place]);
  if (found.kind === 'refused') return <Refused refusal={found.refusal} />;
  const { title, steps, beyond } = found.value;
  return (
    <div className="column">
      {beyond ? <BeyondShown title={title} beyond={beyond} /> : null}
      <h3>What has to come off to reach it</h3>
      <p role="status">{headOf(title, steps)}.</p>
      <ol className="way">
        {steps.map((step) => (
          <Step key={step.operation.name} step={step} />
        ))}
      </ol>
      <Disturbed way={found.value} />
    </div>
  );
};
