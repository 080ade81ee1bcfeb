/** @module An offer to the owner: plans side by side with their price, and how it stands at a time. */
import type { Signed } from '../journal/event.ts';
import type { Typed } from '../quantity/typed.ts';
import type { Tax } from '../register/workshop.ts';

/** One line of a chosen plan, by the ids that the plan gave. */
export interface Choice {
  readonly slot: string;
  readonly option: string;
  /** In words, as it was shown when it was chosen. */
  readonly says: string;
  readonly cents: number;
}

/** The same in the owner's words. */
export interface OfferedChoice extends Choice {
  /** What is done: `goes back as it is`. */
  readonly what: string;
  readonly why: string;
}

export interface LabourLine {
  readonly says: string;
  readonly cents: number;
  /** Where it is charged by the hour: how long, and hundredths an hour. */
  readonly hours?: Typed;
  readonly rate?: number;
}

/** So many of a part that is used but once: a gasket, a seal, a lock tab. */
export interface OneUseLine {
  readonly says: string;
  readonly count: number;
  /** For all of them. */
  readonly cents: number;
}

export interface OfferedPlan {
  /** `A`, `B` or `C`, as the owner answers. */
  readonly name: string;
  /** What sets it apart: `longest life`. */
  readonly title: string;
  readonly choices: readonly OfferedChoice[];
  /** Parts and machining, with what is paid once; without labour, before tax. */
  readonly cents: number;
  readonly days: number;
  readonly hours: number;
  readonly labour: readonly LabourLine[];
  /** Charged beside parts and machining; missing in an offer that was made before they were priced. */
  readonly oneUse?: readonly OneUseLine[];
}

/** All that the owner is told: it stays as it was made, whatever the workshop says of itself later. */
export interface OfferMade {
  /** 1 for the first of the job. */
  readonly number: number;
  readonly shop: { readonly name: string; readonly address: readonly string[] };
  readonly plans: readonly OfferedPlan[];
  readonly taxes: readonly Tax[];
  readonly currency: string;
  /** The last day on which it can be accepted. */
  readonly validUntil: string;
  readonly terms: string;
  /** What its link ends in: whoever has it may accept. */
  readonly token: string;
}

export interface Offer extends OfferMade, Signed {
  readonly accepted?: Signed & { readonly plan: string };
  readonly superseded?: Signed & { readonly why: string };
}

export type OfferStanding = 'open' | 'accepted' | 'superseded' | 'expired';

/** @param at  a day or a moment; the last day still counts */
export const offerStanding = ({ accepted, superseded, validUntil }: Offer, at: string): OfferStanding => {
  if (superseded !== undefined) return 'superseded';
  if (accepted !== undefined) return 'accepted';
  return at.slice(0, 10) > validUntil ? 'expired' : 'open';
};

/** The offer that the owner may be looking at: the last one, where nothing has taken its place. */
export const standingOffer = ({ offers }: { readonly offers: readonly Offer[] }): Offer | undefined => {
  const last = offers.at(-1);
  return last?.superseded === undefined ? last : undefined;
};

/** Whether two plans decide the same. */
export const sameChoices = (one: readonly Choice[], other: readonly Choice[]): boolean => {
  const options = new Map(other.map(({ slot, option }) => [slot, option]));
  return one.length === other.length && one.every(({ slot, option }) => options.get(slot) === option);
};
