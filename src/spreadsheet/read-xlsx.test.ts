/** @module Workbooks as spreadsheets write them, and as nobody honest would. */
import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { TableRow } from '../engine/table-row.ts';
import { readXlsx } from './read-xlsx.ts';
import { readTableFile } from './table-file.ts';

const main = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const relations = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

const book = `<workbook xmlns="${main}" xmlns:r="${relations}"><sheets><sheet name="One" sheetId="1" r:id="r1"/></sheets></workbook>`;
const targets = '<Relationships><Relationship Id="r1" Target="worksheets/sheet1.xml"/></Relationships>';

/** A workbook of one sheet, from the rows as they stand in its part. */
const workbook = (rows: string, others: Readonly<Record<string, Uint8Array>> = {}): Uint8Array =>
  zipSync({
    'xl/workbook.xml': strToU8(book),
    'xl/_rels/workbook.xml.rels': strToU8(targets),
    'xl/worksheets/sheet1.xml': strToU8(
      `<worksheet xmlns="${main}"><sheetData>${rows}</sheetData></worksheet>`,
    ),
    ...others,
  });

const rowsOf = (bytes: Uint8Array): readonly TableRow[] => {
  const read = readXlsx(bytes);
  if (read.kind === 'refused') throw new Error(JSON.stringify(read.refusal));
  return read.value.rows;
};

const refusalOf = (bytes: Uint8Array) => {
  const read = readXlsx(bytes);
  return read.kind === 'refused' ? read.refusal : undefined;
};

describe('a workbook that another program wrote', () => {
  // source: test/spreadsheet/make-workbook.py, which wrote it with openpyxl
  const bytes = readFileSync(new URL('../../test/spreadsheet/workbook.xlsx', import.meta.url));
  const rows = rowsOf(bytes);
  const reading = (line: number) => {
    const row = rows.find((one) => one.line === line);
    return row?.wrong?.get(4)?.what ?? row?.fields[4];
  };

  it.each([
    [2, '54.980', 'a number with the zeros that its format shows'],
    [3, '54.982', 'text as text'],
    [4, '54,981', 'a comma as typed'],
    [5, '54.97965', 'digits that its format hides'],
    [6, '2 9/16', 'a fraction typed as text'],
    [7, '2.5625', 'a number shown as a fraction'],
    [8, '0.3', 'the decimal that was written, without the noise of binary fractions'],
    [13, '1e+300', 'an absurd magnitude, for the reader of figures to refuse'],
    [14, '-0.02', 'a negative number'],
    [40, 'Ü < & > " ‰', 'signs that XML writes otherwise'],
  ])('row %d says %s: %s', (line, text) => {
    expect(reading(line)).toBe(text);
  });

  it.each([
    [9, /holds a date/],
    [10, /true or false/],
    [11, /formula has not been worked out/],
    [12, /percentage/],
  ])('row %d is told and not read', (line, says) => {
    expect(reading(line)).toMatch(says);
  });

  it('says which sheet is read, and keeps the numbers of the rows', () => {
    const read = readXlsx(bytes);
    expect(read.kind === 'answer' && read.value.warnings[0]?.what).toContain('“Readings” is read');
    expect(rows.at(-1)).toEqual({ line: 40, fields: ['main.4', '', '', '', 'Ü < & > " ‰'] });
  });
});

describe('a sheet', () => {
  it('may leave out addresses, use prefixes and keep its texts in the cells', () => {
    const rows = rowsOf(
      workbook(
        '<x:row xmlns:x="y"><x:c t="inlineStr"><x:is><x:r><x:t>main</x:t></x:r><x:r><x:t>.1</x:t></x:r></x:is></x:c><x:c><x:v>54.98</x:v></x:c></x:row>',
      ),
    );
    expect(rows).toEqual([{ line: 1, fields: ['main.1', '54.98'] }]);
  });

  it('tells a cell that shows an error, and one whose text is missing', () => {
    const [row] = rowsOf(
      workbook('<row r="3"><c r="A3" t="e"><v>#DIV/0!</v></c><c r="B3" t="s"><v>7</v></c></row>'),
    );
    expect(row?.line).toBe(3);
    expect([...(row?.wrong?.values() ?? [])].map(({ what, where }) => `${where}: ${what}`)).toEqual([
      'cell A3: it shows the error #DIV/0!',
      'cell B3: its text is missing from the file',
    ]);
  });

  it('whose numbers lost their last zeros says so once', () => {
    const column = ['54.981', '54.98', '54.99']
      .map((value, at) => `<row r="${at + 1}"><c r="A${at + 1}"><v>${value}</v></c></row>`)
      .join('');
    const read = readXlsx(workbook(column));
    expect(read.kind === 'answer' && read.value.warnings).toMatchObject([{ row: 2, where: 'cell A2' }]);
  });

  it.each(['NaN', 'Infinity', '1e999', '', 'abc'])('holding %s as a number says so at the cell', (value) => {
    const [row] = rowsOf(workbook(`<row r="1"><c r="A1"><v>1</v></c><c r="B1"><v>${value}</v></c></row>`));
    expect(row?.wrong?.get(1)?.what).toMatch(/no number/);
    expect(row?.fields).toEqual(['1', '']);
  });
});

