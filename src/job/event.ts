/** @module The events of a job: what happened, in the order in which it happened. They are only ever added. */
import type { CrackTestBy, Does } from '../engine/engine-type.ts';
import type { JournalEvent } from '../journal/event.ts';
import type { DecisionRule } from '../measure/decision-rule.ts';
import type { FormerOverhaul } from '../measure/former-overhaul.ts';
import type { Instrument } from '../measure/instrument.ts';
import type { Cell } from '../measure/reading.ts';
import type { SlipChance } from '../measure/slips/priors.ts';
import type { Picture } from '../picture/picture.ts';
import type { Typed } from '../quantity/typed.ts';
import type { Choice, OfferMade } from './offer.ts';
import type { RunFact } from './run-fact.ts';

export type FindingKind = 'scored' | 'pitted' | 'blued' | 'cracked' | 'corroded' | 'worn' | 'sound';

/** How bad a finding is. */
export type FindingGrade = 'slight' | 'marked' | 'severe';

/** How a part was tested for cracks, and what it showed. */
export interface CrackTest {
  readonly by: CrackTestBy;
  readonly showed: 'no crack' | 'a crack';
}

/** A number of shims of one thickness. */
export interface ShimCount {
  readonly thickness: Typed;
  readonly count: number;
}

/** One line of an order, by the id that the order list gave it. */
export interface OrderedLine {
  readonly line: string;
  /** In words, as it was ordered. */
  readonly says: string;
  /** What is done with which component, to which size; left out for parts that are used but once. */
  readonly does?: Exclude<Does, 'put back'>;
  readonly component?: string;
  readonly size?: string;
  readonly places: readonly string[];
  readonly count: number;
  /** For all of them. */
  readonly cents: number;
}

/** What is paid beside the lines: setting up; below zero what is taken off for a quantity. */
export interface Charge {
  readonly says: string;
  readonly cents: number;
}

/** What a picture shows, each part by its name; none of them for the engine as a whole. */
export interface PictureOf {
  readonly place?: string;
  readonly operation?: string;
  /** The finding that it was taken of, by the id of its event. */
  readonly finding?: string;
}

/** One figure read on a loose part. */
export interface PartReading {
  readonly typed: Typed;
  readonly instrument: string;
  readonly temperature?: Typed;
  readonly instrumentTemperature?: Typed;
}

/** The parts from stock at one place, in the order of the halves that it takes. */
interface PlacedParts {
  readonly place: string;
  readonly parts: readonly string[];
}

/** What makes a torque wrench longer: its figures as measured. */
export interface WrenchAdapter {
  /** From the middle of the square to the middle of the hand. */
  readonly wrench: Typed;
  /** From the square to the middle of the bolt. */
  readonly adapter: Typed;
  /** Off the line of the wrench; straight on where it is left out. */
  readonly angle?: Typed;
}

/** Somebody's word that an operation be done though something was lacking. */
export interface Overruled {
  /** Who answers for it. */
  readonly by: string;
  readonly why: string;
  /** What was lacking, as it was said. */
  readonly lacking: readonly string[];
}

/** What went into a sum, by the sum's own key. */
export interface NotedInput {
  readonly key: string;
  readonly text: string;
  /** Where the job had it from; left out where the fitter typed it. */
  readonly from?: string;
}

/** What came of a sum: `0.0510 ± 0.0055 mm`. */
export interface NotedResult {
  readonly key: string;
  readonly text: string;
}

