/** @module A file is rewritten where it must be and nowhere else. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mudlarkText, quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { readDocument } from '../file-document.ts';
import type { FilePath } from '../file-path.ts';
import { valueAt, withValue } from './file-data.ts';
import { rewriteFile } from './rewrite-file.ts';
import { isEntries } from './value-text.ts';

const dataOf = (text: string): unknown => {
  const { document, troubles } = readDocument(text);
  if (!document) throw new Error(JSON.stringify(troubles));
  return document.value;
};

/** The file with one value set by path, and the lines that differ. */
const set = (text: string, path: FilePath, value: unknown) =>
  rewriteFile(text, withValue(dataOf(text), path, value));

const linesApart = (before: string, after: string) => {
  const [one, other] = [before.split('\n'), after.split('\n')];
  return {
    gone: one.filter((line) => !other.includes(line)),
    come: other.filter((line) => !one.includes(line)),
  };
};

const journal = ['characteristics', 'main-journal-diameter'];

describe('rewriting a file', () => {
  it('with the same values leaves every byte', () => {
    for (const text of [quillfeatherText, mudlarkText, quillfeatherText.replaceAll('\n', '\r\n')])
      expect(rewriteFile(text, dataOf(text))).toBe(text);
  });

  it('changes a figure where it stands', () => {
    const after = set(quillfeatherText, [...journal, 'limits', 'wear', 'least'], '54.925 mm (2.1624 in)');
    expect(after).toBe(
      quillfeatherText.replace('wear: { least: 54.930 mm }', 'wear: { least: 54.925 mm (2.1624 in) }'),
    );
  });

  it('puts a figure into braces and takes one out, with its comma', () => {
    const more = set(quillfeatherText, [...journal, 'limits', 'wear', 'greatest'], '55.1 mm');
    expect(linesApart(quillfeatherText, more).come).toEqual([
      '    limits: { new: { least: 54.970 mm, greatest: 54.990 mm }, wear: { least: 54.930 mm, greatest: 55.1 mm } }',
    ]);
    expect(set(more, [...journal, 'limits', 'wear', 'greatest'], undefined)).toBe(quillfeatherText);
    const without = set(quillfeatherText, [...journal, 'limits', 'wear', 'least'], undefined);
    expect(linesApart(quillfeatherText, without).come).toEqual([
      '    limits: { new: { least: 54.970 mm, greatest: 54.990 mm } }',
    ]);
  });

  it('adds an entry on lines of its own behind the last, and takes one out with its lines', () => {
    const entry = {
      title: "rocker shaft diameter, 'as cast'",
      at: 'head',
      wears: 'smaller',
      limits: { new: { least: '18.00 mm' } },
      source: 'sheet 9: rockers',
    };
    const after = set(quillfeatherText, ['characteristics', 'rocker-shaft'], entry);
    expect(linesApart(quillfeatherText, after).come).toEqual(
      [
        '  rocker-shaft:',
        "    title: 'rocker shaft diameter, ''as cast'''",
        '    wears: smaller',
        '    limits: { new: { least: 18.00 mm } }',
        "    source: 'sheet 9: rockers'",
      ].filter((line) => !quillfeatherText.split('\n').includes(line)),
    );
    expect(after).toContain('    source: invented, sheet 7\n  rocker-shaft:\n');
    expect(set(after, ['characteristics', 'rocker-shaft'], undefined)).toBe(quillfeatherText);
  });

  it('keeps the comments round an offer that goes', () => {
    const after = set(quillfeatherText, ['offers', 0], undefined);
    expect(after).toContain(
      'offers:\n  # Crankshaft: ground in one setting, exchanged for a ground one, or renewed whole.\n  - component: mains',
    );
    expect(linesApart(quillfeatherText, after).gone).toEqual(["    price: '148.00'"]);
    expect(quillfeatherText.split('\n').length - after.split('\n').length).toBe(9);
  });

  it('adds a step behind the last in the manner of the file', () => {
    const after = set(quillfeatherText, ['components', 'mains', 'sizes', 'steps', 2], {
      name: '0.75',
      limits: { new: { least: '54.220 mm', greatest: '54.240 mm' }, wear: { least: '54.180 mm' } },
    });
    expect(after).toContain(
      "wear: { least: 54.430 mm } }\n        - name: '0.75'\n          limits: { new: ",
    );
  });

  it('keeps quotes as they were typed', () => {
    expect(set(quillfeatherText, ['offers', 0, 'price'], '151.50')).toContain("price: '151.50'");
  });

  it('leaves JSON as JSON, laid out as it was', () => {
    const json = JSON.stringify(dataOf(mudlarkText), null, 2);
    const after = set(
      json,
      ['characteristics', 'main-journal-diameter', 'limits', 'wear', 'greatest'],
      '36 mm',
    );
    expect(JSON.parse(after)).toEqual(
      withValue(
        JSON.parse(json),
        ['characteristics', 'main-journal-diameter', 'limits', 'wear', 'greatest'],
        '36 mm',
      ),
    );
    const { gone } = linesApart(json, after);
    expect(gone.length).toBeLessThanOrEqual(1);
  });

  /** Every path of a value, its own among them. */
  const pathsOf = (value: unknown, path: FilePath = []): readonly FilePath[] => [
    ...(path.length > 0 ? [path] : []),
    ...(Array.isArray(value)
      ? value.flatMap((item, at) => pathsOf(item, [...path, at]))
      : isEntries(value)
        ? Object.entries(value).flatMap(([key, item]) => pathsOf(item, [...path, key]))
        : []),
  ];

  const anyValue = fc.letrec<{ readonly value: unknown }>((tie) => ({
    value: fc.oneof(
      { depthSize: 'small', withCrossShrink: true },
      fc.string({ maxLength: 30, unit: 'grapheme-ascii' }),
      fc.constantFrom('0.25', 'true', '54.970 mm', 'a \'b\' "c"', '# no', '- no', 'a: b', 'null', ' x '),
      fc.integer(),
      fc.boolean(),
      fc.array(tie('value'), { maxLength: 3 }),
      fc.dictionary(fc.constantFrom('title', 'at', 'limits', 'new', 'least'), tie('value'), { maxKeys: 5 }),
    ),
  })).value;

  it.each([
    ['a block file', mudlarkText],
    ['a block file with other line ends', mudlarkText.replaceAll('\n', '\r\n')],
    ['a JSON file', JSON.stringify(dataOf(mudlarkText), null, 2)],
  ])('holds what it should whatever is set or taken out anywhere: %s', (_, text) => {
    const data = dataOf(text);
    const paths = pathsOf(data);
    const comments = text.match(/^ *#.*$/gm) ?? [];
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(paths.length - 1), fc.option(anyValue, { nil: undefined })), {
          minLength: 1,
          maxLength: 3,
        }),
        (edits) => {
          let now = data;
          for (const [at, value] of edits) {
            const path = paths[at] ?? [];
            if (valueAt(now, path) !== undefined && path.length > 1) now = withValue(now, path, value);
          }
          const after = rewriteFile(text, now);
          expect(dataOf(after)).toEqual(now);
          if (edits.every(([at]) => (paths[at] ?? []).length > 3))
            for (const comment of comments) expect(after).toContain(comment);
        },
      ),
      { numRuns: 30 },
    );
  });
});