describe('a hostile workbook', () => {
  it('that unpacks without end is given up at its bound', () => {
    const bytes = workbook('', { 'xl/sharedStrings.xml': new Uint8Array(200 * 1024 * 1024) });
    expect(bytes.length).toBeLessThan(1024 * 1024);
    expect(refusalOf(bytes)?.what).toMatch(/unpacks to more/);
  });

  it('whose parts that nobody asks for unpack without end is read all the same', () => {
    const bytes = workbook('<row r="1"><c r="A1"><v>1</v></c></row>', {
      'xl/media/picture.png': new Uint8Array(100 * 1024 * 1024),
    });
    expect(rowsOf(bytes)).toEqual([{ line: 1, fields: ['1'] }]);
  });

  it('with thousands of entries, cells far out, rows without end or texts without end is refused or told', () => {
    const empty = new Uint8Array();
    const entries = Object.fromEntries(Array.from({ length: 3000 }, (_, at) => [`x/${at}`, empty]));
    expect(refusalOf(workbook('', entries))?.what).toMatch(/unpacks to more/);
    expect(refusalOf(workbook('<row r="1"><c r="XFD1"><v>1</v></c></row>'))?.what).toMatch(/too wide/);
    const rows = Array.from({ length: 50_001 }, (_, at) => `<row r="${at + 1}"><c><v>1</v></c></row>`).join(
      '',
    );
    expect(refusalOf(workbook(rows))?.what).toMatch(/more than 50000 rows/);
    const [long] = rowsOf(
      workbook(`<row r="1"><c r="A1" t="inlineStr"><is><t>${'x'.repeat(5000)}</t></is></c></row>`),
    );
    expect(long?.wrong?.get(0)?.what).toMatch(/longer than/);
  });

  it('resolves no entities of its own', () => {
    const bomb = '<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;">]>';
    const bytes = workbook('', {
      'xl/worksheets/sheet1.xml': strToU8(
        `${bomb}<worksheet xmlns="${main}"><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>&b;</t></is></c></row></sheetData></worksheet>`,
      ),
    });
    const read = readXlsx(bytes);
    expect(JSON.stringify(read)).not.toContain('aaaaaaaaaa');
  });

  it.each([
    ['a sheet cut off', workbook('<row r="1"><c r="A1"><v>1</v>'), undefined],
    ['no sheet', zipSync({ 'a.txt': strToU8('x') }), /holds no sheet/],
    [
      'a part that is missing',
      zipSync({ 'xl/workbook.xml': strToU8(book), 'xl/_rels/workbook.xml.rels': strToU8(targets) }),
      /missing from the file/,
    ],
    ['an archive cut off', workbook('<row r="1"><c r="A1"><v>1</v></c></row>').subarray(0, 200), undefined],
  ])('that is %s is refused', (_, bytes, says) => {
    expect(refusalOf(bytes)?.what).toMatch(says ?? /./);
  });

  it('of any bytes is read or refused, and never throws', () => {
    const sound = workbook(
      '<row r="1"><c r="A1"><v>1</v></c><c r="B1" t="inlineStr"><is><t>two</t></is></c></row>',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.uint8Array({ maxLength: 400 }),
          fc.array(fc.tuple(fc.nat(sound.length - 1), fc.nat(255)), { maxLength: 12 }).map((changes) => {
            const bytes = sound.slice();
            for (const [at, value] of changes) bytes[at] = value;
            return bytes;
          }),
        ),
        (bytes) => {
          expect(['answer', 'refused']).toContain(readXlsx(bytes).kind);
        },
      ),
      { numRuns: 300 },
    );
  });
});

describe('a file that a person chose', () => {
  it.each([
    ['an old workbook', Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0, 0xa1), /old kind/],
    ['text in another encoding', Uint8Array.of(0x61, 0xe4, 0x62), /not in UTF-8/],
    ['something else', Uint8Array.of(0x00, 0x01), /not a text file/],
  ])('is refused with what to do where it is %s', (_, bytes, says) => {
    const read = readTableFile(bytes);
    expect(read.kind === 'refused' && read.refusal.what).toMatch(says);
  });

  it('is text where it is text', () => {
    expect(readTableFile(strToU8('place,reading'))).toEqual({
      kind: 'answer',
      value: { kind: 'text', text: 'place,reading' },
    });
  });
});
