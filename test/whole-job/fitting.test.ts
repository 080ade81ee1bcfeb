/** @module Parts from stock to places in the terminal: measured, proposed, noted, and told in the record. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { bench } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

const by = ['--by', 'Odo Ferrick', '--bench', 'bench 2'];

interface Fitted {
  readonly places: readonly {
    readonly place: string;
    readonly room: { readonly value: number };
    readonly proposed: { readonly parts: readonly string[]; readonly off: number };
    readonly assigned?: { readonly parts: readonly string[]; readonly verdict: string };
  }[];
  readonly set: { readonly kind: string; readonly greatestOff: number; readonly proved: boolean };
}

const fitted = async (job: string): Promise<Fitted> => {
  const { code, out, err } = await at.ask(['fit', job, 'pistons', '--json']);
  if (code !== 0) throw new Error(err);
  return JSON.parse(out) as Fitted;
};

const done = async (words: readonly string[]): Promise<string> => {
  const { code, out, err } = await at.ask([...words, ...by]);
  if (code !== 0) throw new Error(`${words.join(' ')}: ${err}`);
  return out;
};

describe('parts from stock, in the terminal', { timeout: 120_000 }, () => {
  it('say what is missing before any is measured', async () => {
    await at.ask(['demo']);
    const { code, out } = await at.ask(['fit', 'J-2', 'pistons']);
    expect(code).toBe(1);
    expect(out).toContain('no part of size standard is measured');
  });

  it('are measured, and each place is offered the one nearest the middle of its clearance', async () => {
    for (const [part, size] of [
      ['A', '85.061'],
      ['B', '85.044'],
      ['C', '85.052'],
      ['D', '85.071'],
    ])
      await done([
        ...['do', 'J-2', 'measure-part', 'component=pistons'],
        ...[`part=${part}`, `readings=${size}mm; ${size}mm`, 'instrument=mic-75-100'],
      ]);
    const { places, set } = await fitted('J-2');
    expect(set).toMatchObject({ kind: 'fitted', proved: true });
    // source: by hand; rooms of 85.132, 85.157 and 85.146 mm less the middle of 0.065 to 0.107 mm, 0.086 mm
    expect(places.map(({ room }) => room.value.toFixed(3))).toEqual(['85.132', '85.157', '85.146']);
    expect(places.map(({ proposed }) => proposed.parts)).toEqual([['B'], ['D'], ['A']]);
  });

  it('are noted as proposed, or otherwise by name, and refused where the clearance would be outside', async () => {
    expect(await done(['fit', 'J-2', 'pistons', '--assign'])).toContain('3 places have their parts');
    expect((await fitted('J-2')).places.map(({ assigned }) => assigned)).toMatchObject([
      { parts: ['B'], verdict: 'within' },
      { parts: ['D'], verdict: 'within' },
      { parts: ['A'], verdict: 'within' },
    ]);
    await done(['do', 'J-2', 'assign-parts', 'component=pistons', 'places=piston.1 C']);
    expect((await fitted('J-2')).places[0]?.assigned?.parts).toEqual(['C']);
    await done([
      'do',
      'J-2',
      'measure-part',
      'component=pistons',
      'part=E',
      'readings=85.100mm',
      'instrument=mic-75-100',
    ]);
    const { code, err } = await at.ask([
      ...['do', 'J-2', 'assign-parts', 'component=pistons', 'places=piston.1 E'],
      ...by,
    ]);
    expect(code).toBe(1);
    expect(err).toContain('the clearance would be 0.032 mm, outside 0.065 to 0.107 mm');
  });

  it('are in the record of the job that was finished, and it verifies', async () => {
    expect((await at.ask(['record', 'J-3', '--to', 'j3.html'])).code).toBe(0);
    const page = readFileSync(join(at.folder, 'j3.html'), 'utf8');
    expect(page).toContain('Parts fitted from stock by their sizes');
    expect(page).toMatch(/K2 78\.42\d/);
    expect((await at.ask(['verify', 'j3.html'])).code).toBe(0);
  });
});
