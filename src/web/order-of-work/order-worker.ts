/** @module Reckons an order of work off the page, however many operations there are. */
import type { Answer } from '../../quantity/refusal.ts';
import { type FewestChanges, fewestChanges } from '../../work/fewest-changes.ts';
import type { Precedence } from '../../work/precedence.ts';
import { type SideBySide, sideBySide } from '../../work/side-by-side.ts';

export type OrderAsked =
  | { readonly kind: 'fewest changes'; readonly work: Precedence }
  | { readonly kind: 'side by side'; readonly work: Precedence; readonly fitters: number };

export type OrderFound =
  | { readonly kind: 'fewest changes'; readonly found: FewestChanges }
  | { readonly kind: 'side by side'; readonly found: Answer<SideBySide> };

const found = (asked: OrderAsked): OrderFound => {
  switch (asked.kind) {
    case 'fewest changes':
      return { kind: asked.kind, found: fewestChanges(asked.work) };
    case 'side by side':
      return { kind: asked.kind, found: sideBySide(asked.work, asked.fitters) };
    default:
      return asked satisfies never;
  }
};

addEventListener('message', ({ data }: MessageEvent<OrderAsked>) => postMessage(found(data)));
