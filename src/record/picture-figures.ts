/** @module The pictures of a record as they stand in its page, each with its bytes, and how they are found there again. */
import { fromBase64, toBase64 } from '../picture/base64.ts';
import { escaped } from './html.ts';
import type { RecordPicture } from './record-model.ts';

/** Bytes of pictures by hash. */
export type PicturesHeld = ReadonlyMap<string, Uint8Array>;

export const noPictures: PicturesHeld = new Map();

/** A picture is at most so wide on the page, in pixels as a browser counts them. */
const mostAcross = 640;

const caption = ({ number, of, says }: RecordPicture): string =>
  `Picture ${number}. ${of}${says === '' ? '' : `: ${says}`}`;

const figureHtml = (picture: RecordPicture, shown: string): string =>
  `<figure class="picture">${shown}<figcaption><bdi>${escaped(caption(picture))}</bdi></figcaption></figure>\n`;

const drawnHtml = (picture: RecordPicture, bytes: Uint8Array): string => {
  const { hash, mediaType, width, height } = picture;
  const across = Math.min(width, mostAcross);
  const size = `width="${across}" height="${Math.max(1, Math.round((height * across) / width))}"`;
  return `<img data-picture="${hash}" ${size} alt="${escaped(caption(picture))}" src="data:${mediaType};base64,${toBase64(bytes)}">`;
};

/** One figure a picture; bytes that two pictures share stand there once. */
export const pictureFigures = (pictures: readonly RecordPicture[], held: PicturesHeld): string => {
  const first = new Map<string, number>();
  const figures = pictures.map((picture) => {
    const bytes = held.get(picture.hash);
    const before = first.get(picture.hash);
    first.set(picture.hash, before ?? picture.number);
    if (before !== undefined) return figureHtml(picture, `<p>The same picture as picture ${before}.</p>`);
    return bytes === undefined
      ? figureHtml(picture, '<p>Not in this file: the store that wrote it did not have the picture.</p>')
      : figureHtml(picture, drawnHtml(picture, bytes));
  });
  return figures.length === 0 ? '' : `<div class="pictures">\n${figures.join('')}</div>\n`;
};

// Whatever people typed is escaped: what looks like such a tag is one.
const drawnPictures = /<img data-picture="([0-9a-f]{64})" [^>]*? src="data:[a-z/]+;base64,([^"]*)">/g;

/** The pictures that stand in a page; one whose text is no longer a picture's has no bytes. */
export const picturesInPage = (page: string): PicturesHeld =>
  new Map(
    [...page.matchAll(drawnPictures)].map(([, hash = '', text = '']) => [
      hash,
      fromBase64(text) ?? new Uint8Array(),
    ]),
  );

/** As they stand in an exported file. */
export const picturesAsText = (held: PicturesHeld): Readonly<Record<string, string>> =>
  Object.fromEntries([...held].map(([hash, bytes]) => [hash, toBase64(bytes)]));

export const picturesFromText = (texts: Readonly<Record<string, string>>): PicturesHeld =>
  new Map(Object.entries(texts).map(([hash, text]) => [hash, fromBase64(text) ?? new Uint8Array()]));
