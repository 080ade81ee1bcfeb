/** @module Small pictures to try the cleaner on: drawn for these tests, 48 × 32 pixels, with nothing said beside them. */
import { readFileSync } from 'node:fs';
import { zlibSync } from 'fflate';
import { fourBytes, joined } from '../../src/picture/bytes.ts';
import { pngChunk, pngFile } from '../../src/picture/png.ts';

const file = (name: string): Uint8Array => new Uint8Array(readFileSync(new URL(name, import.meta.url)));

const width = 48;
const height = 32;

/** Shades of grey, one byte a pixel; `shade` tells pictures apart. */
export const drawnPng = (shade = 0): Uint8Array => {
  const rows = Array.from({ length: height }, (_, y) =>
    Uint8Array.from({ length: width + 1 }, (__, x) => (x === 0 ? 0 : (x * 5 + y * 3 + shade) % 256)),
  );
  return pngFile([
    pngChunk('IHDR', joined([fourBytes(width), fourBytes(height), Uint8Array.of(8, 0, 0, 0, 0)])),
    pngChunk('IDAT', zlibSync(joined(rows))),
    pngChunk('IEND', new Uint8Array()),
  ]);
};

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
