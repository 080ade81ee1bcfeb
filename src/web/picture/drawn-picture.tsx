/** @module A picture that was chosen and is not kept yet, drawn from its bytes. */
import { useEffect, useState } from 'react';
import type { PictureWithBytes } from '../../picture/picture.ts';

export const DrawnPicture = ({ drawn, alt }: { readonly drawn: PictureWithBytes; readonly alt: string }) => {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    const made = URL.createObjectURL(
      new Blob([Uint8Array.from(drawn.bytes)], { type: drawn.picture.mediaType }),
    );
    setAddress(made);
    return () => URL.revokeObjectURL(made);
  }, [drawn]);
  return address === undefined ? null : (
    <img src={address} alt={alt} width={drawn.picture.width} height={drawn.picture.height} />
  );
};
