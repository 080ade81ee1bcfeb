/** @module Every sum says what it takes, what it gives, where it comes from, and shows one worked. */
import { describe, expect, it } from 'vitest';
import { codeFiles, fixture, isTest, type TextFile } from './files.ts';
import { internalsCalled, missingPapers } from './papers.ts';

const split = (files: readonly TextFile[]): { reckonings: TextFile[]; others: TextFile[] } => {
  const sources = files.filter(({ path }) => path.startsWith('src/') && !isTest(path));
  const isReckoning = ({ path }: TextFile): boolean => path.startsWith('src/reckon/');
  return { reckonings: sources.filter(isReckoning), others: sources.filter((file) => !isReckoning(file)) };
};

const project = split(codeFiles());
const paperless = split(codeFiles(fixture('papers')));

describe('a sum', () => {
  it('carries its papers', () => {
    expect(project.reckonings.length).toBeGreaterThan(0);
    expect(project.reckonings.flatMap(missingPapers)).toEqual([]);
  });

  it('is seen to lack its papers', () => {
    expect(paperless.reckonings.flatMap(missingPapers)).toEqual([
      'src/reckon/paperless.ts:3 bare lacks @param length, @returns, @source, @example',
      'src/reckon/paperless.ts:11 halfway lacks @param width, @source',
    ]);
  });

  it('keeps its inner steps to itself', () => {
    expect(internalsCalled(project.reckonings, project.others)).toEqual([]);
  });

  it('is seen to give its inner steps away', () => {
    expect(internalsCalled(paperless.reckonings, paperless.others)).toEqual([
      'src/plan/caller.ts imports step, which is internal to its sum',
    ]);
  });
});
