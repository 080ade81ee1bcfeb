/** @module PNG (ISO/IEC 15948): the chunks that draw the picture are kept; words, times and camera data go. */
import { type Answer, answer } from '../quantity/refusal.ts';
import { fourBytes, joined, lettersOf, textAt, viewOf } from './bytes.ts';
import { asSeen, type Orientation, orientationAlone, orientationIn } from './orientation.ts';
import { damaged, type PictureFile } from './picture-file.ts';

const signature = '\x89PNG\r\n\x1a\n';

/** Size, palette, pixels, clearness, colours, density. */
const kept = new Set([
  ...['IHDR', 'PLTE', 'IDAT', 'IEND', 'tRNS'],
  ...['gAMA', 'cHRM', 'sRGB', 'iCCP', 'cICP', 'sBIT', 'bKGD', 'pHYs'],
]);

/** CRC-32 over bytes, by ISO/IEC 15948, annex D. */
const checkSum = (bytes: Uint8Array): number => {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = sum & 1 ? (sum >>> 1) ^ 0xedb88320 : sum >>> 1;
  }
  return (sum ^ 0xffffffff) >>> 0;
};

/** A chunk with its length before it and its check sum behind it. */
export const pngChunk = (name: string, body: Uint8Array): Uint8Array => {
  const summed = joined([lettersOf(name), body]);
  return joined([fourBytes(body.length), summed, fourBytes(checkSum(summed))]);
};

/** A file of chunks that were put together before. */
export const pngFile = (chunks: readonly Uint8Array[]): Uint8Array =>
  joined([lettersOf(signature), ...chunks]);

interface Chunk {
  readonly name: string;
  readonly body: Uint8Array;
  readonly whole: Uint8Array;
}

/** Chunks up to the last one that counts; whatever stands behind it goes too. */
const chunksOf = (bytes: Uint8Array, where: string): Answer<readonly Chunk[]> => {
  const view = viewOf(bytes);
  const chunks: Chunk[] = [];
  let at = signature.length;
  while (chunks.at(-1)?.name !== 'IEND') {
    if (at + 12 > bytes.length) return damaged(where, 'it ends too early');
    const length = view.getUint32(at);
    if (at + 12 + length > bytes.length) return damaged(where, 'it ends too early');
    const whole = bytes.subarray(at, at + 12 + length);
    chunks.push({ name: textAt(whole, 4, 4), body: whole.subarray(8, 8 + length), whole });
    at += whole.length;
  }
  return answer(chunks);
};

export const isPng = (bytes: Uint8Array): boolean => textAt(bytes, 0, signature.length) === signature;

export const cleanPng = (bytes: Uint8Array, where: string): Answer<PictureFile> => {
  const chunks = chunksOf(bytes, where);
  if (chunks.kind === 'refused') return chunks;
  const [header] = chunks.value;
  if (
    header?.name !== 'IHDR' ||
    header.body.length !== 13 ||
    !chunks.value.some(({ name }) => name === 'IDAT')
  )
    return damaged(where, 'there is no picture in it');
  const camera = chunks.value.find(({ name }) => name === 'eXIf');
  const orientation: Orientation = camera ? orientationIn(camera.body) : 1;
  const [first = header.whole, ...others] = chunks.value
    .filter(({ name }) => kept.has(name))
    .map(({ whole }) => whole);
  const held = orientation === 1 ? [] : [pngChunk('eXIf', orientationAlone(orientation))];
  const view = viewOf(header.body);
  return answer({
    bytes: pngFile([first, ...held, ...others]),
    mediaType: 'image/png',
    ...asSeen(view.getUint32(0), view.getUint32(4), orientation),
  });
};
