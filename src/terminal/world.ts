/** @module What a command may touch of the machine it runs on, so that tests can hand it another. */

export interface World {
  readonly folder: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Whether a person watches stderr, and so wants to see that long work goes on. */
  readonly watched: boolean;
  readonly standardInput: () => Promise<Uint8Array>;
  /** RFC 3339, UTC. */
  readonly now: () => string;
  /** UUIDv7. */
  readonly newId: () => string;
  /** What nobody can guess, letters and digits. */
  readonly newToken: () => string;
  readonly user: () => string;
  /** Settles when the person or the machine asks the program to end. */
  readonly stopped: () => Promise<void>;
}
