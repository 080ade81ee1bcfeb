/** @module The command in a pipe: a reader that goes away early is no fault, and a file may come on standard input. */
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { bench, demoFile, root } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

describe('in a pipe', { timeout: 60_000 }, () => {
  it('ends quietly when its reader goes away', () => {
    const shown = execFileSync(
      'sh',
      ['-c', 'node bin/endfloat.js template demo/engines/quillfeather-3w.yaml 2>&1 | head -1'],
      {
        cwd: root,
        encoding: 'utf8',
      },
    );
    expect(shown).toMatch(/^place,characteristic,plane,axis,[a-z,]+\n$/);
  });

  it('reads a file called - from standard input', async () => {
    const { code, out } = await at.run(
      ['check', '-'],
      readFileSync(demoFile('engines/mudlark-1.yaml'), 'utf8'),
    );
    expect(out).toMatch(/^Mudlark 1 .*: 0 errors/);
    expect(code).toBe(0);
  });
});
