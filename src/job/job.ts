/** @module The state of a job: a pure function of its journal. */
import type { Reading } from '../measure/reading.ts';
import type { Sheet } from '../measure/sheet.ts';
import type { Refusal } from '../quantity/refusal.ts';
import type { Typed } from '../quantity/typed.ts';
import type { Fact, JobEvent, ShimCount } from './event.ts';

type FactOf<Kind extends Fact['kind']> = Omit<Extract<Fact, { kind: Kind }>, 'kind'>;

/** Who and when, beside what was noted. */
export interface Signed {
  readonly by: string;
  readonly at: string;
}

export interface StruckOut extends Signed {
  readonly reading: Reading;
  readonly why: string;
}

export interface FittedPack extends Signed {
  readonly shims: readonly Typed[];
}

/** Where the chain of hashes has come to. */
export interface Head {
  readonly id: string;
  readonly sequence: number;
  readonly hash: string;
  /** The last event whole, so that a command sent twice in a row is answered with it again. */
  readonly event?: JobEvent;
}

export type Booked = FactOf<'booked in'> & Signed;

export interface OpenJob {
  readonly kind: 'open';
  readonly head: Head;
  readonly booked: Booked;
  /** Engine type, instruments, readings that count, sizes found. */
  readonly sheet: Sheet;
  readonly takenBy: ReadonlyMap<string, Signed>;
  readonly struckOut: readonly StruckOut[];
  readonly doubtsAnswered: ReadonlyMap<string, Signed & { readonly why: string }>;
  readonly findings: readonly (FactOf<'finding noted'> & Signed)[];
  /** The loose shims in the box as they were last counted. */
  readonly shims: readonly ShimCount[];
  readonly plan?: FactOf<'plan chosen'> & Signed;
  readonly agreed?: FactOf<'owner agreed'> & Signed;
  readonly packs: ReadonlyMap<string, FittedPack>;
  /** The packs that were fitted when the box was last counted: their shims were not in the box. */
  readonly packsAtCount: ReadonlyMap<string, FittedPack>;
  readonly done: ReadonlyMap<string, Signed & { readonly note: string }>;
  readonly runLog: readonly (FactOf<'run step logged'> & Signed)[];
  readonly handedOver?: FactOf<'handed over'> & Signed;
}

export type Job =
  | { readonly kind: 'blank'; readonly head: Head }
  /** Its first event holds an engine type that this program cannot read: kept whole, shown as such. */
  | { readonly kind: 'unreadable'; readonly head: Head; readonly why: Refusal; readonly booked?: Booked }
  | OpenJob;
