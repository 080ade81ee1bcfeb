/** @module A workshop of its own for a browser test: a fresh store in a file, the real server, the built app. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { instruments } from '../../demo/instruments.ts';
import { registerEvents } from '../../demo/register.ts';
import { loadDemo } from '../../demo/workshop.ts';
import type { EngineType } from '../../src/engine/engine-type.ts';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { readReadings } from '../../src/measure/import-readings.ts';
import { cellKey, type Reading } from '../../src/measure/reading.ts';
import { registerId } from '../../src/register/event.ts';
import { type Served, serve } from '../../src/server/serve.ts';
import type { Store } from '../../src/store/sql-store.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

const textOf = (file: string): string => readFileSync(join(root, 'demo', file), 'utf8');

/** Three cylinders. */
export const engineText = textOf('engines/quillfeather-3w.yaml');
/**
 * One cylinder, and operations that ask for readings alone and reckon nothing: they are signed in their lists one
 * after another. Of its run-in the first step and the last.
 */
export const smallEngineText = textOf('engines/mudlark-1.yaml')
  .replaceAll(/ {4}asks:\n(?: {6}.*\n)+/g, (asks) => {
    const reading = asks.split('\n').filter((line) => line.includes('answer: reading'));
    return reading.length === 0 ? '' : `    asks:\n${reading.join('\n')}\n`;
  })
  .replaceAll(/ {4}sums:\n(?: {6}.*\n)+/g, '')
  .replace(/ {4}- title: Light load\n[\s\S]*?(?= {4}- title: Full load\n)/, '');

/** The readings of a file beside the demo, by cell. */
export const readingsOf = (file: string, engine: EngineType): ReadonlyMap<string, Reading> => {
  const { readings, troubles } = readReadings(textOf(file), engine, instruments);
  if (troubles.length > 0) throw new Error(JSON.stringify(troubles));
  return new Map(readings.map((reading) => [cellKey(reading.cell), reading]));
};

export interface Workshop {
  readonly address: string;
  readonly store: Store;
  /** Takes the server away, as when a cable is pulled; the store stays. */
  readonly stopServer: () => Promise<void>;
  /** Serves again at the same address. */
  readonly startServer: () => Promise<void>;
  readonly close: () => Promise<void>;
}

/** @param demo  with the demo's three jobs; without, the shelf alone is filled */
export const openWorkshop = async ({ demo = false } = {}): Promise<Workshop> => {
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-browser-'));
  const store = await openSqliteStore(join(folder, 'store.sqlite'));
  for (const text of [engineText, smallEngineText]) {
    const { engine } = readEngineType(text);
    if (!engine) throw new Error('an engine type for the tests has errors');
    const { id, title, version } = engine;
    await store.putEngineType({ id, title, version, text });
  }
  await store.register.append(registerId, 0, registerEvents);
  if (demo) await loadDemo(store);
  const parts = { store, webFolder: join(root, 'dist/web') };
  let served: Served | undefined = await serve({ ...parts, port: 0 });
  const { address } = served;
  const stopServer = async () => {
    await served?.close();
    served = undefined;
  };
  return {
    address,
    store,
    stopServer,
    startServer: async () => {
      served = await serve({ ...parts, port: Number(new URL(address).port) });
    },
    close: async () => {
      await stopServer();
      await store.close();
      rmSync(folder, { recursive: true });
    },
  };
};
