/** @module Sizes that a component comes in: as made, its steps, its grades. */
import type { Component } from './engine-type.ts';

/** In the order in which metal is taken off, grades thinnest first; grades have no size as made. */
export const sizesOffered = (component: Component | undefined): readonly string[] => [
  ...(component?.grades ? [] : ['standard']),
  ...(component?.sizes?.steps ?? []).map(({ name }) => name),
  ...(component?.grades?.steps ?? []).map(({ name }) => name),
];
