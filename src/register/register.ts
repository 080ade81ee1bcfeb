/** @module The register as it stands: a pure function of its journal. */
import type { Signed } from '../journal/event.ts';
import type { Head } from '../journal/head.ts';
import type { Instrument } from '../measure/instrument.ts';
import type { RegisterFact } from './event.ts';
import type { WorkshopSays } from './workshop.ts';

/** What is written of one instrument. */
export type Noted = Extract<RegisterFact, { kind: `instrument ${string}` }>;
export type NotedOf<Kind extends Noted['kind']> = Extract<Noted, { kind: Kind }>;

export interface Entry extends Signed {
  readonly id: string;
  readonly fact: Noted;
  readonly struckOut?: Signed & { readonly why: string };
}

export interface Registered {
  /** As it stands: figures as last entered, with what was last found of it. */
  readonly instrument: Instrument;
  /** Oldest first. */
  readonly history: readonly Entry[];
  readonly withdrawn?: Signed & { readonly why: string };
}

/** What the shop wrote of how often slips happen. */
export type SlipFact = Extract<RegisterFact, { kind: `slip chance ${string}` }>;

export interface SlipEntry extends Signed {
  readonly id: string;
  readonly fact: SlipFact;
}

export interface Register {
  readonly head: Head<RegisterFact>;
  /** As it was last described. */
  readonly workshop?: WorkshopSays & Signed;
  readonly instruments: ReadonlyMap<string, Registered>;
  /** Oldest first; the last one of a slip holds. */
  readonly slipChances: readonly SlipEntry[];
}

/** Instruments that may be taken to a bench, by name. */
export const inUse = ({ instruments }: Register): readonly Instrument[] =>
  [...instruments.values()]
    .filter(({ withdrawn }) => withdrawn === undefined)
    .map(({ instrument }) => instrument)
    .sort((a, b) => (a.name < b.name ? -1 : 1));
