/** @module A picture that the store would not take: still here, to be looked at and saved. */
import type { Picture } from '../../picture/picture.ts';
import { usePictureAddress } from './use-pictures.ts';

export const TurnedPicture = ({ picture }: { readonly picture: Picture }) => {
  const address = usePictureAddress(picture);
  return (
    <a
      className="button"
      {...(address === undefined ? {} : { href: address })}
      download={`picture-${picture.hash.slice(0, 12)}`}
    >
      Save the picture
    </a>
  );
};
