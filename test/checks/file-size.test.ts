/** @module No file grows past what one can hold in mind. */
import { describe, expect, it } from 'vitest';
import { codeFiles, fixture, type TextFile } from './files.ts';

const asked = 250;
const refused = 400;

const lines = ({ text }: TextFile): number => text.trimEnd().split('\n').length;
const longerThan = (limit: number, files: readonly TextFile[]): readonly string[] =>
  files.filter((file) => lines(file) > limit).map((file) => `${file.path}: ${lines(file)} lines`);

describe('a file', () => {
  it(`is refused past ${refused} lines, and named past ${asked}`, () => {
    const files = codeFiles();
    expect(files.length).toBeGreaterThan(0);
    for (const long of longerThan(asked, files)) console.warn(`asked why: ${long} (over ${asked})`);
    expect(longerThan(refused, files)).toEqual([]);
  });

  it('is seen to be too long', () => {
    const long = { path: 'src/long.ts', text: 'export {};\n'.repeat(refused + 1) };
    expect(longerThan(refused, [long])).toEqual([`src/long.ts: ${refused + 1} lines`]);
    expect(longerThan(refused, [{ ...long, text: 'export {};\n'.repeat(refused) }])).toEqual([]);
  });

  it('says in its first line what it is for', () => {
    const silent = (files: readonly TextFile[]): readonly string[] =>
      files
        .filter(({ path }) => /\.(ts|tsx|mjs|js)$/.test(path))
        .filter(({ text }) => !/^(#!.*\n)?\/\*\*(\n \*)? @module \S/.test(text))
        .map(({ path }) => path);
    expect(silent(codeFiles())).toEqual([]);
    expect(silent(codeFiles(fixture('silent')))).toEqual(['src/quantity/silent.ts']);
  });
});
