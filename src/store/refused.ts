/** @module A store's refusal on its way up: what every promise of a store is rejected with, in words for the fitter. */
import { type Refusal, refusalText } from '../quantity/refusal.ts';

export class Refused extends Error {
  readonly refusal: Refusal;
  constructor(refusal: Refusal, cause?: unknown) {
    super(refusalText(refusal), { cause });
    this.name = 'Refused';
    this.refusal = refusal;
  }
}
