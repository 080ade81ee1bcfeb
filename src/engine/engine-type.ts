/** @module The engine type as the core uses it: places spelled out, figures in millimetres and radians, names resolved. */
import type { Hours, Millimetres } from '../quantity/brand.ts';
import type { Typed } from '../quantity/typed.ts';
import type { Fastener } from './fastener.ts';
import type { OperationSum } from './operation-sum.ts';
import type { PrintedPair } from './printed-pair.ts';
import type { PumpTiming } from './pump-timing.ts';
import type { RunIn } from './run-in.ts';
import type { ValveSetting } from './valve-setting.ts';

/** A place such as `main.2`. */
export type PlaceId = string;

export interface Place {
  readonly id: PlaceId;
  /** The kind, `main` in `main.2`. */
  readonly kind: string;
  /** 1 and up. */
  readonly number: number;
  /** For reading aloud: `main bearing 2`. */
  readonly title: string;
}

export interface PlaceKind {
  readonly name: string;
  readonly title: string;
  readonly count: number;
  readonly along: 'cylinder' | 'bearing' | 'engine';
  readonly drawn: string;
  /** The one part that has all of these places and comes off as a whole: `camshaft`. */
  readonly onePart?: string;
}

/** What a characteristic is a figure of. */
export type Quantity = 'length' | 'angle' | 'force' | 'torque' | 'pressure' | 'mass';

/** An interval open where a bound is missing; figures in the core's unit of their quantity, mm for a length. */
export interface Bounds {
  readonly least?: number;
  readonly greatest?: number;
}

export interface Limits {
  /** As made. */
  readonly new: Bounds;
  /** As may go back: the wear limit on the side to which it wears, the limit as made on the other. */
  readonly goesBack: Bounds;
  /** As the manual prints them, for the record: `new.least`, `new.greatest`, `wear.least`, `wear.greatest`. */
  readonly printed: Readonly<Record<string, Typed>>;
}

export type Expression =
  | { readonly kind: 'reading'; readonly of: string }
  | {
      readonly kind:
        | 'least'
        | 'greatest'
        | 'mean'
        | 'range over axes'
        | 'range over planes'
        | 'range over places'
        | 'range over neighbours';
      readonly of: string;
    }
  | { readonly kind: 'difference'; readonly from: Expression; readonly less: Expression }
  | { readonly kind: 'sum'; readonly of: readonly Expression[] }
  | { readonly kind: 'factor'; readonly factor: number; readonly of: Expression };

/** What a part is made of, as far as its expansion goes. */
export type Material = 'steel' | 'cast iron' | 'aluminium' | 'bronze';

export interface Characteristic {
  readonly name: string;
  readonly title: string;
  /** Kind of place. */
  readonly at: string;
  /** A length where it is left out. */
  readonly quantity?: Quantity;
  /** `['']` where the scheme names none, so that every characteristic has at least one cell. */
  readonly planes: readonly string[];
  readonly axes: readonly string[];
  readonly derived?: Expression;
  readonly wears: 'smaller' | 'larger' | 'either';
  /** Of a ring gap, the characteristic of the bore in which it is read. */
  readonly inBore?: string;
  readonly instrument?: string;
  readonly material?: Material;
  readonly limits?: Limits;
  readonly source?: string;
}

export interface SizeStep {
  readonly name: string;
  readonly limits: Limits;
}

/** How a part is tested for cracks. */
export type CrackTestBy = 'dye penetrant' | 'magnetic particles' | 'pressure';

/** What the machine shop is told beside the finished size; lengths in mm. */
export interface Machining {
  /** Roughness Ra. */
  readonly finish: Bounds;
  readonly fillet: Bounds;
  /** At the oil holes. */
  readonly chamfer: Bounds;
  /** As the manual prints them: `finish.greatest`, `fillet.least`, `fillet.greatest` … */
  readonly printed: Readonly<Record<string, Typed>>;
  readonly marks?: string;
  readonly also: readonly string[];
  readonly crackTest: { readonly before?: CrackTestBy; readonly after?: CrackTestBy };
  readonly source?: string;
}

