/** @module The core gives the same answer on every machine and every day. */
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { codeFiles, fixture, pureFiles, root } from './files.ts';
import { impurities } from './purity.ts';
import { runNode } from './run.ts';

const [impure] = codeFiles(fixture('purity'));

/** Lints and compiles the violating example under the project's own settings, in a folder of its own. */
const inProjectLike = (check: (folder: string) => string): string => {
  const folder = mkdtempSync(join(tmpdir(), 'purity-'));
  try {
    for (const file of ['biome.json', 'tsconfig.base.json', 'tsconfig.core.json'])
      cpSync(join(root, file), join(folder, file));
    cpSync(fixture('purity'), folder, { recursive: true });
    return check(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

describe('the core', () => {
  it('reads no randomness and no locale', () => {
    const files = pureFiles();
    expect(files.length).toBeGreaterThan(0);
    expect(files.flatMap(impurities)).toEqual([]);
  });

  it('is seen to be impure by randomness, locale and hidden code', () => {
    const found = impure ? impurities(impure) : [];
    for (const what of [
      'Math.random',
      'Math[…]',
      'localeCompare',
      'toLocaleString',
      'import.meta',
      'import()',
      'eval',
      'Function',
    ]) {
      expect(
        found.filter((text) => text.includes(what)),
        what,
      ).not.toEqual([]);
    }
  });

  it('is seen to be impure by clock, globals and Node in the linter', () => {
    const biome = join(root, 'node_modules/@biomejs/biome/bin/biome');
    const output = inProjectLike(
      (folder) => runNode(biome, ['lint', '--reporter=json', 'src'], folder).output,
    );
    for (const what of [
      'Date',
      'performance',
      'process',
      'console',
      'fetch',
      'setTimeout',
      'globalThis',
      'Intl',
      'knows no Node',
    ]) {
      expect(output).toContain(what);
    }
  });

  it('is seen to be impure by Node and browser names in the compiler', () => {
    const tsc = join(root, 'node_modules/@typescript/native/bin/tsc');
    const output = inProjectLike((folder) => runNode(tsc, ['-p', 'tsconfig.core.json'], folder).output);
    for (const what of ['node:fs', 'process', 'console', 'fetch', 'setTimeout', 'performance', 'document']) {
      expect(output).toMatch(new RegExp(`Cannot find (name|module).*'${what}'`));
    }
  });
});
