/** @module A one-pump job in the terminal: booked in to reach that pump, stripped, timed, run and handed over. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bench, demoFile } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

const told = async (...words: readonly string[]): Promise<string> => {
  const { code, out, err } = await at.ask(words);
  expect({ words, code, err }).toEqual({ words, code: 0, err: '' });
  return out;
};

interface Shown {
  readonly operations: readonly { readonly operation: string; readonly kind: string }[];
  readonly verdicts: readonly { readonly place: string }[];
}

const shown = async (): Promise<Shown> => JSON.parse(await told('show', 'J-4', '--json'));

const sign = async (...operations: readonly string[]): Promise<void> => {
  const asks = operations.map((operation) => JSON.stringify({ kind: 'do operation', operation, note: '' }));
  writeFileSync(join(at.folder, 'signed.jsonl'), asks.join('\n'));
  await told('do', 'J-4', '--requests', 'signed.jsonl');
};

beforeAll(() => told('demo'));

describe('one pump only, in the terminal', () => {
  it('is booked in to go no further', async () => {
    const booked = await told(
      'book-in',
      demoFile('engines/quillfeather-3w.yaml'),
      'owner=Sedgeford Pumping Station',
      'plate=Q3-774',
      'hours=3100h',
      'complaint=misses on the second cylinder',
      'reach=pump.2',
    );
    expect(booked).toBe('Booked in as J-4.\nIt goes as far as this: fuel pump 2.\n');
    const text = await told('show', 'J-4');
    expect(text).toContain('Scope: fuel pump 2\n');
    expect(text).not.toContain('lift-head');
  });

  it('asks for a scope that can be reached', async () => {
    const { code, err } = await at.ask(['do', 'J-4', 'set-scope', 'reach=pmup.2', 'says=a slip']);
    expect(code).toBe(1);
    expect(err).toContain('write pump.2');
  });

  it('is stripped, measured and decided for that pump', async () => {
    const strip = (await shown()).operations.map(({ operation }) => operation);
    await told('do', 'J-4', 'begin-work', 'operation=isolate-and-drain');
    await told('do', 'J-4', 'stop-work', 'operation=isolate-and-drain', 'why=coolant still hot');
    expect(await told('show', 'J-4')).toMatch(
      /Hours\n[\s\S]*isolate-and-drain .*Odo Ferrick +coolant still hot[\s\S]*left by the engine type: \d+ h \d\d min for 15/,
    );
    await sign(...strip.slice(0, strip.indexOf('lift-pumps') + 1));
    const { err } = await at.ask(['do', 'J-4', 'do-operation', 'operation=lift-head']);
    expect(err).toContain('this job does not go so far');
    expect((await shown()).verdicts.every(({ place }) => place === 'pump.2')).toBe(true);
    expect(await told('plan', 'J-4')).toMatch(/fuel pumps, fuel pump 2 +put back/);
    await told('choose', 'J-4');
    await told('do', 'J-4', 'note-agreement', 'name=H. Sedge', 'how=by telephone');
  });

  it('is timed, run and handed over, and its record says what was not opened', async () => {
    const csv =
      'place,characteristic,plane,axis,reading,unit,instrument,temperature\npump.2,pump-depth,,,82.45,mm,depth-0-100,\n';
    writeFileSync(join(at.folder, 'depth.csv'), csv);
    await told('take', 'J-4', 'depth.csv');
    await told('do', 'J-4', 'count-shims', 'shims=0.30mm x 1, 0.25mm x 2');
    await told('do', 'J-4', 'fit-pack', 'place=pump.2', 'shims=0.30mm + 0.25mm');
    const open = async () => (await shown()).operations.find(({ kind }) => kind === 'open')?.operation ?? '';
    for (let next = await open(); next !== ''; next = await open()) await sign(next);
    await told('do', 'J-4', 'log-run-step', 'speed=1500rpm', 'load=50%', 'minutes=30', 'note=even beat');
    expect((await shown()).operations.filter(({ kind }) => kind !== 'done')).toEqual([]);
    await told('do', 'J-4', 'hand-over', 'to=H. Sedge');
    await told('record', 'J-4', '--to', 'record.html');
    expect(await told('verify', 'record.html')).toMatch(/^Verified: J-4/);
    expect(readFileSync(join(at.folder, 'record.html'), 'utf8')).toContain(
      'Nothing is said here of their state.',
    );
  });
});
