/** @module Checks of drawings as text. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetOf, svg, svgText } from './svg.ts';

/** Undoes the five escapes, the ampersand last. source: XML 1.0, 4.6, predefined entities */
const read = (text: string): string =>
  text.replaceAll('&lt;', '<').replaceAll('&gt;', '>').replaceAll('&quot;', '"').replaceAll('&amp;', '&');

describe('a drawing as text', () => {
  it('carries any words in and out unharmed', () => {
    const legal = fc
      .string({ unit: 'grapheme' })
      .filter((words) => !/[^\t\n\u0020-\ud7ff\ue000-\ufffd]/u.test(words));
    fc.assert(
      fc.property(legal, (words) => {
        const text = svgText(svg('text', { title: words }, words));
        const [, attribute, content] = /^<text title="([^"<]*)">([^<]*)<\/text>$/s.exec(text) ?? [];
        expect(read(attribute ?? 'missing')).toBe(words);
        expect(read(content ?? 'missing')).toBe(words);
      }),
    );
  });

  it('leaves out what XML has no place for', () => {
    expect(svgText(svg('text', {}, 'a\u0000b\u001bc\ufffed'))).toBe('<text>abcd</text>');
  });

  it('is named and described for a reader who does not see it', () => {
    const text = svgText(sheetOf({ width: 10, height: 20 }, { title: 'bore 2', description: 'within' }));
    expect(text).toContain('role="img" aria-label="bore 2"');
    expect(text).toContain('<desc>within</desc>');
    expect(text).toContain('viewBox="0 0 10 20"');
  });
});
