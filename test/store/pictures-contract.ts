/** @module What every store promises of pictures. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { joined, lettersOf } from '../../src/picture/bytes.ts';
import { cleanPicture, mostPictureBytes, type PictureWithBytes } from '../../src/picture/picture.ts';
import { pngChunk } from '../../src/picture/png.ts';
import { type Pictures, pictureTrouble } from '../../src/store/pictures.ts';
import { drawn } from '../picture/drawn.ts';
import { drawnPng } from '../picture/drawn-png.ts';
import type { OpenedStore } from './journals-contract.ts';

/** A drawn picture, ready to be kept; `shade` tells them apart. */
export const drawnPicture = (shade = 0, file: Uint8Array = drawnPng(shade)): PictureWithBytes => {
  const clean = cleanPicture(file, 'picture');
  if (clean.kind === 'refused') throw new Error(clean.refusal.what);
  return clean.value;
};

export const picturesContract = (name: string, open: () => Promise<OpenedStore>): void => {
  describe(`${name} keeps pictures`, () => {
    let opened: OpenedStore;
    let store: Pictures;
    beforeEach(async () => {
      opened = await open();
      store = opened.store;
    });
    afterEach(() => opened.tidy());

    const kept = async (hash: string) => {
      const bytes = await store.picture(hash);
      return bytes && new Uint8Array(bytes);
    };
    const refused = async (hash: string, bytes: Uint8Array) => {
      const put = await store.putPicture(hash, bytes);
      return put.kind === 'refused' ? put.refusal.what : 'kept';
    };

    it.each(Object.entries(drawn))('and gives a %s back byte for byte', async (_, file) => {
      const { picture, bytes } = drawnPicture(0, file);
      expect(await store.putPicture(picture.hash, bytes)).toEqual({ kind: 'answer', value: undefined });
      expect(await kept(picture.hash)).toEqual(new Uint8Array(bytes));
    });

    it('apart from each other, and the same one once', async () => {
      const [one, other] = [drawnPicture(1), drawnPicture(2)];
      await Promise.all([one, other, one].map(({ picture, bytes }) => store.putPicture(picture.hash, bytes)));
      expect(await kept(one.picture.hash)).toEqual(one.bytes);
      expect(await kept(other.picture.hash)).toEqual(other.bytes);
    });

    it('and knows nothing of one that was not put', async () => {
      expect(await store.picture('0'.repeat(64))).toBeUndefined();
    });

    it('but none under a hash that is another’s, and writes nothing', async () => {
      const [one, other] = [drawnPicture(1), drawnPicture(2)];
      expect(await refused(one.picture.hash, other.bytes)).toBe('these are not the bytes of this picture');
      expect(await refused('nothing', other.bytes)).toBe('these are not the bytes of this picture');
      expect(await store.picture(one.picture.hash)).toBeUndefined();
    });

    it('but none that tells more than the picture, under whatever hash', async () => {
      const { picture, bytes } = drawnPicture();
      const told = joined([bytes, pngChunk('tEXt', lettersOf('Comment\0behind the shed'))]);
      expect(await refused(picture.hash, told)).toContain('tells more than the picture');
    });

    it('but nothing that is no picture', async () => {
      expect(await refused('0'.repeat(64), lettersOf('<svg/>'))).toBe('this is no picture that can be kept');
    });

    it('up to the largest that may be kept', async () => {
      const png = drawnPng();
      const filling = (length: number) => {
        const room = pngChunk('IDAT', new Uint8Array(length - png.length - 12));
        return joined([png.subarray(0, png.length - 12), room, png.subarray(png.length - 12)]);
      };
      const { picture, bytes } = drawnPicture(0, filling(mostPictureBytes));
      expect(bytes.length).toBe(mostPictureBytes);
      expect((await store.putPicture(picture.hash, bytes)).kind).toBe('answer');
      expect((await kept(picture.hash))?.length).toBe(mostPictureBytes);
      expect(await refused(picture.hash, filling(mostPictureBytes + 1))).toContain('MB');
    });

    it('and takes what is said of one once it is here, and only as it is', async () => {
      const { picture, bytes } = drawnPicture();
      const said = { kind: 'take picture', picture, of: {}, says: '' } as const;
      expect(await pictureTrouble(store, said)).toMatchObject({ what: 'the picture itself has not arrived' });
      await store.putPicture(picture.hash, bytes);
      expect(await pictureTrouble(store, said)).toBeUndefined();
      expect(await pictureTrouble(store, { ...said, picture: { ...picture, width: 9 } })).toMatchObject({
        what: 'the picture is of another size or kind than is said of it',
      });
    });
  });
};
