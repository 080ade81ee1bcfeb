/** @module One operation on the bench: what it takes, its cautions, what it asks, its sums and stages, its signature. */
import { type ComponentType, useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import type { EngineType, Operation } from '../../engine/engine-type.ts';
import { type OperationStanding, operationsOf } from '../../job/holds.ts';
import type { OpenJob } from '../../job/job.ts';
import { renewedBy } from '../../job/order/renewed-by.ts';
import { useJob, useKeeper } from '../journal/use-desk.tsx';
import { PicturesOf } from '../picture/pictures-of.tsx';
import { GoFurther } from '../scope/not-opened.tsx';
import { announce } from '../shell/announce.ts';
import { addressOf } from '../shell/phases.ts';
import { ThreeAnswers } from '../shell/three-answers.tsx';
import { AsksPart } from './asks-part.tsx';
import { CamLiftPart } from './cam-lift-part.tsx';
import { HomePart } from './home-part.tsx';
import { addressOfOperation, phasesAt } from './operation-address.ts';
import { ShimsPart } from './shims-part.tsx';
import { SignPart } from './sign-part.tsx';
import { SpillCheckPart } from './spill-check-part.tsx';
import { SumsPart } from './sums-part.tsx';
import { TighteningPart } from './tightening-part.tsx';
import { TimePart } from './time-part.tsx';
import { ValveClearancePart } from './valve-clearance-part.tsx';

/** What stands between the cautions and the signature, each where an operation has such. */
const parts: readonly {
  readonly name: string;
  readonly Part: ComponentType<{ readonly operation: Operation }>;
}[] = [
  { name: 'home', Part: HomePart },
  { name: 'time', Part: TimePart },
  { name: 'asks', Part: AsksPart },
  { name: 'sums', Part: SumsPart },
  { name: 'cam lifts', Part: CamLiftPart },
  { name: 'valve clearances', Part: ValveClearancePart },
  { name: 'shim packs', Part: ShimsPart },
  { name: 'second check', Part: SpillCheckPart },
  { name: 'tightening', Part: TighteningPart },
];

const named = (engine: EngineType, names: readonly string[]): string =>
  names.map((name) => engine.placeKinds.get(name)?.title ?? name.replaceAll('-', ' ')).join(', ');

/** What it takes and does, as the engine type has it. */
const factsOf = (job: OpenJob, operation: Operation): readonly (readonly [string, string])[] => {
  const { engine } = job.sheet;
  const { stand, tools, people, minutes, removes, fits, covers } = operation;
  const covered = covers.map((name) => engine.characteristics.get(name)?.title ?? named(engine, [name]));
  return [
    ['Engine lies', stand?.replaceAll('-', ' ') ?? ''],
    ['Tools', named(engine, tools)],
    ['Hands', people > 1 ? `${people} people` : ''],
    ['Takes about', minutes === undefined ? '' : `${minutes} minutes`],
    ['Comes off', named(engine, removes)],
    ['Goes on', named(engine, fits)],
    [
      'New with it',
      renewedBy(job, operation)
        .map(({ item, count }) => `${count} × ${item.title}`)
        .join(', '),
    ],
    ['Hides for good', covered.join(', ')],
  ].flatMap(([name = '', says = '']) => (says === '' ? [] : [[name, says] as const]));
};

const nowWords = ({ operation, standing }: OperationStanding): string => {
  switch (standing.kind) {
    case 'done':
      return 'go on to the next';
    case 'open':
      return operation.needs.length > 0 ? 'all is proved: do it, and sign' : 'do it, and sign';
    case 'held':
      return standing.lacking[0]?.remedy ?? '';
    default:
      return standing satisfies never;
  }
};

const rightWords = ({ standing }: OperationStanding): string => {
  switch (standing.kind) {
    case 'done':
      return standing.signed.overruled ? '✓ signed, overruled' : '✓ signed';
    case 'open':
      return 'open: nothing is lacking';
    case 'held':
      return `✕ held: ${standing.lacking.length} lacking`;
    default:
      return standing satisfies never;
  }
};

/** The next operation of a sheet that is open, from one on and round again. */
const nextOpen = (job: OpenJob, { name }: Operation, slug: string): Operation | undefined => {
  const all = operationsOf(job).filter(({ operation }) => phasesAt[slug]?.includes(operation.phase));
  const at = all.findIndex(({ operation }) => operation.name === name);
  return [...all.slice(at + 1), ...all.slice(0, at)].find(({ standing }) => standing.kind === 'open')
    ?.operation;
};

/** This job does not go so far; the order of work leads here all the same where somebody looks how to reach a place. */
const BeyondScope = ({ operation }: { readonly operation: Operation }) => (
  <section className="part" aria-label="Not in this job">
    <h2>{operation.title}</h2>
    <p>
      <strong>This job does not go so far.</strong> Where it must, have the owner agree, and go further: then
      all that the operation brings with it is asked.
    </p>
    <GoFurther />
  </section>
);

export const OperationSheet = ({
  operation,
  slug,
}: {
  readonly operation: Operation;
  readonly slug: string;
}) => {
  const job = useJob();
  const keeper = useKeeper();
  const [, go] = useLocation();
  const { engine } = job.sheet;
  const all = useMemo(
    () => operationsOf(job).filter((one) => phasesAt[slug]?.includes(one.operation.phase)),
    [job, slug],
  );
  const at = all.findIndex((one) => one.operation === operation);
  const here = all[at];
  if (here === undefined) return <BeyondScope operation={operation} />;
  const back = addressOf(job.head.event?.job ?? '', slug);
  const neighbour = (step: 1 | -1) => all[at + step]?.operation;
  const before = neighbour(-1);
  const after = neighbour(1);
  const onSigned = () => {
    announce(`${operation.title}: done.`);
    const now = keeper.desk().job;
    const open = now.kind === 'open' ? nextOpen(now, operation, slug) : undefined;
    go(open === undefined ? back : addressOfOperation(job, open.name));
  };
  return (
    <article className="column" data-operation={operation.name} data-standing={here.standing.kind}>
      <nav className="row no-print" aria-label="Operations beside this one">
        <Link className="button" href={back}>
          All {all.length}
        </Link>
        {before ? (
          <Link className="button" href={addressOfOperation(job, before.name)}>
            ← {before.title}
          </Link>
        ) : null}
        {after ? (
          <Link className="button" href={addressOfOperation(job, after.name)}>
            {after.title} →
          </Link>
        ) : null}
      </nav>
      <ThreeAnswers
        where={`operation ${at + 1} of ${all.length}${operation.at === undefined ? '' : `, ${named(engine, [operation.at])}`}`}
        now={nowWords(here)}
        right={rightWords(here)}
      />
      <h2>
        {operation.title}
        {operation.needs.length > 0 ? ' (hold point)' : ''}
      </h2>
      {operation.cautions.map((caution) => (
        <p key={caution} className="caution">
          <strong>Caution:</strong> {caution}
        </p>
      ))}
      <dl className="facts">
        {factsOf(job, operation).map(([name, says]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{says}</dd>
          </div>
        ))}
      </dl>
      {parts.map(({ name, Part }) => (
        <Part key={name} operation={operation} />
      ))}
      <PicturesOf of={{ operation: operation.name }} title={operation.title} />
      <SignPart {...here} onSigned={onSigned} />
    </article>
  );
};
