/** @module One job: its title block, its phases, the engine as the map, and the sheet of the phase. */
import { type ComponentType, lazy, useEffect, useMemo, useState } from 'react';
import { Redirect } from 'wouter';
import type { OpenJob } from '../../job/job.ts';
import { phaseNames, phaseOf } from '../../job/phase.ts';
import { scopeOf } from '../../job/scope.ts';
import { scopeNow } from '../../job/scope-words.ts';
import { refusalText } from '../../quantity/refusal.ts';
import { BookedSheet } from '../book-in/booked-sheet.tsx';
import { BuildSheet } from '../build/build-sheet.tsx';
import { DecideSheet } from '../decide/decide-sheet.tsx';
import { HandOverSheet } from '../hand-over/hand-over-sheet.tsx';
import { TagsSheet } from '../home/tags-sheet.tsx';
import type { Desk, DeskKeeper } from '../journal/desk.ts';
import { JobOnBench, keeperOf, useDesk } from '../journal/use-desk.tsx';
import { MeasureSheet } from '../measure/measure-sheet.tsx';
import { operationAt } from '../operation/operation-address.ts';
import { OperationSheet } from '../operation/operation-sheet.tsx';
import { DecideParts } from '../order/decide-parts.tsx';
import { MachineShopSheetShown } from '../order/machine-shop-sheet.tsx';
import { OrdersSheet } from '../order/orders-sheet.tsx';
import { ReceivingSheet } from '../order/receiving-sheet.tsx';
import { RunSheet } from '../run/run-sheet.tsx';
import { NotOpenedPart } from '../scope/not-opened.tsx';
import { StripSheet } from '../strip/strip-sheet.tsx';
import { BackTo } from './back-to.tsx';
import { JobMap } from './job-map.tsx';
import { addressOf, phaseAt, phaseNamed } from './phases.ts';
import { Phases } from './phases-bar.tsx';
import { Cell, Sheet } from './sheet.tsx';
import { TurnedBackNotes, Waiting } from './waiting.tsx';

// What lays out labels is wanted once a job.
const LabelsSheet = lazy(() => import('../home/labels-sheet.tsx'));

interface Shown {
  readonly sheet: ComponentType;
  /** The record and the booking are papers of their own, without the map beside them. */
  readonly map: boolean;
}

const shownAt: Readonly<Record<string, Shown>> = {
  'book-in': { sheet: BookedSheet, map: true },
  strip: { sheet: StripSheet, map: true },
  'strip/tags': { sheet: TagsSheet, map: false },
  'strip/labels': { sheet: LabelsSheet, map: false },
  measure: { sheet: MeasureSheet, map: true },
  decide: { sheet: DecideSheet, map: false },
  'decide/orders': { sheet: OrdersSheet, map: false },
  'decide/machine-shop': { sheet: MachineShopSheetShown, map: false },
  'decide/receiving': { sheet: ReceivingSheet, map: false },
  build: { sheet: BuildSheet, map: true },
  run: { sheet: RunSheet, map: false },
  'hand-over': { sheet: HandOverSheet, map: false },
};

const Block = ({
  job,
  desk,
  slug,
}: {
  readonly job: OpenJob;
  readonly desk: Desk;
  readonly slug: string;
}) => {
  const at = phaseNames.findIndex((name) => phaseNamed(name).slug === slug) + 1;
  return (
    <>
      <Cell name="engine" long>
        {job.sheet.engine.title}
      </Cell>
      <Cell name="job">{job.booked.number}</Cell>
      <Cell name="owner" long>
        {job.booked.owner}
      </Cell>
      {scopeOf(job).whole ? null : (
        <Cell name="goes as far as" long>
          {scopeNow(job)}, no further
        </Cell>
      )}
      <Cell name="plate">{job.booked.plate === '' ? 'none' : job.booked.plate}</Cell>
      <Cell name="sheet">
        {at} of 7, {phaseAt(slug)?.name}
      </Cell>
      <Waiting desk={desk} />
    </>
  );
};

const NotOpen = ({ desk }: { readonly desk: Desk }) => {
  const words =
    desk.job.kind === 'unreadable'
      ? refusalText(desk.job.why)
      : desk.lost !== undefined
        ? refusalText(desk.lost)
        : desk.reach === 'looking'
          ? 'Fetching the journal of this job …'
          : desk.reach === 'away'
            ? 'The workshop’s store does not answer, and this bench has not opened this job before. Look whether the server runs; this page tries again by itself.'
            : 'There is no such job. Look for it on the sheet of all jobs.';
  return (
    <Sheet heading="Job">
      <h1>Job</h1>
      <p role="status">{words}</p>
    </Sheet>
  );
};

const OpenJobScreen = ({
  job,
  desk,
  keeper,
  slug,
  part,
}: {
  readonly job: OpenJob;
  readonly desk: Desk;
  readonly keeper: DeskKeeper;
  readonly slug: string;
  readonly part: string;
}) => {
  const operation = operationAt(job.sheet.engine, slug, part);
  const shown = shownAt[part === '' || operation ? slug : `${slug}/${part}`];
  // Made once a phase: what the network says changes the title block alone, a reading what shows the job.
  const work = useMemo(() => {
    if (!shown) return null;
    const { sheet: Shown, map } = shown;
    return (
      <JobMap shown={map} reads={slug === 'measure'}>
        {operation ? <OperationSheet operation={operation} slug={slug} /> : <Shown />}
        {operation || part !== '' || slug === 'book-in' ? null : <NotOpenedPart />}
      </JobMap>
    );
  }, [shown, operation, slug, part]);
  const phases = useMemo(() => <Phases slug={slug} />, [slug]);
  if (!shown)
    return <Redirect to={addressOf(job.head.event?.job ?? '', phaseNamed(phaseOf(job).name).slug)} replace />;
  const name = phaseAt(slug)?.name ?? '';
  return (
    <JobOnBench keeper={keeper} job={job}>
      <Sheet
        heading={`${name}, job ${job.booked.number}`}
        block={<Block job={job} desk={desk} slug={slug} />}
        phases={phases}
      >
        <h1 className="heard-only">
          {name}, job {job.booked.number}
        </h1>
        <TurnedBackNotes desk={desk} keeper={keeper} />
        {job.handedOver ? (
          <p className="note">
            Handed over to {job.handedOver.to} on {job.handedOver.at.slice(0, 10)}: the journal of this job is
            closed. What comes now is a job of its own.
          </p>
        ) : null}
        <BackTo />
        {slug === 'decide' ? <DecideParts at={part} /> : null}
        {work}
      </Sheet>
    </JobOnBench>
  );
};

const JobScreen = ({
  jobId,
  phase,
  part,
}: {
  readonly jobId: string;
  readonly phase: string;
  /** A sheet of the phase beside its first one. */
  readonly part: string;
}) => {
  const [keeper, setKeeper] = useState<DeskKeeper>(() => keeperOf(jobId));
  useEffect(() => setKeeper(keeperOf(jobId)), [jobId]);
  const desk = useDesk(keeper);
  return desk.job.kind === 'open' ? (
    <OpenJobScreen key={jobId} job={desk.job} desk={desk} keeper={keeper} slug={phase} part={part} />
  ) : (
    <NotOpen desk={desk} />
  );
};

export default JobScreen;
