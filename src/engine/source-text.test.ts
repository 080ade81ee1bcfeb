/** @module What may be taken for the text of an engine type file, and what not. */
import { describe, expect, it } from 'vitest';
import { mudlarkText } from '../../test/engines/demo-engines.ts';
import { sourceText } from './source-text.ts';

const utf8 = (text: string) => new Uint8Array(Buffer.from(text, 'utf8'));
const utf16 = (text: string) => new Uint8Array(Buffer.from(text, 'utf16le'));
const latin1 = (text: string) => new Uint8Array(Buffer.from(text, 'latin1'));

const refusal = (source: string | Uint8Array) => {
  const read = sourceText(source);
  return read.kind === 'refused' ? read.trouble : undefined;
};

describe('the text of a file', () => {
  it('is the same from bytes and from a string, with and without a byte order mark', () => {
    const text = `${mudlarkText}# µ, °, ü, 日本, 😀\n`;
    for (const source of [text, `\ufeff${text}`, utf8(text), utf8(`\ufeff${text}`)]) {
      expect(sourceText(source)).toEqual({ kind: 'text', text });
    }
  });

  it('may be 1 MiB and not a byte more', () => {
    expect(refusal(' '.repeat(1024 * 1024))).toBeUndefined();
    expect(refusal(' '.repeat(1024 * 1024 + 1))?.what).toBe('the file is larger than 1 MiB (1048577 bytes)');
    expect(refusal(new Uint8Array(1024 * 1024 + 1))?.what).toMatch(/larger than 1 MiB/);
  });

  it.each([
    ['little end first, with its mark', utf16(`\ufeff${mudlarkText}`)],
    ['little end first, without a mark', utf16(mudlarkText)],
    ['big end first', utf16(`\ufeff${mudlarkText}`).map((_, index, all) => all[index ^ 1] ?? 0)],
  ])('is refused in UTF-16, %s', (_, bytes) => {
    expect(refusal(bytes)).toMatchObject({ what: 'the file is in UTF-16', remedy: /UTF-8/, line: 1 });
  });

  it('is refused in Latin-1, with the line of the first letter that is not UTF-8', () => {
    expect(refusal(latin1('format: x\ntitle: a\nsource: Prüfblatt\n'))).toMatchObject({
      what: /Latin-1 \(ISO 8859-1\) or Windows-1252/,
      where: 'first at line 3',
      line: 3,
    });
  });

  it('is refused in Windows-1252, known by its dashes and quotes', () => {
    const bytes = latin1('title: a – b\n');
    bytes[9] = 0x96;
    expect(refusal(bytes)).toMatchObject({ what: /it looks like Windows-1252/, line: 1 });
  });

  it('is refused where a UTF-8 sequence is cut off, overlong or half a surrogate pair', () => {
    for (const bad of [[0xc3], [0xc0, 0xaf], [0xed, 0xa0, 0x80], [0xf5, 0x80, 0x80, 0x80]]) {
      expect(refusal(new Uint8Array([0x61, 0x0a, ...bad]))).toMatchObject({ what: /not UTF-8/, line: 2 });
    }
    expect(refusal('title: \ud800')?.what).toMatch(/U\+D800/);
    expect(refusal('title: \udc00')?.what).toMatch(/U\+DC00/);
  });

  it.each([
    ['a PDF document', [0x25, 0x50, 0x44, 0x46, 0x2d]],
    ['a ZIP archive', [0x50, 0x4b, 0x03, 0x04]],
    ['a PNG picture', [0x89, 0x50, 0x4e, 0x47]],
    ['a compressed file', [0x1f, 0x8b, 0x08]],
  ])('is not %s', (name, bytes) => {
    expect(refusal(new Uint8Array(bytes))?.what).toContain(name);
  });

  it('holds no control character but tabs and line ends', () => {
    expect(refusal('a: b\r\n\tc\n')).toBeUndefined();
    expect(refusal('a: b\ntitle: bell \u0007 rings\n')).toMatchObject({
      what: /U\+0007/,
      line: 2,
      column: 13,
    });
    for (const code of [0, 0x1b, 0x7f, 0x9b, 0xfeff, 0xffff]) {
      expect(refusal(`a${String.fromCharCode(code)}`)?.what).toMatch(/control character/);
    }
  });
});
