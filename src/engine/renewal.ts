/** @module Renewal: whether another part takes the place of the old one. */
import type { Does } from './engine-type.ts';

export const renews = (does: Does): boolean => does === 'replace' || does === 'exchange';
