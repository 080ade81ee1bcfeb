/** @module Bytes as text that stands in a page or in JSON, and back (RFC 4648, section 4). */
import { lettersOf } from './bytes.ts';

const letters = lettersOf('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/');
const filling = 61;
const places = new Map([...letters].map((letter, value) => [letter, value]));

/** Bytes turned into letters at once: a multiple of three, few enough to be arguments of one call. */
const atOnce = 3 * 4096;

const lettersFor = (bytes: Uint8Array): Uint8Array => {
  const text = new Uint8Array(Math.ceil(bytes.length / 3) * 4);
  for (let at = 0, to = 0; at < bytes.length; at += 3, to += 4) {
    const left = bytes.length - at;
    const three = ((bytes[at] ?? 0) << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    text[to] = letters[three >> 18] ?? 0;
    text[to + 1] = letters[(three >> 12) & 63] ?? 0;
    text[to + 2] = left > 1 ? (letters[(three >> 6) & 63] ?? 0) : filling;
    text[to + 3] = left > 2 ? (letters[three & 63] ?? 0) : filling;
  }
  return text;
};

/** @example toBase64(Uint8Array.of(102, 111, 111)) // 'Zm9v' */
export const toBase64 = (bytes: Uint8Array): string => {
  const parts: string[] = [];
  for (let at = 0; at < bytes.length; at += atOnce)
    parts.push(String.fromCharCode(...lettersFor(bytes.subarray(at, at + atOnce))));
  return parts.join('');
};

/** The bytes of such a text; nothing where it is none. */
export const fromBase64 = (text: string): Uint8Array | undefined => {
  if (text.length % 4 !== 0) return undefined;
  const filled = text.endsWith('==') ? 2 : text.endsWith('=') ? 1 : 0;
  const bytes = new Uint8Array((text.length / 4) * 3 - filled);
  for (let at = 0, to = 0; at < text.length; at += 4, to += 3) {
    let three = 0;
    for (let letter = 0; letter < 4; letter += 1) {
      const stands = at + letter >= text.length - filled ? 0 : places.get(text.charCodeAt(at + letter));
      if (stands === undefined) return undefined;
      three = (three << 6) | stands;
    }
    bytes[to] = three >> 16;
    if (to + 1 < bytes.length) bytes[to + 1] = (three >> 8) & 255;
    if (to + 2 < bytes.length) bytes[to + 2] = three & 255;
  }
  return bytes;
};
