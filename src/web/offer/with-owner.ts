/** @module Whether an offer lies with the owner at this moment, waiting for an answer. */
import { type Offer, offerStanding } from '../../job/offer.ts';

export const isWithOwner = ({ offers }: { readonly offers: readonly Offer[] }): boolean => {
  const last = offers.at(-1);
  return last !== undefined && offerStanding(last, new Date().toISOString()) === 'open';
};
