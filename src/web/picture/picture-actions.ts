/** @module What can be asked of pictures: that one is kept, and that one is struck out. */
import type { PictureOf } from '../../job/event.ts';
import type { PictureWithBytes } from '../../picture/picture.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import type { DeskKeeper } from '../journal/desk.ts';
import { benchPictures } from '../journal/picture-box.ts';
import { putPicture } from '../journal/workshop.ts';
import type { Action } from '../shell/action.ts';

interface Kept {
  readonly picture: PictureWithBytes['picture'];
  readonly of: PictureOf;
  readonly says: string;
}

export const takePicture: Action<Kept> = {
  name: 'take-picture',
  label: 'Keep the picture',
  enabled: (job) => job.handedOver === undefined,
  request: (kept) => ({ kind: 'take picture', ...kept }),
};

export const strikeOutPicture: Action<{ readonly picture: string; readonly why: string }> = {
  name: 'strike-out-picture',
  label: 'Strike the picture out',
  enabled: (job) => job.handedOver === undefined,
  request: (asked) => ({ kind: 'strike out picture', ...asked }),
};

/** Sees to it that the picture is safe before anything is said of it: in this browser, else in the store. */
export const makeSafe = async ({ picture, bytes }: PictureWithBytes): Promise<Refusal | undefined> => {
  if (await benchPictures.keep(picture.hash, bytes)) return undefined;
  const stopped = await putPicture(picture, bytes);
  if (stopped === undefined) return undefined;
  return stopped.kind === 'refused'
    ? stopped.refusal
    : {
        what: 'the picture can be kept neither in this browser nor in the store',
        where: 'picture',
        remedy: 'keep the file; make room in the browser, or take it again when the store answers',
      };
};

/** Keeps a picture and says what it is of; answers why not, if not. */
export const keepPicture = async (
  keeper: DeskKeeper,
  taken: PictureWithBytes,
  of: PictureOf,
  says: string,
): Promise<Refusal | undefined> => {
  const lost = await makeSafe(taken);
  if (lost) return lost;
  const asked = keeper.ask(takePicture.request({ picture: taken.picture, of, says }));
  return asked.kind === 'refused' ? asked.refusal : undefined;
};
