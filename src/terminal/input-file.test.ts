/** @module A file that cannot be used is refused in words, never with a fault. */
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bytesOf, textOf } from './input-file.ts';
import type { World } from './world.ts';

const folder = mkdtempSync(join(tmpdir(), 'endfloat-files-'));
const world = { folder, standardInput: async () => new TextEncoder().encode('piped') } as unknown as World;

beforeAll(() => {
  writeFileSync(join(folder, 'good.csv'), '\ufeffplace,reading\n');
  writeFileSync(join(folder, 'latin.csv'), Buffer.from([0x70, 0xb5, 0x6d]));
  writeFileSync(join(folder, 'picture'), Buffer.from([0x89, 0x50, 0, 0]));
  symlinkSync('round', join(folder, 'round'));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('a file named on the command line', () => {
  it('is read, the mark of byte order taken away', async () => {
    expect(await textOf('good.csv', world)).toEqual({ kind: 'answer', value: 'place,reading\n' });
  });

  it('called - is standard input', async () => {
    expect(await textOf('-', world)).toEqual({ kind: 'answer', value: 'piped' });
  });

  it.each([
    ['absent.csv', 'there is no such file'],
    ['good.csv/below', 'there is no such file'],
    ['.', 'this is a folder'],
    ['', 'no file is named'],
    ['a\0b', 'no file is named'],
    ['round', 'the path goes round in circles'],
    ['/dev/zero', 'this is not a file'],
    [`${'x'.repeat(300)}.csv`, 'the name is too long'],
    ['picture', 'this is not a text file in UTF-8'],
    ['latin.csv', 'the text is not in UTF-8'],
  ])('is refused: %j', async (path, what) => {
    expect(await textOf(path, world)).toMatchObject({ kind: 'refused', refusal: { what } });
  });

  it('may be of any bytes where its reader looks at them itself', async () => {
    expect(await bytesOf('picture', world)).toMatchObject({ kind: 'answer' });
  });
});
