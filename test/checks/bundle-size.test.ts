/** @module What the browser must fetch before it shows anything stays small enough for a slow bench network. */

import { randomBytes } from 'node:crypto';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { root } from './files.ts';

const most = 150_000;

/** Bytes, compressed, of the page and of every script and style sheet that it names. */
const firstLoad = (folder: string): number => {
  const page = readFileSync(join(folder, 'index.html'), 'utf8');
  const named = [...page.matchAll(/(?:src|href)="\/([^"]+\.(?:js|css))"/g)].map((match) => match[1] ?? '');
  const files = ['index.html', ...new Set(named)];
  return files.reduce((sum, file) => sum + gzipSync(readFileSync(join(folder, file))).length, 0);
};

describe('the first load of the browser app', () => {
  const built = join(root, 'dist/web');

  it(`stays below ${most / 1000} kB compressed`, (context) => {
    context.skip(!existsSync(join(built, 'index.html')), 'the app is not built: npm run build:web');
    expect(firstLoad(built)).toBeGreaterThan(1000);
    expect(firstLoad(built)).toBeLessThan(most);
  });

  it('is seen to be too large', () => {
    const folder = mkdtempSync(join(tmpdir(), 'first-load-'));
    try {
      writeFileSync(join(folder, 'index.html'), '<script type="module" src="/large.js"></script>');
      writeFileSync(join(folder, 'large.js'), randomBytes(most));
      expect(firstLoad(folder)).toBeGreaterThan(most);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
