/** @module An event of any journal: a fact in its envelope, chained to the event before it. */

/** What happened, without when and who. */
export interface AnyFact {
  readonly kind: string;
}

export interface JournalEvent<Fact extends AnyFact = AnyFact> {
  /** UUIDv7, made by whoever sent the command, so that a repeated send is harmless. */
  readonly id: string;
  /**
   * The journal that it belongs to: a job by its id, or the workshop's register of instruments. Jobs had journals
   * first, and what is stored keeps its words for ever: hence the name.
   */
  readonly job: string;
  /** 1 for the first. */
  readonly sequence: number;
  /** RFC 3339, UTC. */
  readonly at: string;
  readonly actor: string;
  readonly bench: string;
  /** Version of this kind of event. */
  readonly version: number;
  readonly fact: Fact;
  /** Hash of the event before; 64 zeros for the first. */
  readonly before: string;
  /** SHA-256 over the canonical JSON (RFC 8785) of everything above. */
  readonly hash: string;
}

/** A request with who, when and where; the id becomes the event's. */
export interface CommandOf<Request extends AnyFact> {
  /** UUIDv7. */
  readonly id: string;
  /** The journal that it is for. */
  readonly job: string;
  readonly at: string;
  readonly actor: string;
  readonly bench: string;
  readonly request: Request;
}

/** Who and when, beside what was noted. */
export interface Signed {
  readonly by: string;
  readonly at: string;
}