/** A part that is used but once: a gasket, a seal, a lock tab, a stretch bolt, a cotter. */
export interface OneUse {
  readonly name: string;
  readonly title: string;
  /** Kind of place. */
  readonly at: string;
  /** How many at each place. */
  readonly each: number;
  readonly supplier: string;
  /** Of one piece, in hundredths. */
  readonly cents: number;
  readonly days: number;
  /** Operations after which it may not be used again. */
  readonly disturbedBy: readonly string[];
  /** Components that need a new one when they are machined or renewed. */
  readonly renewedWith: readonly string[];
  readonly source?: string;
}

/** Metal that machining takes from: the wall behind a bore, the hardened depth of a journal. */
export interface Layer {
  /** The characteristic by which it is measured as found. */
  readonly of?: string;
  /** Its depth at the size as made. */
  readonly asMade?: Millimetres;
  readonly least: Millimetres;
}

/** A grade that a part is made in, with the values for which it is taken. */
export interface Grade {
  readonly name: string;
  readonly when: Bounds;
}

/** How loose parts of a component are measured and fitted to places by their sizes. */
export interface Fitting {
  /** What is measured on the loose part. */
  readonly measured: string;
  readonly instrument?: string;
  readonly material?: Material;
  /** Characteristic: what there is without the part. */
  readonly room: string;
  /** Characteristic whose limits as made the clearance keeps to. */
  readonly clearance: string;
  readonly goes: 'inside' | 'outside';
  /** The halves of a place, one part of each; `''` where they are alike. One or two. */
  readonly takes: readonly string[];
}

export interface Component {
  readonly name: string;
  readonly title: string;
  readonly at: string;
  readonly together: boolean;
  readonly judgedBy: readonly string[];
  readonly putBack: boolean;
  /** What a new or machined one may be counted on for: nine in ten last longer. */
  readonly life: Hours;
  /** What half of them outlast, where the manual or the workshop knows it. */
  readonly lifeMiddle?: Hours;
  /** By what share the rate of its wear varies from one stretch of running to the next, where it is known. */
  readonly wearVaries?: number;
  readonly sizes?: {
    readonly of: string;
    readonly cleanUp: Millimetres;
    readonly steps: readonly SizeStep[];
    readonly wall?: Layer;
    readonly case?: Layer;
    /** The characteristic that must hold its limits before it is ground. */
    readonly fillet?: string;
    /** Within what hardness a journal that was overheated may still be ground. */
    readonly hardness?: { readonly scale: string } & Bounds;
    /** Over its life; each step up to the one it is found at counts as one. */
    readonly mostTimes?: number;
  };
  readonly machining?: Machining;
  /** Characteristics measured when it comes from a supplier, where the file names them. */
  readonly fitting?: Fitting;
  readonly arrival?: readonly string[];
  /** Chosen by the least or greatest value of a characteristic over all places; of two that fit, the later. */
  readonly grades?: {
    readonly of: string;
    readonly takes: 'least' | 'greatest';
    readonly steps: readonly Grade[];
  };
  /** Whether a used one goes back to its own place only. */
  readonly stays?: boolean;
  /** Whether the tag of its place hangs on it: once it is renewed, the tag counts no more. */
  readonly tagged?: boolean;
}

/** What may be done with a component. */
export type Does = 'put back' | 'machine' | 'sleeve' | 'build up' | 'replace' | 'exchange';

export interface Offer {
  readonly component: string;
  readonly does: Exclude<Does, 'put back'>;
  readonly size: string;
  readonly supplier: string;
  /** Hundredths of the shop's currency, so that sums are exact. */
  readonly cents: number;
  readonly per: 'set' | 'place';
  readonly setUp?: { readonly name: string; readonly cents: number };
  /** What each costs from so many on, fewest first. */
  readonly quantity?: readonly { readonly from: number; readonly cents: number }[];
  /** On the old part, in hundredths, given back for a sound one. */
  readonly deposit?: number;
  readonly days: number;
  /** Hours expected of it, where they differ from the component's. */
  readonly life?: Hours;
  /** Of ways that exclude one another. */
  readonly way?: string;
  /** Of a sleeve: the bore that takes it. */
  readonly boredTo?: Millimetres;
  /** Between what masses the new part lies. */
  readonly mass?: Bounds;
}

