/** @module The job on this bench, for components: what it is and how to ask something of it. */
import { createContext, type ReactNode, useContext, useSyncExternalStore } from 'react';
import { v7 } from 'uuid';
import type { OpenJob } from '../../job/job.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import type { Action } from '../shell/action.ts';
import { whoIsHere } from '../shell/who.ts';
import { type Desk, type DeskKeeper, deskKeeper } from './desk.ts';
import { eventsCache } from './events-cache.ts';
import { benchPictures } from './picture-box.ts';
import { waitingLine } from './waiting-line.ts';
import { workshop } from './workshop.ts';

const line = waitingLine(localStorage);
const cache = eventsCache();
const keepers = new Map<string, DeskKeeper>();

/** One keeper a job for as long as the page lives, so that leaving a screen stops no sending. */
export const keeperOf = (job: string): DeskKeeper => {
  const known = keepers.get(job);
  if (known) return known;
  const keeper = deskKeeper(job, {
    workshop: workshop(benchPictures),
    line,
    cache,
    sign: () => ({ id: v7(), at: new Date().toISOString(), ...whoIsHere() }),
    after: (milliseconds, work) => {
      const timer = setTimeout(work, milliseconds);
      return () => clearTimeout(timer);
    },
  });
  keepers.set(job, keeper);
  addEventListener('online', keeper.tryNow);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') keeper.tryNow();
  });
  void keeper.open();
  return keeper;
};

/** Takes up what an earlier page left unsent, whichever job it was for. */
export const takeUpWaiting = (): void => {
  for (const job of line.jobs()) keeperOf(job);
};

const KeeperContext = createContext<DeskKeeper | undefined>(undefined);
const JobContext = createContext<OpenJob | undefined>(undefined);

export const useDesk = (keeper: DeskKeeper): Desk => useSyncExternalStore(keeper.subscribe, keeper.desk);

export const JobOnBench = ({
  keeper,
  job,
  children,
}: {
  readonly keeper: DeskKeeper;
  readonly job: OpenJob;
  readonly children: ReactNode;
}) => (
  <KeeperContext value={keeper}>
    <JobContext value={job}>{children}</JobContext>
  </KeeperContext>
);

/** The open job; only below `JobOnBench`. */
export const useJob = (): OpenJob => {
  const job = useContext(JobContext);
  if (!job) throw new Error('a screen of a job stands outside a job');
  return job;
};

export const useKeeper = (): DeskKeeper => {
  const keeper = useContext(KeeperContext);
  if (!keeper) throw new Error('a screen of a job stands outside a job');
  return keeper;
};

/** Asks an action of the job; answers why not, if not. */
export const useAct = (): (<Input>(action: Action<Input>, input: Input) => Refusal | undefined) => {
  const keeper = useKeeper();
  return (action, input) => {
    const asked = keeper.ask(action.request(input));
    return asked.kind === 'refused' ? asked.refusal : undefined;
  };
};
