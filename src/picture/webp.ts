/** @module WebP (RFC 9649): the chunks that draw a still picture are kept; camera data and words go. */
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { fourBytes, joined, lettersOf, sameBytes, textAt, viewOf } from './bytes.ts';
import { asSeen, exifMark, type Orientation, orientationAlone, orientationIn } from './orientation.ts';
import { damaged, type PictureFile } from './picture-file.ts';

interface Chunk {
  readonly name: string;
  readonly body: Uint8Array;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

/** Bits of the extended header. */
const hasProfile = 0x20;
const hasAlpha = 0x10;
const hasCamera = 0x08;

const head = 12;

const chunksOf = (bytes: Uint8Array, where: string): Answer<readonly Chunk[]> => {
  const view = viewOf(bytes);
  const until = 8 + view.getUint32(4, true);
  if (until > bytes.length) return damaged(where, 'it ends too early');
  const chunks: Chunk[] = [];
  let at = head;
  while (at + 8 <= until) {
    const length = view.getUint32(at + 4, true);
    if (at + 8 + length > until) return damaged(where, 'it ends too early');
    chunks.push({ name: textAt(bytes, at, 4), body: bytes.subarray(at + 8, at + 8 + length) });
    // Chunks begin at even bytes.
    at += 8 + length + (length % 2);
  }
  return answer(chunks);
};

const chunk = ({ name, body }: Chunk): Uint8Array =>
  joined([lettersOf(name), fourBytes(body.length, true), body, new Uint8Array(body.length % 2)]);

const lossySize = (body: Uint8Array): Size | undefined => {
  if (body.length < 10 || textAt(body, 3, 3) !== '\x9d\x01\x2a') return undefined;
  const view = viewOf(body);
  return { width: view.getUint16(6, true) & 0x3fff, height: view.getUint16(8, true) & 0x3fff };
};

const losslessSize = (body: Uint8Array): Size | undefined => {
  if (body.length < 5 || body[0] !== 0x2f) return undefined;
  const bits = viewOf(body).getUint32(1, true);
  return { width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 };
};

const cameraOrientation = (camera: Chunk | undefined): Orientation => {
  if (!camera) return 1;
  const marked = sameBytes(camera.body.subarray(0, exifMark.length), exifMark);
  return orientationIn(marked ? camera.body.subarray(exifMark.length) : camera.body);
};

/** The header that says what follows it, with nothing said that is taken out. */
const extended = (size: Size, flags: number): Chunk => ({
  name: 'VP8X',
  body: joined([
    fourBytes(flags, true),
    fourBytes(size.width - 1, true).subarray(0, 3),
    fourBytes(size.height - 1, true).subarray(0, 3),
  ]),
});

export const isWebp = (bytes: Uint8Array): boolean =>
  bytes.length >= head && textAt(bytes, 0, 4) === 'RIFF' && textAt(bytes, 8, 4) === 'WEBP';

export const cleanWebp = (bytes: Uint8Array, where: string): Answer<PictureFile> => {
  const chunks = chunksOf(bytes, where);
  if (chunks.kind === 'refused') return chunks;
  const named = (name: string) => chunks.value.find((one) => one.name === name);
  if (named('ANIM') ?? named('ANMF'))
    return refuse('this is a moving picture', where, 'give a still one: JPEG, PNG or WebP');
  const pixels = named('VP8 ') ?? named('VP8L');
  const size = pixels && (pixels.name === 'VP8 ' ? lossySize(pixels.body) : losslessSize(pixels.body));
  if (!pixels || !size) return damaged(where, 'there is no picture in it');
  const orientation = cameraOrientation(named('EXIF'));
  const profile = named('ICCP');
  const alpha = pixels.name === 'VP8 ' ? named('ALPH') : undefined;
  const saidAlpha = ((named('VP8X')?.body[0] ?? 0) & hasAlpha) !== 0;
  const flags = (profile ? hasProfile : 0) | (saidAlpha ? hasAlpha : 0) | (orientation === 1 ? 0 : hasCamera);
  const parts = [
    ...(named('VP8X') || flags > 0 ? [extended(size, flags)] : []),
    ...(profile ? [profile] : []),
    ...(alpha ? [alpha] : []),
    pixels,
    ...(orientation === 1 ? [] : [{ name: 'EXIF', body: orientationAlone(orientation) }]),
  ].map(chunk);
  const body = joined([lettersOf('WEBP'), ...parts]);
  return answer({
    bytes: joined([lettersOf('RIFF'), fourBytes(body.length, true), body]),
    mediaType: 'image/webp',
    ...asSeen(size.width, size.height, orientation),
  });
};
