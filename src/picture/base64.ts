/** @module Bytes as text that stands in a page or in JSON, and back (RFC 4648, section 4). */

const letters = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'];
/** Twelve bits at once: three bytes are two of these. */
const pairs = letters.flatMap((first) => letters.map((second) => first + second));
const places = new Map(letters.map((letter, value) => [letter.charCodeAt(0), value]));

/** @example toBase64(Uint8Array.of(102, 111, 111)) // 'Zm9v' */
export const toBase64 = (bytes: Uint8Array): string => {
  let text = '';
  for (let at = 0; at < bytes.length; at += 3) {
    const three = ((bytes[at] ?? 0) << 16) | ((bytes[at + 1] ?? 0) << 8) | (bytes[at + 2] ?? 0);
    text += `${pairs[three >> 12]}${pairs[three & 4095]}`;
  }
  const over = (3 - (bytes.length % 3)) % 3;
  return over === 0 ? text : text.slice(0, -over) + '='.repeat(over);
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
