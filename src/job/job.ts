/** @module The state of a job: a pure function of its journal. */
import type { Signed } from '../journal/event.ts';
import type { Head } from '../journal/head.ts';
import type { Reading } from '../measure/reading.ts';
import type { Sheet } from '../measure/sheet.ts';
import type { SlipChance } from '../measure/slips/priors.ts';
import type { Refusal } from '../quantity/refusal.ts';
import type { Typed } from '../quantity/typed.ts';
import type { Fact, ShimCount } from './event.ts';
import type { Homing } from './home/homing.ts';
import type { Offer } from './offer.ts';
import type { RunFact } from './run-fact.ts';

type FactOf<Kind extends Fact['kind']> = Omit<Extract<Fact, { kind: Kind }>, 'kind'>;

export interface StruckOut extends Signed {
  readonly reading: Reading;
  readonly why: string;
}

/** A finding, by the id of its event, so that pictures can name it. */
export type NotedFinding = FactOf<'finding noted'> & Signed & { readonly id: string };

export type TakenPicture = FactOf<'picture taken'> & Signed & { readonly id: string };

export interface PictureStruckOut extends Signed {
  readonly picture: TakenPicture;
  readonly why: string;
}

export type SetScope = FactOf<'scope set'> & Signed;

export interface FittedPack extends Signed {
  readonly shims: readonly Typed[];
}

/** A sum of an operation, written down. */
export type NotedSum = FactOf<'sum noted'> & Signed;

export interface TriedPack extends FittedPack {
  readonly checks: readonly Reading[];
}

/** What the owner said; `ended` once it no longer counts. */
export type Agreement = FactOf<'owner agreed'> & Signed;

export interface AgreedBefore extends Agreement {
  readonly ended: Signed & { readonly why: string };
}

type SinceOrder = Extract<
  Fact,
  { kind: 'delivery received' | 'certificate noted' | 'line sent back' | 'line accepted' }
>;

export interface Order extends FactOf<'order placed'>, Signed {
  /** What came of it, oldest first. */
  readonly since: readonly (SinceOrder & Signed)[];
}

export type StockPart = Omit<FactOf<'part measured'>, 'component' | 'part'> &
  Signed & {
    /** Of the event: what its readings are named after. */
    readonly id: string;
  };

export interface AssignedParts extends Signed {
  readonly parts: readonly string[];
}

export type AnsweredAsk = FactOf<'ask answered'> & Signed;

export type DoneOperation = Omit<FactOf<'operation done'>, 'operation'> & Signed;

/** Something that begins or ends somebody's time at an operation. */
export interface WorkLogged extends Signed {
  readonly kind: 'begun' | 'stopped' | 'signed';
  readonly operation: string;
  /** Of one that was stopped. */
  readonly why?: string;
  readonly endedAt?: string;
}

export interface ReopenedOperation extends FactOf<'operation reopened'>, Signed {
  /** How it had been signed, and what rested on it with it: by the names of the operations. */
  readonly undone: ReadonlyMap<string, DoneOperation>;
}

/** Bolts of one joint pulled at one stage. */
export type TightenedStage = FactOf<'stage tightened'> & Signed;
/** What happened while it ran in, by the id of its event; an operation opened again may take it down. */
export type RunEvent = (RunFact | Extract<Fact, { kind: 'operation reopened' }>) &
  Signed & { readonly id: string };

export type Booked = FactOf<'booked in'> & Signed;

export interface OpenJob {
  readonly kind: 'open';
  readonly head: Head<Fact>;
  readonly booked: Booked;
  /** Engine type, instruments, readings that count, sizes found. */
  readonly sheet: Sheet;
  /** How far the overhaul was to go, each time that it was set, oldest first; none: the whole engine. */
  readonly scopes: readonly SetScope[];
  /** Those that differ from the usual ones. */
  readonly slipChances: readonly SlipChance[];
  readonly takenBy: ReadonlyMap<string, Signed>;
  readonly struckOut: readonly StruckOut[];
  readonly doubtsAnswered: ReadonlyMap<string, Signed & { readonly why: string }>;
  readonly findings: readonly NotedFinding[];
  /** Those that count, in the order in which they were taken. */
  readonly pictures: readonly TakenPicture[];
  readonly picturesStruckOut: readonly PictureStruckOut[];
  /** The loose shims in the box as they were last counted. */
  readonly shims: readonly ShimCount[];
  /** With how many orders had been placed before it was chosen. */
  readonly plan?: FactOf<'plan chosen'> & Signed & { readonly ordersBefore: number };
  readonly agreed?: Agreement;
  /** Agreements that no longer count, oldest first. */
  readonly agreedBefore: readonly AgreedBefore[];
  /** Every offer made, oldest first: number 1 is the first. */
  readonly offers: readonly Offer[];
  /** By our number, in the order in which they were placed. */
  readonly orders: ReadonlyMap<string, Order>;
  /** Readings by cell of parts that were machined, renewed or sent back since: they say nothing of what is here now. */
  readonly readBefore: ReadonlyMap<string, readonly Reading[]>;
  /** Loose parts in stock that were measured, by component and by the name on the part. */
  readonly stock: ReadonlyMap<string, ReadonlyMap<string, StockPart>>;
  /** Parts from stock that are to go to a place, by component and by place. */
  readonly assigned: ReadonlyMap<string, ReadonlyMap<string, AssignedParts>>;
  readonly packs: ReadonlyMap<string, FittedPack>;
  /** Packs that were fitted before, with what was then read of the pump's timing, by place, oldest first. */
  readonly packsTried: ReadonlyMap<string, readonly TriedPack[]>;
  /** The packs that were fitted when the box was last counted: their shims were not in the box. */
  readonly packsAtCount: ReadonlyMap<string, FittedPack>;
  /** Answers to what operations ask, by `answerKey`. */
  readonly answers: ReadonlyMap<string, AnsweredAsk>;
  /** Stages as they were noted, oldest first, by `jointKey`. */
  readonly tightened: ReadonlyMap<string, readonly TightenedStage[]>;
  readonly done: ReadonlyMap<string, DoneOperation>;
  /** What was signed, and undone again, oldest first. */
  readonly reopened: readonly ReopenedOperation[];
  /** Begun, stopped, signed: what time at operations is counted from, oldest first. */
  readonly workLog: readonly WorkLogged[];
  /** Sums of operations as they were last noted, by `sumKey`. */
  readonly sums: ReadonlyMap<string, NotedSum>;
  /** Parts confirmed home, strayed, decided on, oldest first. */
  readonly homing: readonly Homing[];
  readonly runLog: readonly (FactOf<'run step logged'> & Signed)[];
  /** Steps of the run-in, readings of all gauges, faults: in the order in which they came. */
  readonly running: readonly RunEvent[];
  readonly handedOver?: FactOf<'handed over'> & Signed;
}

export type Job =
  | { readonly kind: 'blank'; readonly head: Head<Fact> }
  /** Its first event holds an engine type that this program cannot read: kept whole, shown as such. */
  | {
      readonly kind: 'unreadable';
      readonly head: Head<Fact>;
      readonly why: Refusal;
      readonly booked?: Booked;
    }
  | OpenJob;
