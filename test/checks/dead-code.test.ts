/** @module Nothing lies about unused: files, exports, packages. */
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { fixture, root } from './files.ts';
import { runNode } from './run.ts';

const knip = (folder: string): { code: number; output: string } =>
  runNode(join(root, 'node_modules/knip/bin/knip.js'), ['--no-progress'], folder);

describe('dead code', () => {
  it('is not kept', () => {
    const { code, output } = knip(root);
    expect(code, output).toBe(0);
  });

  it('is seen: a file, an export and a package that nothing uses', () => {
    const { code, output } = knip(fixture('dead-code'));
    expect(code).toBe(1);
    for (const what of ['src/unused-file.ts', 'unusedExport', 'unused-package'])
      expect(output).toContain(what);
    expect(output).not.toMatch(/\busedExport\b/);
  });
});
