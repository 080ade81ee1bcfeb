/** @module Pictures for components: from this bench where they still wait here, else from the workshop's store. */
import { useEffect, useMemo, useState } from 'react';
import type { OpenJob } from '../../job/job.ts';
import type { Picture } from '../../picture/picture.ts';
import { noPictures, type PicturesHeld } from '../../record/picture-figures.ts';
import { benchPictures } from '../journal/picture-box.ts';

const atStore = ({ hash }: Picture): string => `/api/pictures/${hash}`;

/** Where a picture is drawn from; nothing until that is known. */
export const usePictureAddress = (picture: Picture): string | undefined => {
  const [address, setAddress] = useState<string>();
  useEffect(() => {
    let made: string | undefined;
    let left = false;
    void benchPictures.bytes(picture.hash).then((bytes) => {
      if (left) return;
      if (bytes) made = URL.createObjectURL(new Blob([Uint8Array.from(bytes)], { type: picture.mediaType }));
      setAddress(made ?? atStore(picture));
    });
    return () => {
      left = true;
      if (made !== undefined) URL.revokeObjectURL(made);
    };
  }, [picture]);
  return address;
};

const fetched = async (picture: Picture): Promise<Uint8Array | undefined> => {
  const here = await benchPictures.bytes(picture.hash);
  if (here) return here;
  try {
    const answer = await fetch(atStore(picture));
    return answer.ok ? new Uint8Array(await answer.arrayBuffer()) : undefined;
  } catch {
    return undefined;
  }
};

/** The bytes of a job's pictures, as far as they can be had: for its record. */
export const useHeldPictures = ({ pictures }: OpenJob): PicturesHeld => {
  const [held, setHeld] = useState(noPictures);
  const wanted = useMemo(() => pictures.map(({ picture }) => picture), [pictures]);
  useEffect(() => {
    let left = false;
    const fetchAll = async () => {
      const had = new Map<string, Uint8Array>();
      for (const picture of wanted) {
        const bytes = had.get(picture.hash) ?? (await fetched(picture));
        if (bytes) had.set(picture.hash, bytes);
      }
      if (!left) setHeld(had.size === 0 ? noPictures : had);
    };
    void fetchAll();
    return () => {
      left = true;
    };
  }, [wanted]);
  return held;
};
