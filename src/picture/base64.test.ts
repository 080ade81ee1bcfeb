/** @module Checks of bytes as text. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromBase64, toBase64 } from './base64.ts';
import { lettersOf } from './bytes.ts';

describe('bytes as text', () => {
  // source: RFC 4648, section 10
  it.each([
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('“%s” is “%s”', (bytes, text) => {
    expect(toBase64(lettersOf(bytes))).toBe(text);
    expect(fromBase64(text)).toEqual(lettersOf(bytes));
  });

  it('come back as they were, and are as this platform writes them', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 40_000 }), (bytes) => {
        const text = toBase64(bytes);
        // source: Node's Buffer
        expect(text).toBe(Buffer.from(bytes).toString('base64'));
        expect(fromBase64(text)).toEqual(bytes);
      }),
      { numRuns: 30 },
    );
  });

  it.each(['Zg', 'Zg=', 'Z===', '!mFv', 'Zm9v\n', 'Zm 9'])('“%s” is no such text', (text) => {
    expect(fromBase64(text)).toBeUndefined();
  });
});
