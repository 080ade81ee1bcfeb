/** @module A small picture drawn for the tests: 48 × 32 pixels, with nothing said beside it. */
import { zlibSync } from 'fflate';
import { fourBytes, joined } from '../../src/picture/bytes.ts';
import { pngChunk, pngFile } from '../../src/picture/png.ts';

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
