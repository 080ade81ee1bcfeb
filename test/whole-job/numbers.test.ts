/** @module Jobs are found by number or id, and two that share a number are never taken for one another. */
import { afterAll, describe, expect, it } from 'vitest';
import { bench, demoFile } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

const engine = demoFile('engines/mudlark-1.yaml');
const book = (store: string, owner: string, ...more: readonly string[]) =>
  at.ask([
    'book-in',
    engine,
    `owner=${owner}`,
    'plate=1',
    'hours=1h',
    'complaint=none',
    'currency=crowns',
    ...more,
    '--store',
    store,
  ]);

describe('the number of a job', () => {
  it('is the next free one, and one in use is refused', async () => {
    expect((await book('one.sqlite', 'A')).out).toBe('Booked in as J-1.\n');
    expect((await book('one.sqlite', 'B', 'number=J-7')).out).toBe('Booked in as J-7.\n');
    expect((await book('one.sqlite', 'C')).out).toBe('Booked in as J-8.\n');
    expect(await book('one.sqlite', 'D', 'number=j-7')).toMatchObject({
      code: 1,
      err: expect.stringContaining('there is a job j-7 already') as string,
    });
  });

  it('finds a job in small letters too, and an unknown one is answered with the nearest', async () => {
    const show = (name: string) => at.ask(['show', name, '--store', 'one.sqlite']);
    expect((await show('j-7')).out).toMatch(/^Job: J-7\nOwner: B$/m);
    expect((await show('J-77')).err).toMatch(/there is no job J-77 .*did you mean J-7/);
  });

  it('that two jobs share after one was taken in from elsewhere finds neither: the id does', async () => {
    await book('two.sqlite', 'Elsewhere');
    await at.ask(['export', 'J-1', '--to', 'elsewhere.json', '--store', 'two.sqlite']);
    expect(await at.ask(['import', 'elsewhere.json', '--store', 'one.sqlite'])).toMatchObject({ code: 0 });
    const both = await at.ask(['show', 'J-1', '--store', 'one.sqlite']);
    expect(both).toMatchObject({ code: 2, out: '' });
    const [, id = ''] = /([0-9a-f-]{36}) \(Elsewhere\)/.exec(both.err) ?? [];
    expect((await at.ask(['show', id, '--store', 'one.sqlite'])).out).toMatch(/^Owner: Elsewhere$/m);
  });

  it('may be anything, and a record of that name still lies in the folder', async () => {
    await book('three.sqlite', 'A', 'number=../../etc/passwd');
    const { out, code } = await at.ask(['record', '../../etc/passwd', '--store', 'three.sqlite']);
    expect(code).toBe(0);
    expect(out).toContain(`${at.folder}/record--etc-passwd.html`);
  });
});
