/** @module Pictures beside the journal: the journal names each by the hash of its bytes, and the bytes lie here. */

import type { Request } from '../job/command.ts';
import type { OpenJob } from '../job/job.ts';
import { type Trouble, trouble } from '../journal/trouble.ts';
import { checkPicture } from '../picture/picture.ts';
import type { Answer } from '../quantity/refusal.ts';

export interface Pictures {
  /**
   * Keeps a picture under the SHA-256 of its bytes, on the disk before it answers; the same one again is kept once.
   * Refuses what is no picture, is too large, tells more than the picture, or has another hash.
   */
  readonly putPicture: (hash: string, bytes: Uint8Array) => Promise<Answer<void>>;
  /** Its bytes as they were put. */
  readonly picture: (hash: string) => Promise<Uint8Array | undefined>;
}

/**
 * A picture comes before what is said of it: what names one that is not here, or tells another size than it has, is
 * not taken. Nothing for every other request.
 */
export const pictureTrouble = async (pictures: Pictures, request: Request): Promise<Trouble> => {
  if (request.kind !== 'take picture') return undefined;
  const { picture: told } = request;
  const where = `picture ${told.hash.slice(0, 12)}`;
  const bytes = await pictures.picture(told.hash);
  if (bytes === undefined)
    return trouble('the picture itself has not arrived', where, 'send the picture, then what is said of it');
  const checked = checkPicture(told.hash, bytes);
  if (checked.kind === 'refused') return checked.refusal;
  const { width, height, mediaType, bytes: length } = checked.value.picture;
  return width === told.width &&
    height === told.height &&
    mediaType === told.mediaType &&
    length === told.bytes
    ? undefined
    : trouble('the picture is of another size or kind than is said of it', where, 'take the picture again');
};

/** The bytes of the pictures of a job that count, by hash; those that the store lacks are left out. */
export const picturesOf = async (
  pictures: Pictures,
  { pictures: taken }: OpenJob,
): Promise<ReadonlyMap<string, Uint8Array>> => {
  const held = new Map<string, Uint8Array>();
  for (const hash of new Set(taken.map(({ picture }) => picture.hash))) {
    const bytes = await pictures.picture(hash);
    if (bytes !== undefined) held.set(hash, bytes);
  }
  return held;
};
