/** @module Notes a finding together with its pictures: those are made safe first, so that none is named and then missing. */
import type { PictureWithBytes } from '../../picture/picture.ts';
import type { Refusal } from '../../quantity/refusal.ts';
import type { DeskKeeper } from '../journal/desk.ts';
import { makeSafe, takePicture } from '../picture/picture-actions.ts';
import { type Finding, noteFinding } from './strip-actions.ts';

export const noteWithPictures = async (
  keeper: DeskKeeper,
  finding: Finding,
  pictures: readonly PictureWithBytes[],
): Promise<Refusal | undefined> => {
  for (const picture of pictures) {
    const lost = await makeSafe(picture);
    if (lost) return lost;
  }
  const noted = keeper.ask(noteFinding.request(finding));
  if (noted.kind === 'refused') return noted.refusal;
  for (const { picture } of pictures) {
    const taken = keeper.ask(takePicture.request({ picture, of: { finding: noted.value.id }, says: '' }));
    if (taken.kind === 'refused') return taken.refusal;
  }
  return undefined;
};
