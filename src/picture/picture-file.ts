/** @module What every reader of a picture file gives: the picture alone, and how large it is. */
import type { Answer } from '../quantity/refusal.ts';
import { refuse } from '../quantity/refusal.ts';

export type MediaType = 'image/jpeg' | 'image/png' | 'image/webp';

export interface PictureFile {
  /** The file with nothing in it but the picture, its colours and which way up it is held. */
  readonly bytes: Uint8Array;
  readonly mediaType: MediaType;
  /** In pixels, as the picture is seen. */
  readonly width: number;
  readonly height: number;
}

export const damaged = (where: string, what: string): Answer<never> =>
  refuse(`the picture file is damaged: ${what}`, where, 'take the picture again, or save it anew');
