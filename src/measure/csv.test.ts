/** @module What counts as a table of readings. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvField, readCsv } from './csv.ts';

const fields = (text: string) => {
  const read = readCsv(text);
  return read.kind === 'answer' ? read.value.rows.map((row) => row.fields) : read.refusal.what;
};

describe('a table', () => {
  // source: RFC 4180, section 2, rules 1 to 7 and their examples
  it.each([
    [
      'lines with a break at each end',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'no break after the last line',
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'quotes',
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'a line break in quotes',
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['a quote in quotes', '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
    [
      'an empty field at the end',
      'a,b,\n1,2,3',
      [
        ['a', 'b', ''],
        ['1', '2', '3'],
      ],
    ],
  ])('may have %s', (_what, text, expected) => {
    expect(fields(text)).toEqual(expected);
  });

  it.each([
    [
      'semicolons, so that commas are decimals',
      'a;b\n1,5;2',
      [
        ['a', 'b'],
        ['1,5', '2'],
      ],
    ],
    [
      'tabs',
      'a\tb\n1\t2',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'commas inside quotes beside semicolons',
      '"a,b,c";d\n1;2',
      [
        ['a,b,c', 'd'],
        ['1', '2'],
      ],
    ],
  ])('may be separated by %s', (_what, text, expected) => {
    expect(fields(text)).toEqual(expected);
  });

  it('tells on which line each row begins', () => {
    const read = readCsv('a,b\n\n"x\ny",2\n\r\n3,4\r5,6');
    expect(read.kind === 'answer' && read.value.rows.map(({ line }) => line)).toEqual([1, 3, 6, 7]);
  });

  it('gives back what was written', () => {
    const field = fc.string({ maxLength: 20 }).map((text) => text.trim());
    const row = fc.array(field, { minLength: 3, maxLength: 3 });
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 1, maxLength: 8 }),
        fc.constantFrom(',', ';', '\t'),
        (rows, by) => {
          const written = [['p', 'q', 'r'], ...rows].map((each) => each.map(csvField).join(by)).join('\n');
          const filled = rows.filter((each) => each.some((text) => text !== ''));
          expect(fields(written)).toEqual([['p', 'q', 'r'], ...filled]);
        },
      ),
    );
  });

  it.each([
    ['a quote that is never closed', `a,b\n"1,2\n${'3,4\n'.repeat(500)}`, /never be closed/],
    ['text after a closing quote', 'a,b\n"1"2,3', /after a closing quote/],
    ['a field of a thousand letters', `a,b\n${'x'.repeat(1001)},1`, /longer than/],
    ['more rows than any job has', 'a,b\n'.repeat(50_002), /more than 50000 rows/],
  ])('is refused with %s', (_what, text, expected) => {
    expect(fields(text)).toMatch(expected);
  });
});
