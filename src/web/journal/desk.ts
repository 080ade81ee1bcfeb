/**
 * @module One job on this bench: what the store holds, then what this bench has asked since. An answer never waits
 * for the network; what was asked is kept until the store has it, in order, and the store's events have the last word.
 */
import type { Command, Request } from '../../job/command.ts';
import { decide } from '../../job/decide.ts';
import type { JobEvent } from '../../job/event.ts';
import { blankJob, evolve, replay } from '../../job/evolve.ts';
import type { Job } from '../../job/job.ts';
import { type Answer, answer, type Refusal } from '../../quantity/refusal.ts';
import type { EventsCache } from './events-cache.ts';
import type { TurnedBack, WaitingLine } from './waiting-line.ts';
import type { Heard, Workshop } from './workshop.ts';

export interface Desk {
  /** As shown: the store's events, then what waits. */
  readonly job: Job;
  readonly events: readonly JobEvent[];
  readonly waiting: number;
  readonly turnedBack: readonly TurnedBack[];
  readonly reach: 'looking' | 'joined' | 'away';
  /** Why nothing can be shown, if nothing can. */
  readonly lost?: Refusal;
}

export interface DeskKeeper {
  readonly desk: () => Desk;
  readonly subscribe: (changed: () => void) => () => void;
  /** Decides here and now; what is accepted is shown at once and sent when it can be. */
  readonly ask: (request: Request) => Answer<JobEvent>;
  readonly forget: (turned: TurnedBack) => void;
  /** Tries the network now instead of at the next turn. */
  readonly tryNow: () => void;
  readonly open: () => Promise<void>;
  readonly close: () => void;
}

export interface DeskPorts {
  readonly workshop: Workshop;
  readonly line: WaitingLine;
  readonly cache: EventsCache;
  readonly sign: () => Pick<Command, 'id' | 'at' | 'actor' | 'bench'>;
  readonly after: (milliseconds: number, work: () => void) => () => void;
}

interface Asked {
  readonly command: Command;
  /** As this bench decided it; missing when what came before it has changed so that it no longer stands. */
  readonly event?: JobEvent;
}

const quickest = 1000;
const slowest = 10_000;

export const deskKeeper = (jobId: string, ports: DeskPorts): DeskKeeper => {
  let stored: Job = blankJob;
  let storedEvents: readonly JobEvent[] = [];
  let asked: readonly Asked[] = [];
  let view: Desk = { job: blankJob, events: [], waiting: 0, turnedBack: [], reach: 'looking' };
  let sending = false;
  let pause = quickest;
  let cancelNext = () => {};
  const listeners = new Set<() => void>();

  const show = (change: Partial<Desk>) => {
    view = { ...view, ...change, waiting: asked.length, turnedBack: ports.line.turnedBack(jobId) };
    for (const listener of listeners) listener();
  };

  /** Decides everything that waits over what the store holds now. */
  const retell = (commands: readonly Command[]) => {
    let job = stored;
    const events = [...storedEvents];
    asked = commands.map((command): Asked => {
      const decided = decide(job, command);
      if (decided.kind === 'refused') return { command };
      job = evolve(job, decided.value);
      events.push(decided.value);
      return { command, event: decided.value };
    });
    show({ job, events });
  };

  const start = (events: readonly JobEvent[]) => {
    stored = replay(events);
    storedEvents = events;
  };

  const startAfresh = async () => {
    await ports.cache.drop(jobId);
    start([]);
    return await ports.workshop.eventsAfter(jobId, 0);
  };

  /** Takes events from the store; when they are those that this bench foresaw, nothing shown changes. */
  const adopt = (events: readonly JobEvent[]) => {
    const fresh = events.filter((event) => event.sequence > stored.head.sequence);
    const foreseen = fresh.every((event, at) => asked[at]?.event?.hash === event.hash);
    const taken = new Set(fresh.map(({ id }) => id));
    for (const event of fresh) stored = evolve(stored, event);
    storedEvents = [...storedEvents, ...fresh];
    for (const { command } of asked) if (taken.has(command.id)) ports.line.remove(command);
    void ports.cache.keep(fresh);
    const left = asked.filter(({ command }) => !taken.has(command.id));
    if (foreseen) {
      asked = left;
      if (left.length === 0) {
        // What is shown stays the very object it was, so that nothing is drawn or judged again.
        stored = view.job;
        storedEvents = view.events;
      }
      show({ reach: 'joined' });
    } else {
      retell(left.map(({ command }) => command));
      show({ reach: 'joined' });
    }
  };

  const follows = (events: readonly JobEvent[]): boolean => {
    if (stored.kind === 'blank') return true;
    const next = events.find((event) => event.sequence === stored.head.sequence + 1);
    return next === undefined ? events.length === 0 : next.before === stored.head.hash;
  };

  const stillWaits = (command: Command | undefined): boolean =>
    command !== undefined && asked.some((one) => one.command.id === command.id);

  const turnBack = (command: Command, refusal: Refusal) => {
    ports.line.turnBack({ command, refusal });
    ports.line.remove(command);
    retell(asked.filter((one) => one.command !== command).map((one) => one.command));
    show({ reach: 'joined' });
  };

  /** Takes in an answer; tells whether to go on asking. */
  const hear = async (answered: Heard, command?: Command): Promise<boolean> => {
    switch (answered.kind) {
      case 'no answer':
        show({ reach: 'away' });
        return false;
      case 'refused':
        if (command) turnBack(command, answered.refusal);
        else show({ reach: 'joined', lost: answered.refusal });
        return command !== undefined;
      case 'events':
        if (follows(answered.events)) adopt(answered.events);
        else return hear(await startAfresh());
        if (!stillWaits(command)) return true;
        // It was taken, and yet is not among what follows: this journal is another than the one known here.
        await hear(await startAfresh());
        return !stillWaits(command);
      default:
        return answered satisfies never;
    }
  };

  const later = (milliseconds: number) => {
    cancelNext();
    cancelNext = ports.after(milliseconds, () => void turn());
  };

  const turn = async () => {
    if (sending) return;
    sending = true;
    let well = true;
    try {
      do {
        const command = asked[0]?.command;
        const after = stored.head.sequence;
        const answered = command
          ? await ports.workshop.send(command, after)
          : await ports.workshop.eventsAfter(jobId, after);
        well = await hear(answered, command);
      } while (well && asked.length > 0);
    } finally {
      sending = false;
    }
    pause = well ? quickest : Math.min(slowest, pause * 2);
    later(well ? slowest : pause);
  };

  return {
    desk: () => view,
    subscribe: (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    ask: (request) => {
      const command: Command = { ...ports.sign(), job: jobId, request };
      const decided = decide(view.job, command);
      if (decided.kind === 'refused') return decided;
      ports.line.add(command);
      asked = [...asked, { command, event: decided.value }];
      show({ job: evolve(view.job, decided.value), events: [...view.events, decided.value] });
      // The answer is painted before the network is asked.
      later(20);
      return answer(decided.value);
    },
    forget: (turned) => {
      ports.line.forget(turned);
      show({});
    },
    tryNow: () => void turn(),
    open: async () => {
      start(await ports.cache.read(jobId));
      retell(ports.line.of(jobId));
      await turn();
    },
    close: () => cancelNext(),
  };
};
