/** @module A picture on the page, from wherever it is to be had; its words stand in for it where it is not. */
import { useState } from 'react';
import type { Picture } from '../../picture/picture.ts';
import { usePictureAddress } from './use-pictures.ts';

export const ShownPicture = ({ picture, alt }: { readonly picture: Picture; readonly alt: string }) => {
  const address = usePictureAddress(picture);
  const [lacking, setLacking] = useState(false);
  return lacking ? (
    <span className="lacking">{alt} (the picture has not come to this bench yet)</span>
  ) : (
    <img
      {...(address === undefined ? {} : { src: address })}
      alt={alt}
      width={picture.width}
      height={picture.height}
      onError={() => setLacking(true)}
    />
  );
};
