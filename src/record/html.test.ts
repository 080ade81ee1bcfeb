/** @module What people typed stays words on the page, whatever it holds. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { escaped, scriptJson } from './html.ts';

// source: HTML Living Standard, 13.2.5.4 (script data ends at `</script`, is confused by `<!--`) and 13.1.2.4 (attribute values)
describe('words on a page', () => {
  it('can open no element and end no attribute', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        expect(escaped(text)).not.toMatch(/[<>"']/);
      }),
    );
  });

  it('read back as what was typed', () => {
    const signs: Record<string, string> = {
      '&amp;': '&',
      '&lt;': '<',
      '&gt;': '>',
      '&quot;': '"',
      '&#39;': "'",
    };
    const read = (html: string) => html.replace(/&(amp|lt|gt|quot|#39);/g, (sign) => signs[sign] ?? sign);
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        expect(read(escaped(text))).toBe(text.replace(/[\p{Cc}\p{Cs}]/gu, '\ufffd'));
      }),
    );
  });

  it('cannot end the script element in which the journal stands, and read back the same', () => {
    fc.assert(
      fc.property(
        fc.jsonValue(),
        fc.constantFrom('</script>', '<!--', '<script>', ']]>', '\u2028'),
        (value, hostile) => {
          const text = scriptJson({ value, hostile });
          expect(text).not.toMatch(/[<>\u2028\u2029]/);
          expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify({ value, hostile })));
        },
      ),
    );
  });
});
