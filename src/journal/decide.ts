/** @module Decides a command on any journal: accepted, it becomes one sealed event; else it is refused. */
import { type Answer, answer } from '../quantity/refusal.ts';
import { seal } from './chain.ts';
import type { AnyFact, CommandOf, JournalEvent } from './event.ts';
import type { FactReader } from './fact-reader.ts';
import type { Head } from './head.ts';
import { readEventOf } from './read-event.ts';
import { blank, type Trouble, trouble } from './trouble.ts';

/** What one kind of journal asks of its commands. */
export interface Rules<State, Request extends AnyFact, Fact extends AnyFact> {
  /** What such a journal is called in messages. */
  readonly called: string;
  readonly troubleFor: (state: State, command: CommandOf<Request>) => Trouble;
  readonly factOf: (request: Request) => Fact;
  readonly facts: FactReader<Fact>;
}

/** A command sent again right away: the event that it became. */
const sentAgain = <Fact extends AnyFact>(
  { event }: Head<Fact>,
  { id }: CommandOf<AnyFact>,
): JournalEvent<Fact> | undefined => (event?.id === id ? event : undefined);

const elsewhere = (called: string, { event }: Head, { job }: CommandOf<AnyFact>): Trouble =>
  event !== undefined && event.job !== job
    ? trouble(`this command is for another ${called}`, called, `send it to ${called} ${job}`)
    : undefined;

/**
 * What a command comes to on a journal as it stands: one event to append, or a refusal.
 *
 * @returns the sealed event that follows the head; for a command sent twice in a row the event it had become
 */
export const decideBy = <
  Fact extends AnyFact,
  Request extends AnyFact,
  State extends { readonly head: Head<Fact> },
>(
  rules: Rules<State, Request, Fact>,
  state: State,
  command: CommandOf<Request>,
): Answer<JournalEvent<Fact>> => {
  const { head } = state;
  const again = sentAgain(head, command);
  if (again !== undefined) return answer(again);
  const refusal =
    elsewhere(rules.called, head, command) ??
    blank(command.actor, 'name', 'say who you are before you write in the journal') ??
    rules.troubleFor(state, command);
  if (refusal !== undefined) return { kind: 'refused', refusal };
  const fact = rules.factOf(command.request);
  const event = seal({
    id: command.id,
    job: command.job,
    sequence: head.sequence + 1,
    at: command.at,
    actor: command.actor,
    bench: command.bench,
    version: rules.facts.versionNow(fact.kind),
    fact,
    before: head.hash,
  });
  // What is written must be read for ever: an event that could not be is refused before it is one.
  return event.kind === 'refused' ? event : readEventOf(rules.facts, event.value);
};
