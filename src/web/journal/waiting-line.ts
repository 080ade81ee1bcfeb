/** @module Commands that the workshop's store has not yet taken, kept in this browser until it has. */
import type { Command } from '../../job/command.ts';
import type { Refusal } from '../../quantity/refusal.ts';

/** A command that the store would not take, kept until the person has read why. */
export interface TurnedBack {
  readonly command: Command;
  readonly refusal: Refusal;
}

export interface WaitingLine {
  /** Oldest first. */
  readonly of: (job: string) => readonly Command[];
  readonly add: (command: Command) => void;
  readonly remove: (command: Command) => void;
  readonly turnedBack: (job: string) => readonly TurnedBack[];
  readonly turnBack: (turned: TurnedBack) => void;
  readonly forget: (turned: TurnedBack) => void;
  /** Jobs with anything waiting. */
  readonly jobs: () => readonly string[];
}

/** Also looked for by the page before it fetches what sends. */
export const waitingKey = 'endfloat waiting';
const turnedKey = 'endfloat turned back';

/**
 * One entry a command, written before the screen answers, so that a reload or a flat battery loses nothing.
 * Ids are UUIDv7: sorting by them is sorting by time.
 */
export const waitingLine = (storage: Storage): WaitingLine => {
  const keys = (prefix: string) =>
    Array.from({ length: storage.length }, (_, at) => storage.key(at))
      .filter((key) => key?.startsWith(prefix) === true)
      .filter((key) => key !== null)
      .sort();
  const read = <T>(prefix: string): readonly T[] =>
    keys(prefix).flatMap((key) => {
      const text = storage.getItem(key);
      return text === null ? [] : [JSON.parse(text) as T];
    });
  const keyOf = (prefix: string, { job, id }: Command) => `${prefix} ${job} ${id}`;
  return {
    of: (job) => read<Command>(`${waitingKey} ${job} `),
    add: (command) => storage.setItem(keyOf(waitingKey, command), JSON.stringify(command)),
    remove: (command) => storage.removeItem(keyOf(waitingKey, command)),
    turnedBack: (job) => read<TurnedBack>(`${turnedKey} ${job} `),
    turnBack: (turned) => storage.setItem(keyOf(turnedKey, turned.command), JSON.stringify(turned)),
    forget: ({ command }) => storage.removeItem(keyOf(turnedKey, command)),
    jobs: () => [...new Set(read<Command>(`${waitingKey} `).map(({ job }) => job))],
  };
};
