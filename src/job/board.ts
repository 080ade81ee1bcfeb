/** @module What a job does next and what it waits for, for a board of all jobs: a pure function of the job, without a clock. */
import type { Operation } from '../engine/engine-type.ts';
import { askedOf } from './asked.ts';
import type { Board, NextAction, Waiting } from './board-line.ts';
import { lackingBefore } from './hold/before.ts';
import type { GoTo } from './hold/lacking.ts';
import { standingOf } from './holds.ts';
import { partHomesOf } from './home/part-home.ts';
import type { OpenJob } from './job.ts';
import { standingOffer } from './offer.ts';
import { openLines } from './order/open-lines.ts';
import { type PhaseName, phaseOf } from './phase.ts';
import { operationsIn, scopeOf } from './scope.ts';
import { scopeNow } from './scope-words.ts';
import { spellsOf, workTimeOf } from './time.ts';

const phaseFor: Readonly<Record<Operation['phase'], PhaseName>> = {
  strip: 'Strip',
  build: 'Build',
  set: 'Build',
  run: 'Run',
};

const sheetNamed: Readonly<Record<Extract<GoTo, { kind: 'phase' }>['phase'], PhaseName>> = {
  measure: 'Measure',
  decide: 'Decide',
  strip: 'Strip',
  build: 'Build',
  run: 'Run',
};

/** Settings stand on the sheet of the run. */
const sheetFor: Readonly<Record<Operation['phase'], PhaseName>> = { ...phaseFor, set: 'Run' };

const atOperation = ({ name, phase }: Operation, says: string): NextAction => ({
  says,
  phase: sheetFor[phase],
  operation: name,
});

/** Where what is lacking is put right; at the operation that lacks it where nothing else is said. */
const following = (job: OpenJob, operation: Operation, says: string, goTo: GoTo | undefined): NextAction => {
  switch (goTo?.kind) {
    case undefined:
      return atOperation(operation, says);
    case 'operation':
      return atOperation(job.sheet.engine.operations.get(goTo.operation) ?? operation, says);
    case 'cell':
      return { says, phase: 'Measure' };
    case 'phase':
      return { says, phase: sheetNamed[goTo.phase] };
    case 'orders':
      return { says, phase: 'Decide' };
    default:
      return goTo satisfies never;
  }
};

/** The first operation from a part of the job on that is open; else what the first one lacks. */
const nextOperation = (job: OpenJob, from: PhaseName): NextAction | undefined => {
  const phases = ['Strip', 'Build', 'Run'].slice(['Strip', 'Build', 'Run'].indexOf(from));
  const left = operationsIn(job).filter(
    ({ name, phase }) => phases.includes(phaseFor[phase]) && !job.done.has(name),
  );
  let held: NextAction | undefined;
  for (const operation of left) {
    const standing = standingOf(job, operation);
    // What is asked, counted or reckoned at the operation itself is part of doing it.
    const here = standing.kind === 'held' && standing.lacking.every(({ goTo }) => goTo === undefined);
    if (standing.kind === 'open' || here) return atOperation(operation, operation.title);
    if (standing.kind !== 'held' || held !== undefined) continue;
    const [first] = standing.lacking;
    if (first)
      held = following(
        job,
        operation,
        `“${operation.title}” waits: ${first.says}; ${first.remedy}`,
        first.goTo,
      );
  }
  return held;
};

const nextOf = (job: OpenJob): NextAction | undefined => {
  if (job.handedOver !== undefined) return undefined;
  const { name, next } = phaseOf(job);
  const operation =
    name === 'Strip' || name === 'Build' || name === 'Run' ? nextOperation(job, name) : undefined;
  return operation ?? { says: next, phase: name };
};

const ownersWord = (job: OpenJob): readonly Waiting[] => {
  if (job.agreed !== undefined) return [];
  const offer = standingOffer(job);
  if (offer === undefined && job.plan === undefined) return [];
  const on = offer === undefined ? 'the plan' : `offer ${offer.number}`;
  return [{ for: 'the owner', says: `the word of ${job.booked.owner} on ${on}` }];
};

/** Orders of which something is to come. */
const deliveries = (job: OpenJob): readonly Waiting[] => {
  const open = openLines(job);
  return [...new Set(open.map(({ order }) => order))].flatMap((order): readonly Waiting[] => {
    const awaited = open.filter((one) => one.order === order && one.left > 0);
    if (awaited.length === 0) return [];
    const machined = awaited.some(({ line: { does } }) => does !== undefined && does !== 'replace');
    const says = `order ${order.order}, ${order.supplier}`;
    return [{ for: machined ? 'the machine shop' : 'parts', says, due: order.due }];
  });
};

const decisions = (job: OpenJob): readonly Waiting[] => [
  ...openLines(job).flatMap(({ line, order, standing }): readonly Waiting[] =>
    standing.kind === 'failed'
      ? [{ for: 'a decision', says: `${line.says}, order ${order.order}, is not as ordered` }]
      : [],
  ),
  ...partHomesOf(job).flatMap(({ tag, state }): readonly Waiting[] =>
    state.kind === 'in question' ? [{ for: 'a decision', says: `${tag.title}: ${state.says}` }] : [],
  ),
];

/** Operations at whose turn it is, and that somebody else than who signs them has yet to look at. */
const secondPerson = (job: OpenJob): readonly Waiting[] =>
  operationsIn(job).flatMap((operation): readonly Waiting[] => {
    if (job.done.has(operation.name) || !operation.asks.some((ask) => ask.secondPerson)) return [];
    if (lackingBefore(job, operation).length > 0) return [];
    return askedOf(job, operation)
      .filter(({ ask, answered }) => ask.secondPerson && answered === undefined)
      .map(({ says }) => ({ for: 'a second person', says: `“${operation.title}”: ${says}` }));
  });

export const boardOf = (job: OpenJob): Board => {
  const next = nextOf(job);
  const { spent, remaining } = workTimeOf(job, ['strip', 'build', 'set', 'run']);
  const over = job.handedOver !== undefined;
  return {
    scope: scopeOf(job).whole ? '' : scopeNow(job),
    ...(next && { next }),
    waitsFor: over ? [] : [...ownersWord(job), ...deliveries(job), ...secondPerson(job), ...decisions(job)],
    spent: Math.round(spent.personMinutes),
    left: over ? 0 : Math.round(remaining.personMinutes),
    untold: over ? 0 : remaining.untold,
    running: spellsOf(job).flatMap(({ by, operation, from, to }) =>
      to === undefined ? [{ by, operation, from }] : [],
    ),
  };
};
