/** @module Where an instrument's sheet stands, and which day it is on this bench. */

export const instrumentAddress = (name: string): string => `/instruments/${encodeURIComponent(name)}`;

/** In UTC, as the journals count days. */
export const today = (): string => new Date().toISOString().slice(0, 10);