export type Coupling =
  | { readonly kind: 'same size'; readonly leader: string; readonly follower: string }
  | {
      readonly kind: 'renew with';
      readonly if: string;
      readonly is: readonly Does[];
      readonly renew: string;
    }
  /** Anything done but putting back, or the operation being done, renews the other. */
  | { readonly kind: 'disturbed'; readonly if?: string; readonly by?: string; readonly renew: string }
  /** Made to one another: renewed both or neither. */
  | { readonly kind: 'matched'; readonly components: readonly [string, string] }
  | { readonly kind: 'either or'; readonly ways: readonly string[] }
  | {
      readonly kind: 'balance';
      readonly of: string;
      /** The characteristic that holds the mass of each as found. */
      readonly mass?: string;
      readonly most: number;
    };

/** What an operation asks for before it is signed: as found, counted, proved by looking, seen by a second person. */
export interface Ask {
  readonly name: string;
  readonly ask: string;
  readonly answer: 'seen' | 'words' | 'count' | 'reading' | 'picture';
  /** Of a reading: the characteristic. */
  readonly reads?: string;
  /** Once at every place of the operation. */
  readonly each: boolean;
  /** Of a count: the one that it must come to. */
  readonly like?: { readonly operation: string; readonly ask: string };
  /** By another than whoever signs the operation. */
  readonly secondPerson: boolean;
}

export interface Operation {
  readonly name: string;
  readonly title: string;
  readonly phase: 'strip' | 'build' | 'set' | 'run';
  readonly at?: string;
  readonly after: readonly string[];
  /** Characteristics to be proved before it is done; none: no hold point. */
  readonly needs: readonly string[];
  /** What it needs is read anew after what comes before it, and after its own joints are tightened. */
  readonly readAgain: boolean;
  /** What it takes off: kinds of place, or names of their own such as `sump`. */
  readonly removes: readonly string[];
  /** What it fits again, by the same names. */
  readonly fits: readonly string[];
  /** Parts used but once that go in new with it. */
  readonly renews: readonly string[];
  /** Characteristics and kinds of place that nobody comes to any more once it is done. */
  readonly covers: readonly string[];
  /** Fasteners that it tightens. */
  readonly tightens: readonly string[];
  /** How the engine must lie on its stand; any way where it is left out. */
  readonly stand?: string;
  /** Special tools. */
  readonly tools: readonly string[];
  readonly people: number;
  readonly minutes?: number;
  readonly asks: readonly Ask[];
  /** Nobody overrules the order of work before it. */
  readonly gate: boolean;
  /** What is broken or buried where it is done before one of those under `after`, by their names. */
  readonly breaks: ReadonlyMap<string, string>;
  readonly cautions: readonly string[];
  /** Done within it, in their order. */
  readonly sums: readonly OperationSum[];
}

/** A critical figure that somebody else, typing it in unseen, read otherwise. */
export interface Difference {
  /** The figure's keys in the file, joined by slashes. */
  readonly at: string;
  readonly reads: string;
  readonly by: string;
  readonly on: string;
}

export interface EngineType {
  readonly id: string;
  readonly title: string;
  readonly version: number;
  readonly source: string;
  /** Who typed the figures in from the manual. */
  readonly entered?: { readonly by: string; readonly on: string };
  readonly checked?: { readonly by: string; readonly on: string };
  /** Figures that a second person read otherwise in the manual. */
  readonly differs: readonly Difference[];
  readonly cylinders: number;
  readonly layout: 'in line' | 'vee';
  readonly stroke: Millimetres;
  readonly rod: Millimetres;
  readonly pinOffset: Millimetres;
  readonly firingOrder: readonly number[];
  readonly placeKinds: ReadonlyMap<string, PlaceKind>;
  readonly places: ReadonlyMap<PlaceId, Place>;
  readonly characteristics: ReadonlyMap<string, Characteristic>;
  readonly components: ReadonlyMap<string, Component>;
  readonly offers: readonly Offer[];
  readonly couplings: readonly Coupling[];
  readonly oneUse: ReadonlyMap<string, OneUse>;
  readonly fasteners: ReadonlyMap<string, Fastener>;
  readonly operations: ReadonlyMap<string, Operation>;
  readonly pumpTiming?: PumpTiming;
  readonly runIn?: RunIn;
  readonly valveSetting?: ValveSetting;
  /** Figures that the manual prints in two units. */
  readonly printedPairs: readonly PrintedPair[];
}
