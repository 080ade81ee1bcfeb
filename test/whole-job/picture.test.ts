/** @module A picture taken in the terminal: cleaned, kept, shown in the record, checked, carried to another workshop. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { joined, lettersOf } from '../../src/picture/bytes.ts';
import { pngChunk } from '../../src/picture/png.ts';
import { drawnJpeg } from '../picture/drawn.ts';
import { drawnPng } from '../picture/drawn-png.ts';
import { bench } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

const secret = '52.1234N 4.5678E';

/** A picture with words behind its header. */
const told = (png: Uint8Array): Uint8Array =>
  joined([png.subarray(0, 33), pngChunk('tEXt', lettersOf(`Location\0${secret}`)), png.subarray(33)]);

describe('a picture from a file', { timeout: 120_000 }, () => {
  beforeAll(async () => {
    writeFileSync(join(at.folder, 'found.png'), told(drawnPng(7)));
    writeFileSync(join(at.folder, 'found.jpg'), drawnJpeg);
    writeFileSync(join(at.folder, 'found.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
    expect((await at.ask(['demo'])).code).toBe(0);
  });

  it('is kept of a place, an operation and a finding, and says what was taken out of the file', async () => {
    const place = await at.ask(['picture', 'J-1', 'found.png', '--place', 'main.2', '--says', 'as it came']);
    expect(place.err).toBe('');
    expect(place.out).toMatch(
      /^J-1: picture of .*2 taken, 48 × 32 pixels, \d+ bytes; \d+ bytes of other data taken out\.\n$/,
    );
    const operation = await at.json<{ of: object; picture: { mediaType: string } }>(
      'picture',
      'J-1',
      'found.jpg',
      '--operation',
      'lift-crankshaft',
      '--finding',
      'bore.2',
    );
    expect(operation).toMatchObject({
      picture: { mediaType: 'image/jpeg', width: 48 },
      of: { operation: 'lift-crankshaft', finding: expect.stringMatching(/^[0-9a-f-]{36}$/) },
    });
  });

  it('is refused where it is no picture, or shows what is not there; the answer is then no', async () => {
    for (const [words, why] of [
      [['picture', 'J-1', 'found.svg'], 'this is no picture that can be kept'],
      [['picture', 'J-1', 'found.png', '--place', 'main.22'], 'has no place “main.22”'],
      [['picture', 'J-1', 'found.png', '--finding', 'main.1'], 'there is no finding at main.1'],
      [['picture', 'J-1', 'found.png', '--place', 'main.2'], 'this picture is there already'],
      [['picture', 'J-3', 'found.png'], 'handed over'],
    ] as const) {
      const { code, err } = await at.ask(words);
      expect(err).toContain(why);
      expect(code).toBe(1);
    }
  });

  it('is not named before it is here, by whatever way', async () => {
    const unknown = { hash: 'ab'.repeat(32), mediaType: 'image/png', width: 48, height: 32, bytes: 90 };
    const request = { kind: 'take picture', picture: unknown, of: {}, says: '' };
    writeFileSync(join(at.folder, 'early.json'), JSON.stringify([request]));
    const early = await at.ask(['do', 'J-1', '--requests', 'early.json']);
    expect(early.code).toBe(1);
    expect(early.err).toContain('the picture itself has not arrived');
  });

  it('stands in the record, which verifies, and tells nothing but the picture', async () => {
    expect((await at.ask(['record', 'J-1', '--to', 'record.html'])).code).toBe(0);
    const page = readFileSync(join(at.folder, 'record.html'), 'utf8');
    expect(page.match(/<img data-picture=/g)).toHaveLength(3);
    expect(page).not.toContain(secret);
    const verified = await at.ask(['verify', 'record.html']);
    expect(verified.out).toContain('3 pictures as they were taken');
    expect(verified.code).toBe(0);
  });

  it('that was changed in the record is found out, and named', async () => {
    const page = readFileSync(join(at.folder, 'record.html'), 'utf8');
    const from = page.indexOf('base64,', page.indexOf('src="data:image/png')) + 400;
    const other = page[from] === 'A' ? 'B' : 'A';
    writeFileSync(join(at.folder, 'changed.html'), `${page.slice(0, from)}${other}${page.slice(from + 1)}`);
    const changed = await at.ask(['verify', 'changed.html']);
    expect(changed.code).toBe(1);
    expect(changed.err).toMatch(/picture \d is not the one that was taken: it has been changed/);
    // Another picture in its stead.
    const foreign = page.replace(/data-picture="[0-9a-f]{8}/, 'data-picture="00000000');
    writeFileSync(join(at.folder, 'foreign.html'), foreign);
    expect((await at.ask(['verify', 'foreign.html'])).err).toContain('that the journal does not name');
  });

  it('that is lacking in an exported file is named, and the rest stands', async () => {
    expect((await at.ask(['export', 'J-1', '--to', 'job.json'])).code).toBe(0);
    const file = JSON.parse(readFileSync(join(at.folder, 'job.json'), 'utf8')) as {
      pictures: Record<string, string>;
    };
    expect(Object.keys(file.pictures)).toHaveLength(3);
    const [first = '', ...others] = Object.entries(file.pictures);
    const without = { ...file, pictures: Object.fromEntries(others) };
    writeFileSync(join(at.folder, 'without.json'), JSON.stringify(without));
    const lacking = await at.ask(['verify', 'without.json']);
    expect(lacking.code).toBe(0);
    expect(lacking.err).toMatch(/^endfloat: not in the file: picture 1, .+\n$/);
    expect(first).not.toBe('');
  });

  it('goes with its job to another workshop, and is the same there', async () => {
    expect((await at.ask(['import', 'job.json', '--store', 'other.sqlite'])).out).toContain('; 3 pictures.');
    expect((await at.ask(['record', 'J-1', '--to', 'there.html', '--store', 'other.sqlite'])).code).toBe(0);
    expect(readFileSync(join(at.folder, 'there.html'), 'utf8')).toBe(
      readFileSync(join(at.folder, 'record.html'), 'utf8'),
    );
  });

  it('may be struck out with why, and is then left out of the record', async () => {
    const taken = await at.json<{ event: { id: string } }>(
      'picture',
      'J-1',
      'found.jpg',
      '--place',
      'main.1',
    );
    const strike = ['do', 'J-1', 'strike-out-picture', `picture=${taken.event.id}`, 'why=another engine'];
    expect((await at.ask(strike)).code).toBe(0);
    await at.ask(['record', 'J-1', '--to', 'after.html']);
    const page = readFileSync(join(at.folder, 'after.html'), 'utf8');
    expect(page).toContain('another engine');
    expect(page.match(/<img data-picture=/g)).toHaveLength(3);
    expect((await at.ask(['verify', 'after.html'])).code).toBe(0);
  });
});