/** What happened, without when and who. */
export type Fact =
  | {
      readonly kind: 'booked in';
      readonly number: string;
      /** The engine type file whole, as it stood: the job is pinned to it. */
      readonly engineType: string;
      /** Whose bench it is done on, for the head of the record. */
      readonly shop?: string;
      readonly owner: string;
      /** The engine's plate or serial number, as found. */
      readonly plate: string;
      readonly hoursRun: Typed;
      readonly complaint: string;
      readonly currency: string;
      /** Probability of conformance that the shop's rule asks for. */
      readonly conformance: number;
      /** The shop's rule where it is another than ISO 14253-1 with that probability. */
      readonly rule?: DecisionRule;
      readonly hoursWanted?: Typed;
      readonly daysWanted?: number;
    }
  /** The chances of slips that are others than usual in this shop, all of them; none: they are as usual. */
  | { readonly kind: 'slip chances brought'; readonly chances: readonly SlipChance[] }
  /** How the engine was left when it was last in the shop. */
  | ({ readonly kind: 'former overhaul brought' } & FormerOverhaul)
  | {
      /** How far this overhaul goes; nothing to reach and nothing as well: the whole engine, as where none was set. */
      readonly kind: 'scope set';
      /** Places or kinds of place. */
      readonly reach: readonly string[];
      /** Operations that are done as well. */
      readonly also?: readonly string[];
      /** Why, and who wanted it so. */
      readonly says: string;
    }
  | { readonly kind: 'instrument brought'; readonly instrument: Instrument }
  | {
      readonly kind: 'reading taken';
      readonly cell: Cell;
      readonly typed: Typed;
      readonly instrument: string;
      readonly temperature?: Typed;
      readonly instrumentTemperature?: Typed;
    }
  | { readonly kind: 'reading struck out'; readonly reading: string; readonly why: string }
  | { readonly kind: 'doubt answered'; readonly doubt: string; readonly why: string }
  | {
      readonly kind: 'size found';
      readonly component: string;
      /** Left out where all its places are of that size. */
      readonly place?: string;
      readonly size: string;
    }
  | {
      readonly kind: 'finding noted';
      readonly place: string;
      readonly component: string;
      readonly finding: FindingKind;
      readonly mayGoBack: boolean;
      readonly says: string;
      readonly grade?: FindingGrade;
      readonly crackTest?: CrackTest;
      /** As read, with its scale: `52 HRC`. */
      readonly hardness?: string;
    }
  | {
      readonly kind: 'picture taken';
      readonly picture: Picture;
      readonly of: PictureOf;
      readonly says: string;
    }
  | { readonly kind: 'picture struck out'; readonly picture: string; readonly why: string }
  | { readonly kind: 'shims counted'; readonly shims: readonly ShimCount[] }
  | {
      readonly kind: 'plan chosen';
      readonly choices: readonly Choice[];
      readonly cents: number;
      readonly days: number;
      readonly hours: number;
    }
  | ({ readonly kind: 'offer made' } & OfferMade)
  | {
      readonly kind: 'owner agreed';
      readonly name: string;
      readonly how: string;
      /** Which plan of which offer, where it was one of an offer; else the plan chosen. */
      readonly offer?: {
        readonly number: number;
        readonly plan: string;
        /** Accepted by the owner at the offer's link, or told to the shop and noted. */
        readonly by: 'link' | 'note';
      };
    }
  | {
      readonly kind: 'order placed';
      /** Our number for it. */
      readonly order: string;
      readonly supplier: string;
      readonly lines: readonly OrderedLine[];
      readonly charges: readonly Charge[];
      /** The day by which all of it is to be here: 2026-03-09. */
      readonly due: string;
      readonly note: string;
    }
  | {
      readonly kind: 'delivery received';
      readonly order: string;
      readonly lines: readonly { readonly line: string; readonly count: number }[];
      readonly note: string;
    }
  | {
      readonly kind: 'certificate noted';
      readonly order: string;
      readonly line: string;
      /** Its number, or what the machine shop wrote. */
      readonly certificate: string;
      readonly crackTest?: CrackTest;
    }
  | {
      readonly kind: 'line sent back';
      readonly order: string;
      readonly line: string;
      readonly count: number;
      /** Where what is sent back would have gone: what was read of it there no longer counts. */
      readonly places: readonly string[];
      readonly why: string;
    }
  | { readonly kind: 'line accepted'; readonly order: string; readonly line: string; readonly why: string }
  | {
      /** A part in stock, under the name written on it; measured anew, what was read before no longer counts. */
      readonly kind: 'part measured';
      readonly component: string;
      readonly part: string;
      readonly size: string;
      /** Where the two parts of a place differ: which it is. */
      readonly half?: string;
      readonly readings: readonly PartReading[];
    }
  | {
      readonly kind: 'part set aside';
      readonly component: string;
      readonly part: string;
      readonly why: string;
    }
  | {
      /** For the places named; what was to go there before is loose again. */
      readonly kind: 'parts assigned';
      readonly component: string;
      readonly places: readonly PlacedParts[];
    }
  | { readonly kind: 'pack fitted'; readonly place: string; readonly shims: readonly Typed[] }
  | {
      /** What an operation asks for, answered; again, the last one counts. */
      readonly kind: 'ask answered';
      readonly operation: string;
      readonly ask: string;
      /** Where it is asked once a place. */
      readonly place?: string;
      /** As it should be. */
      readonly good: boolean;
      readonly says: string;
      readonly count?: number;
    }
  | {
      readonly kind: 'operation done';
      readonly operation: string;
      readonly note: string;
      readonly overruled?: Overruled;
    }
  | {
      /** Bolts of one joint pulled at one stage: all of them, or as many as were done before hands were called away. */
      readonly kind: 'stage tightened';
      readonly operation: string;
      readonly fastener: string;
      readonly place: string;
      /** 0 and up. */
      readonly stage: number;
      /** By name, in the order in which they were pulled. */
      readonly bolts: readonly string[];
      /** As the threads were when they were pulled. */
      readonly threadState: 'dry' | 'oiled' | 'compound';
      /** The torque wrench, by its name in the job. */
      readonly wrench?: string;
      readonly adapter?: WrenchAdapter;
      /** Of bolts that stretch for good. */
      readonly boltsAre?: 'new' | 'used';
      /** Of used ones: the longest of them, as measured. */
      readonly longest?: Typed;
      /** Who answers for another order than the one prescribed. */
      readonly overruled?: { readonly by: string; readonly why: string };
      readonly note: string;
    }
  /** It is undone again, and with it all that rested on it. */
  /** Somebody sets to it: their time counts until they stop, go over to another, or it is signed. */
  | { readonly kind: 'work begun'; readonly operation: string }
  | {
      readonly kind: 'work stopped';
      readonly operation: string;
      /** What interrupted it. */
      readonly why: string;
      /** Where stopping was forgotten: when the hands had left it, RFC 3339, UTC. */
      readonly endedAt?: string;
    }
  | { readonly kind: 'operation reopened'; readonly operation: string; readonly why: string }
  /** Its tag was confirmed at its place, as it was put there. */
  | {
      readonly kind: 'part homed';
      readonly part: string;
      readonly place: string;
      readonly operation?: string;
    }
  | {
      /** Parts by their tags, of which nobody knows any more where each belongs. */
      readonly kind: 'part strayed';
      readonly parts: readonly string[];
      readonly how: 'lost' | 'unmarked' | 'swapped';
      readonly says: string;
    }
  | {
      readonly kind: 'home decided';
      readonly part: string;
      /** Left out where it does not come back, and another part goes to its place. */
      readonly place?: string;
      readonly decidedBy: string;
      readonly why: string;
    }
  | {
      /** A sum of an operation, with all that it was reckoned from and all that came of it, as shown. */
      readonly kind: 'sum noted';
      readonly operation: string;
      readonly sum: string;
      readonly place?: string;
      readonly inputs: readonly NotedInput[];
      readonly found: readonly NotedResult[];
      /** What was fitted or done by it. */
      readonly fitted?: string;
      readonly note: string;
    }
  | {
      readonly kind: 'run step logged';
      readonly speed: Typed;
      readonly load: Typed;
      readonly minutes: number;
      readonly oilPressure?: Typed;
      readonly waterTemperature?: Typed;
      readonly note: string;
    }
  | RunFact
  | { readonly kind: 'handed over'; readonly to: string; readonly note: string };

export type FactKind = Fact['kind'];

/** A fact with its envelope, chained to the event before it. */
export type JobEvent = JournalEvent<Fact>;
