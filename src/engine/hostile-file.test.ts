/** @module Files from strangers: a clear trouble after bounded work, whatever they hold. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changed, mudlarkText, quillfeatherText } from '../../test/engines/demo-engines.ts';
import { readDocument } from './file-document.ts';
import { readEngineType } from './read-engine-type.ts';

const mebibyte = 1024 * 1024;
const fill = (text: string) => text.repeat(Math.floor(mebibyte / text.length));

/** Tokens read before a thing was refused: a count, so that the test does not hang on the machine's speed. */
const looked = (text: string): number => readDocument(text).tokens;

describe('deep nesting', { timeout: 30_000 }, () => {
  it.each([
    ['brackets', fill('[')],
    ['braces', fill('{a: ')],
    ['dashes', fill('- ')],
    ['question marks', fill('? ')],
    ['colons', fill(': ')],
    ['indentation', Array.from({ length: 1400 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n')],
  ])('of %s is refused after a few hundred tokens', (_, text) => {
    const { document, troubles, tokens } = readDocument(text);
    expect(document).toBeUndefined();
    expect(troubles).toMatchObject([{ what: 'the nesting is deeper than 40 levels' }]);
    expect(tokens).toBeLessThan(500);
  });

  it('is let through up to 40 levels', () => {
    const nested = (depth: number) => `a: ${'['.repeat(depth)}${']'.repeat(depth)}`;
    expect(readDocument(nested(39)).troubles).toEqual([]);
    expect(readDocument(nested(40)).troubles).toMatchObject([{ what: /deeper than 40/ }]);
  });
});

describe('an alias bomb', () => {
  it('is refused at its first anchor, before anything is built', () => {
    const bomb = ['a: &a [x, x, x, x, x, x, x, x, x]']
      .concat([...'bcdefghi'].map((name, no) => `${name}: &${name} [${`*${'abcdefgh'[no]}, `.repeat(9)}]`))
      .join('\n');
    expect(readEngineType(bomb).troubles).toMatchObject([{ what: /an anchor/, line: 1, column: 4 }]);
    expect(looked(bomb)).toBeLessThan(10);
  });

  it('is an alias without an anchor too', () => {
    expect(readEngineType('a: *b').troubles).toMatchObject([{ what: /an alias/, line: 1 }]);
  });
});

describe('junk by the megabyte', { timeout: 30_000 }, () => {
  it.each([
    ['closing brackets', fill('}')],
    ['quotes', fill('"')],
    ['quotes apart', fill("' ")],
    ['line ends', fill('\n')],
    ['one key a line', Array.from({ length: 90_000 }, (_, no) => `a${no}: 1`).join('\n')],
    ['the same key', fill('a: 1\n')],
    ['a long list', `a: [${'1,'.repeat(500_000)}1]`],
    ['documents', fill('---\n')],
  ])('such as %s is refused when it has too many entries', (_, text) => {
    const { document, troubles, tokens } = readDocument(text);
    expect(document).toBeUndefined();
    expect(troubles).toMatchObject([{ what: 'the file has far too many entries' }]);
    expect(tokens).toBe(150_001);
  });

  it.each([
    ['one comment', fill('#')],
    ['blanks', fill(' ')],
    ['tabs', fill('\t')],
    ['bars', fill('|')],
    ['commas', fill(',')],
    ['percent signs', fill('%')],
    ['one long word', `a: ${fill('x').slice(4)}`],
    ['all marks by turns', fill('{[,:]}?-')],
  ])('such as %s comes to a few troubles', (_, text) => {
    const { engine, troubles } = readEngineType(text);
    expect(engine).toBeUndefined();
    expect(troubles.length).toBeGreaterThan(0);
    expect(troubles.length).toBeLessThanOrEqual(50);
  });

  it('says no more than fifty troubles', () => {
    const text = changed(quillfeatherText, [
      'offers:\n',
      `offers:\n${Array.from({ length: 1500 }, () => '  - { component: nobody }\n').join('')}`,
    ]);
    expect(readEngineType(text).troubles).toHaveLength(50);
  });
});

describe('what has no place in an engine type', () => {
  it.each([
    ['a tag', 'a: !!js/function "x"', /a tag/],
    ['a directive', '%YAML 1.1\n---\na: b', /percent sign/],
    ['a second document', `${quillfeatherText}\n---\na: b\n`, /a second document/],
    [
      'the key __proto__',
      `${quillfeatherText}\n__proto__: { title: x }\n`,
      /the key __proto__ is not allowed/,
    ],
    ['the key __proto__ in JSON', '{"format": "x", "places": {"__proto__": {"title": "x"}}}', /__proto__/],
    ['the key constructor', 'places: { constructor: { prototype: 1 } }', /the key constructor/],
    ['a key that is a list', '? [a, b]\n: c', /a key is not a plain word/],
    ['a control character in disguise', 'title: "bell \\u0007"', /U\+0007/],
    ['half a surrogate pair in disguise', 'title: "\\ud800"', /U\+D800/],
  ])('is %s', (_, text, says) => {
    const { engine, troubles } = readEngineType(text);
    expect(engine).toBeUndefined();
    expect(troubles.map(({ what }) => what).join('\n')).toMatch(says);
  });

  it.each(['.nan', '.inf', '-.inf', '1e999'])('is the number %s', (number) => {
    const text = changed(quillfeatherText, ['days: 5', `days: ${number}`]);
    expect(readEngineType(text).troubles).toMatchObject([{ what: /stands where a number belongs/ }]);
  });

  it('leaves the prototype of all objects as it was', () => {
    readEngineType('__proto__: { polluted: true }\nplaces: { __proto__: { polluted: true } }');
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('is not a mark inside quotes or a block of text', () => {
    for (const text of ["a: '*not an alias'", 'a: "&not an anchor"', 'a: |\n  *text !also &text\n  %text']) {
      expect(readDocument(text).troubles).toEqual([]);
    }
  });
});

describe('any input at all', { timeout: 60_000 }, () => {
  const outcome = (source: string | Uint8Array) => {
    const { engine, troubles } = readEngineType(source);
    const errors = troubles.filter(({ weight }) => weight === 'error');
    expect(engine === undefined).toBe(errors.length > 0);
    for (const { line, column, what, remedy } of troubles) {
      expect(Number.isInteger(line) && line >= 1 && Number.isInteger(column) && column >= 1).toBe(true);
      expect(what).not.toBe('');
      expect(remedy).not.toBe('');
    }
  };

  it('comes to troubles or an engine, never to an exception: any text', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 120 }), outcome), { numRuns: 200 });
  });

  it('any bytes', () => {
    fc.assert(fc.property(fc.uint8Array({ maxLength: 120 }), outcome), { numRuns: 200 });
  });

  it('any text made of the marks of YAML and the words of the format', () => {
    const word = fc.constantFrom(
      ...[
        'a',
        'places',
        'main',
        'count',
        ':',
        ': ',
        '-',
        '- ',
        '?',
        '\n',
        '\n  ',
        '\n    ',
        '[',
        ']',
        '{',
        '}',
      ],
      ...[
        ',',
        '"',
        "'",
        '|',
        '>',
        '&a',
        '*a',
        '!t',
        '#',
        '%',
        '---',
        '...',
        '1',
        '.nan',
        '54.98 mm',
        '\\',
        '\t',
      ],
      ...['format', 'endfloat engine type 1', 'derived', 'difference', 'null', '~', '<<', '__proto__'],
    );
    const text = fc.array(word, { maxLength: 80 }).map((words) => words.join(''));
    fc.assert(fc.property(text, outcome), { numRuns: 500 });
  });

  it('any value put in place of one line of a sound file', () => {
    const lines = mudlarkText.split('\n');
    const at = fc.nat(lines.length - 1);
    const value = fc.oneof(fc.json({ maxDepth: 3 }), fc.string({ maxLength: 30 }), fc.double().map(String));
    fc.assert(
      fc.property(at, value, (line, put) => {
        const key = /^(\s*(?:- )?[a-z-]+: ?)/.exec(lines[line] ?? '')?.[1] ?? '';
        outcome(lines.with(line, key + put).join('\n'));
      }),
      { numRuns: 100 },
    );
  });
});
