/** @module Every sum says what it takes, what it gives, where it comes from, and shows one worked. */
import { describe, expect, it } from 'vitest';
import { codeFiles, fixture, pureFiles } from './files.ts';
import { missingPapers } from './papers.ts';

describe('a sum', () => {
  it('carries its papers', () => {
    const reckonings = pureFiles().filter(({ path }) => path.startsWith('src/reckon/'));
    expect(reckonings.length).toBeGreaterThan(0);
    expect(reckonings.flatMap(missingPapers)).toEqual([]);
  });

  it('is seen to lack its papers', () => {
    expect(codeFiles(fixture('papers')).flatMap(missingPapers)).toEqual([
      'src/reckon/paperless.ts:3 bare lacks @param length, @returns, @source, @example',
      'src/reckon/paperless.ts:11 halfway lacks @param width, @source',
    ]);
  });
});
