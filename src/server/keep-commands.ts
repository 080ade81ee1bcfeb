/** @module Takes commands for the store: each is decided on the journal as it stands, and becomes one event there. */
import type { Command } from '../job/command.ts';
import { decide } from '../job/decide.ts';
import type { JobEvent } from '../job/event.ts';
import { evolve } from '../job/evolve.ts';
import type { Job } from '../job/job.ts';
import type { AnyFact, CommandOf, JournalEvent } from '../journal/event.ts';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import type { RegisterCommand } from '../register/command.ts';
import { decideRegister } from '../register/decide.ts';
import type { RegisterEvent } from '../register/event.ts';
import { emptyRegister, evolveRegister } from '../register/evolve.ts';
import type { Register } from '../register/register.ts';
import { type Held, heldJobs, heldStates } from '../store/held-journals.ts';
import type { JournalStore, Journals } from '../store/journal-store.ts';

/** Each try that fails means that somebody else's command was taken: more rivals than that have no bench. */
const mostTries = 100;

export interface KeptCommands<Command, Event, State> {
  /** Appends what the command comes to, and gives every event after a sequence; a command sent twice counts once. */
  readonly take: (command: Command, after: number) => Promise<Answer<readonly Event[]>>;
  readonly now: (id: string) => Promise<State>;
}

interface Kind<Command, Event, State> {
  /** What such a journal is called in messages. */
  readonly called: string;
  readonly held: Held<State, Event>;
  readonly decide: (state: State, command: Command) => Answer<Event>;
  readonly evolve: (state: State, event: Event) => State;
}

const keeping = <
  Command extends CommandOf<AnyFact>,
  Event extends JournalEvent,
  State extends { readonly head: { readonly sequence: number } },
>(
  journals: Journals<Event>,
  { called, held, decide: decideOn, evolve: evolveBy }: Kind<Command, Event, State>,
): KeptCommands<Command, Event, State> => {
  const now = async (id: string): Promise<State> => {
    const state = await held.at(id, (after) => journals.readFrom(id, after));
    // A journal that is not there is not held: asking for names makes nobody wait.
    if (state.head.sequence > 0) held.keep(id, state);
    return state;
  };

  const append = async (command: Command): Promise<Answer<void>> => {
    for (let tries = 0; tries < mostTries; tries += 1) {
      if (await journals.has(command.job, command.id)) return answer(undefined);
      const state = await now(command.job);
      const event = decideOn(state, command);
      if (event.kind === 'refused') return event;
      const appended = await journals.append(command.job, state.head.sequence, [event.value]);
      if (appended.kind === 'stale') continue;
      if (appended.sequence === event.value.sequence) held.keep(command.job, evolveBy(state, event.value));
      return answer(undefined);
    }
    return refuse(`too many write in this ${called} at once`, command.job, 'try again in a moment');
  };

  return {
    now,
    take: async (command, after) => {
      const taken = await append(command);
      return taken.kind === 'refused' ? taken : answer(await journals.readFrom(command.job, after));
    },
  };
};

export const keepCommands = (store: Journals<JobEvent>): KeptCommands<Command, JobEvent, Job> =>
  keeping(store, { called: 'job', held: heldJobs(), decide, evolve });

export const keepRegister = ({
  register,
}: Pick<JournalStore, 'register'>): KeptCommands<RegisterCommand, RegisterEvent, Register> =>
  keeping(register, {
    called: 'register',
    held: heldStates<Register, RegisterEvent>(emptyRegister, (state, events) =>
      events.reduce(evolveRegister, state),
    ),
    decide: decideRegister,
    evolve: evolveRegister,
  });
