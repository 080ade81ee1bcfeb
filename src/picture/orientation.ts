/** @module Which way up a picture is held (Exif 2.32, tag 274): the one thing kept of what a camera writes beside it. */
import { joined, lettersOf, textAt, viewOf } from './bytes.ts';

/** 1 as it lies in the file; 2 to 8 mirrored, turned, or both. */
export type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

const orientations: readonly Orientation[] = [1, 2, 3, 4, 5, 6, 7, 8];

const tag = 0x0112;
const entryBytes = 12;
const shortFigure = 3;

/** What stands before the data of a camera in JPEG, and by custom in some WebP files. */
export const exifMark: Uint8Array = lettersOf('Exif\0\0');

/**
 * The orientation that a camera wrote down; 1 where it wrote none, or nothing that can be read.
 *
 * @param tiff  the data of a camera as TIFF: byte order, then the first directory
 */
export const orientationIn = (tiff: Uint8Array): Orientation => {
  const order = textAt(tiff, 0, 4);
  if (tiff.length < 8 || (order !== 'II*\0' && order !== 'MM\0*')) return 1;
  const littleEnd = order === 'II*\0';
  const view = viewOf(tiff);
  const directory = view.getUint32(4, littleEnd);
  if (directory + 2 > tiff.length) return 1;
  const entries = view.getUint16(directory, littleEnd);
  for (let entry = 0; entry < entries; entry += 1) {
    const at = directory + 2 + entry * entryBytes;
    if (at + entryBytes > tiff.length) return 1;
    if (view.getUint16(at, littleEnd) !== tag) continue;
    const value = view.getUint16(at + 8, littleEnd);
    const isShort = view.getUint16(at + 2, littleEnd) === shortFigure;
    return (isShort && orientations.find((one) => one === value)) || 1;
  }
  return 1;
};

/** Data of a camera that say the orientation and nothing else. */
export const orientationAlone = (orientation: Orientation): Uint8Array =>
  joined([
    lettersOf('MM\0*'),
    // The directory at byte 8, with one entry: the tag, one short figure; no directory after it.
    Uint8Array.of(0, 0, 0, 8, 0, 1, 1, 0x12, 0, shortFigure, 0, 0, 0, 1, 0, orientation, 0, 0, 0, 0, 0, 0),
  ]);

/** Width and height as the picture is seen: turned by a quarter they change places. */
export const asSeen = (
  width: number,
  height: number,
  orientation: Orientation,
): { readonly width: number; readonly height: number } =>
  orientation >= 5 ? { width: height, height: width } : { width, height };
