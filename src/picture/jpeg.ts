/** @module JPEG (ITU-T T.81): the segments that draw the picture are kept; what tells of place, person or camera goes. */
import { type Answer, answer } from '../quantity/refusal.ts';
import { joined, lettersOf, sameBytes, textAt, viewOf } from './bytes.ts';
import { asSeen, exifMark, type Orientation, orientationAlone, orientationIn } from './orientation.ts';
import { damaged, type PictureFile } from './picture-file.ts';

const begin = 0xd8;
const end = 0xd9;
const scan = 0xda;
/** Data of applications 0, 1, 2 and 14. */
const jfif = 0xe0;
const exif = 0xe1;
const profile = 0xe2;
const adobe = 0xee;

/** Frames C0 to CF but the tables (C4), the reserved one (C8) and arithmetic conditioning (CC) among them. */
const isFrame = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/** Tables, frames, scans, intervals: without any of these the picture is another. */
const drawsThePicture = (marker: number): boolean => marker >= 0xc0 && marker <= 0xdf;

/** A mark within the pixels: a stuffed byte, or one of the restarts D0 to D7. */
const isInScan = (next: number | undefined): boolean =>
  next === 0 || (next !== undefined && next >= 0xd0 && next <= 0xd7);

/** Where the pixels of a scan end: at the next marker, or with the file. */
const scanEnd = (bytes: Uint8Array, from: number): number => {
  for (let at = bytes.indexOf(0xff, from); at >= 0; at = bytes.indexOf(0xff, at + 1))
    if (!isInScan(bytes[at + 1])) return at;
  return bytes.length;
};

const segment = (marker: number, body: Uint8Array): Uint8Array => {
  const length = body.length + 2;
  return joined([Uint8Array.of(0xff, marker, length >> 8, length & 0xff), body]);
};

const begins = (body: Uint8Array, mark: Uint8Array): boolean =>
  sameBytes(body.subarray(0, mark.length), mark);

/** What is kept of the data of applications: density, colour profile, how Adobe counts colours. */
const ofApplication = (marker: number, body: Uint8Array): Uint8Array | undefined => {
  // Density only: a small picture of the picture may stand behind it.
  if (marker === jfif && begins(body, lettersOf('JFIF\0')) && body.length >= 14)
    return segment(jfif, joined([body.subarray(0, 12), Uint8Array.of(0, 0)]));
  if (marker === profile && begins(body, lettersOf('ICC_PROFILE\0'))) return segment(profile, body);
  if (marker === adobe && begins(body, lettersOf('Adobe')) && body.length >= 12)
    return segment(adobe, body.subarray(0, 12));
  return undefined;
};

interface Read {
  readonly parts: readonly Uint8Array[];
  readonly width: number;
  readonly height: number;
  readonly orientation: Orientation;
}

const read = (bytes: Uint8Array, where: string): Answer<Read> => {
  const view = viewOf(bytes);
  const parts: Uint8Array[] = [];
  let size: { readonly width: number; readonly height: number } | undefined;
  let orientation: Orientation = 1;
  let drawn = false;
  let at = 2;
  while (bytes[at + 1] !== end) {
    if (at + 4 > bytes.length) return damaged(where, 'it ends too early');
    if (bytes[at] !== 0xff) return damaged(where, 'bytes stand where none belong');
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const length = view.getUint16(at + 2);
    const after = at + 2 + length;
    if (length < 2 || after > bytes.length) return damaged(where, 'it ends too early');
    const body = bytes.subarray(at + 4, after);
    if (isFrame(marker)) {
      if (body.length < 6) return damaged(where, 'its frame is too short');
      size ??= { height: view.getUint16(at + 5), width: view.getUint16(at + 7) };
    }
    if (marker === exif && begins(body, exifMark) && orientation === 1)
      orientation = orientationIn(body.subarray(exifMark.length));
    at = after;
    if (marker === scan) {
      drawn = true;
      at = scanEnd(bytes, after);
      parts.push(segment(scan, body), bytes.subarray(after, at));
    } else if (drawsThePicture(marker)) parts.push(segment(marker, body));
    else {
      const kept = ofApplication(marker, body);
      if (kept) parts.push(kept);
    }
  }
  if (bytes[at] !== 0xff) return damaged(where, 'bytes stand where none belong');
  if (size === undefined || !drawn) return damaged(where, 'there is no picture in it');
  return answer({ parts, orientation, ...size });
};

export const isJpeg = (bytes: Uint8Array): boolean => textAt(bytes, 0, 3) === '\xff\xd8\xff';

/** Cameras append films and second pictures behind the end: whatever stands there goes too. */
export const cleanJpeg = (bytes: Uint8Array, where: string): Answer<PictureFile> => {
  const found = read(bytes, where);
  if (found.kind === 'refused') return found;
  const { parts, orientation, width, height } = found.value;
  const held = orientation === 1 ? [] : [segment(exif, joined([exifMark, orientationAlone(orientation)]))];
  // Where there is density data it stands first.
  const first = parts[0]?.[1] === jfif ? 1 : 0;
  return answer({
    bytes: joined([
      Uint8Array.of(0xff, begin),
      ...parts.slice(0, first),
      ...held,
      ...parts.slice(first),
      Uint8Array.of(0xff, end),
    ]),
    mediaType: 'image/jpeg',
    ...asSeen(width, height, orientation),
  });
};
