/** @module The demo workshop tells what it was made to tell, the same at every loading. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { demoJobs, loadDemo } from '../../demo/workshop.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';
import { bench, demoFile } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

interface Told {
  readonly jobs: readonly {
    readonly number: string;
    readonly counts: Readonly<Record<string, number>>;
    readonly doubts: readonly {
      readonly slip: string;
      readonly places: readonly string[];
      readonly likely: readonly { text: string }[];
    }[];
  }[];
  readonly plan: { readonly kind: string; readonly cents: number; readonly bound: number };
  readonly pumps: readonly { readonly chosen?: { readonly error: number } }[];
  readonly record: string;
  readonly verified: boolean;
}

describe('the demo workshop', { timeout: 120_000 }, () => {
  it('is the same at every loading, and loading it twice changes nothing', async () => {
    const journals: string[] = [];
    for (const name of ['one.sqlite', 'two.sqlite']) {
      const store = await openSqliteStore(join(at.folder, name));
      await loadDemo(store);
      const once = await Promise.all(demoJobs.map((job) => store.readFrom(job, 0)));
      await loadDemo(store);
      const twice = await Promise.all(demoJobs.map((job) => store.readFrom(job, 0)));
      expect(twice).toEqual(once);
      journals.push(JSON.stringify(once));
      await store.close();
    }
    expect(journals[0]).toBe(journals[1]);
  });

  it('is worked through: hidden slips doubted, a plan proved, packs chosen, a record that verifies', async () => {
    const told = await at.json<Told>('demo');
    const [half, whole, done] = told.jobs;
    // The slips that were hidden in the readings when the demo was made up.
    expect(half?.doubts.map(({ slip }) => slip)).toEqual(['thimble turn', 'shim packs swapped']);
    expect(half?.doubts[0]?.likely[0]?.text).toBe('54.978');
    expect(half?.doubts[1]?.places).toEqual(['pump.1', 'pump.3']);
    expect(half?.counts['not yet known']).toBeGreaterThan(0);
    // Three spills and six valve clearances are read when the engine is together again.
    expect(whole).toMatchObject({ doubts: [], counts: { 'not yet known': 9 } });
    expect(told.plan.kind).toBe('plan');
    expect(told.plan.bound).toBe(told.plan.cents);
    expect(told.pumps).toHaveLength(3);
    expect(done?.doubts).toEqual([]);
    expect(told.verified).toBe(true);
    expect(readFileSync(told.record, 'utf8')).toMatch(/^<!DOCTYPE html>/);
  });

  it('leaves a workshop with jobs of its own as it is', async () => {
    const own = ['--store', 'own.sqlite'];
    const booking = ['owner=A', 'plate=1', 'hours=1h', 'complaint=none', 'currency=crowns'];
    await at.ask(['book-in', demoFile('engines/mudlark-1.yaml'), ...booking, ...own]);
    expect(await at.ask(['demo', ...own])).toMatchObject({
      code: 0,
      out: expect.stringContaining('in use and was left as it is') as string,
    });
    const { out } = await at.ask(['jobs', '--json', ...own]);
    expect((JSON.parse(out) as { jobs: unknown[] }).jobs).toHaveLength(1);
  });
});
