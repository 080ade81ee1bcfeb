/** @module Bytes of a picture file, read and put together: figures of both byte orders, names of four letters. */

/** Letters of the Latin alphabet as bytes. */
export const lettersOf = (text: string): Uint8Array =>
  Uint8Array.from(text, (letter) => letter.charCodeAt(0));

/** So many bytes as letters; fewer where the file ends before. */
export const textAt = (bytes: Uint8Array, at: number, length: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + length));

export const viewOf = (bytes: Uint8Array): DataView =>
  new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** A figure of four bytes, the greatest first or last. */
export const fourBytes = (value: number, littleEnd = false): Uint8Array => {
  const bytes = new Uint8Array(4);
  viewOf(bytes).setUint32(0, value, littleEnd);
  return bytes;
};

export const joined = (parts: readonly Uint8Array[]): Uint8Array => {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};

export const sameBytes = (one: Uint8Array, other: Uint8Array): boolean =>
  one.length === other.length && one.every((byte, at) => byte === other[at]);
