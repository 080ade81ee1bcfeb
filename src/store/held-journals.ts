/** @module Journals held ready as they last stood, so that one more event need not replay thousands. May be thrown away. */
import type { JobEvent } from '../job/event.ts';
import { blankJob, evolveAll } from '../job/evolve.ts';
import type { Job } from '../job/job.ts';

/** Jobs that are worked on at the same time in one shop, with room to spare. */
const most = 64;

export interface Held<State, Event> {
  /** As the journal has it, reading only the events that came since it was last asked for. */
  readonly at: (id: string, readFrom: (after: number) => Promise<readonly Event[]>) => Promise<State>;
  readonly keep: (id: string, state: State) => void;
}

export const heldStates = <State extends { readonly head: { readonly sequence: number } }, Event>(
  blank: State,
  evolve: (state: State, events: readonly Event[]) => State,
): Held<State, Event> => {
  const held = new Map<string, State>();
  const keep = (id: string, state: State): void => {
    held.delete(id);
    held.set(id, state);
    const [oldest] = held.keys();
    if (held.size > most && oldest !== undefined) held.delete(oldest);
  };
  return {
    keep,
    at: async (id, readFrom) => {
      const before = held.get(id) ?? blank;
      return evolve(before, await readFrom(before.head.sequence));
    },
  };
};

export const heldJobs = (): Held<Job, JobEvent> => heldStates<Job, JobEvent>(blankJob, evolveAll);
