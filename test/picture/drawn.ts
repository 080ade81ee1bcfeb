/** @module Small pictures to try the cleaner on: drawn for these tests, 48 × 32 pixels, with nothing said beside them. */
import { readFileSync } from 'node:fs';
import { drawnPng } from './drawn-png.ts';

const file = (name: string): Uint8Array => new Uint8Array(readFileSync(new URL(name, import.meta.url)));

export const drawnJpeg: Uint8Array = file('drawn.jpg');
export const drawnWebp: Uint8Array = file('drawn.webp');
export const drawnLosslessWebp: Uint8Array = file('drawn-lossless.webp');

/** Each kind of file by its ending. */
export const drawn = {
  jpg: drawnJpeg,
  png: drawnPng(),
  webp: drawnWebp,
  'lossless.webp': drawnLosslessWebp,
} as const;
