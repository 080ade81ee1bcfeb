/** @module A picture as the journal knows it: the hash of its kept bytes, its kind and its size; the bytes lie beside. */
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { sameBytes } from './bytes.ts';
import { cleanJpeg, isJpeg } from './jpeg.ts';
import type { MediaType, PictureFile } from './picture-file.ts';
import { cleanPng, isPng } from './png.ts';
import { cleanWebp, isWebp } from './webp.ts';

export interface Picture {
  /** SHA-256 of its bytes as they are kept. */
  readonly hash: string;
  readonly mediaType: MediaType;
  /** In pixels, as the picture is seen. */
  readonly width: number;
  readonly height: number;
  /** How many bytes are kept. */
  readonly bytes: number;
}

/** A picture with its bytes. */
export interface PictureWithBytes {
  readonly picture: Picture;
  readonly bytes: Uint8Array;
}

/** Kept for one picture at most: what the server takes at once. */
export const mostPictureBytes = 4_000_000;

/** Wider or higher than any camera at a bench takes, and than a tablet can draw. */
export const mostPixelsAcross = 12_000;

const cleanFile = (bytes: Uint8Array, where: string): Answer<PictureFile> => {
  if (isJpeg(bytes)) return cleanJpeg(bytes, where);
  if (isPng(bytes)) return cleanPng(bytes, where);
  if (isWebp(bytes)) return cleanWebp(bytes, where);
  return refuse('this is no picture that can be kept', where, 'give a JPEG, PNG or WebP file');
};

/**
 * A picture as it may be kept: what the file says of place, time, person and camera is taken out, which way up it is
 * held stays. What has been cleaned once stays as it is.
 *
 * @param bytes  the file, whole
 * @param where  what it is called in a refusal
 * @returns the picture and its bytes; refuses what is no JPEG, PNG or WebP, is damaged, moves, or is too large
 */
export const cleanPicture = (bytes: Uint8Array, where: string): Answer<PictureWithBytes> => {
  const file = cleanFile(bytes, where);
  if (file.kind === 'refused') return file;
  const { width, height, mediaType, bytes: clean } = file.value;
  if (width < 1 || height < 1 || width > mostPixelsAcross || height > mostPixelsAcross)
    return refuse(
      `the picture is ${width} × ${height} pixels`,
      where,
      `give one of at most ${mostPixelsAcross} pixels across`,
    );
  if (clean.length > mostPictureBytes)
    return refuse(
      `the picture has ${Math.ceil(clean.length / 100_000) / 10} MB`,
      where,
      `make it smaller: at most ${mostPictureBytes / 1_000_000} MB; 1600 pixels across show what is to be seen`,
    );
  const picture = { hash: bytesToHex(sha256(clean)), mediaType, width, height, bytes: clean.length };
  return answer({ picture, bytes: clean });
};

/**
 * Holds bytes to be those of a picture by its hash, and fit to be kept as they are.
 *
 * @param hash  SHA-256 under which the bytes are to lie
 */
export const checkPicture = (hash: string, bytes: Uint8Array): Answer<PictureWithBytes> => {
  const where = `picture ${hash.slice(0, 12)}`;
  const clean = cleanPicture(bytes, where);
  if (clean.kind === 'refused') return clean;
  if (!sameBytes(clean.value.bytes, bytes))
    return refuse(
      'the picture file tells more than the picture: where, when or by whom it was taken',
      where,
      'take that out before it is sent; endfloat picture does',
    );
  return clean.value.picture.hash === hash
    ? clean
    : refuse('these are not the bytes of this picture', where, 'send the picture again, whole');
};
