/** @module A workshop of its own for a browser test: a fresh store in a file, the real server, the built app. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildWebIfStale } from '../../scripts/web.mjs';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import type { Instrument } from '../../src/measure/instrument.ts';
import { type Served, serve } from '../../src/server/serve.ts';
import type { Store } from '../../src/store/sql-store.ts';
import { openSqliteStore } from '../../src/store/sqlite-store.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));

export const engineText = readFileSync(join(root, 'demo/engines/quillfeather-3w.yaml'), 'utf8');

export interface Workshop {
  readonly address: string;
  readonly store: Store;
  /** Takes the server away, as when a cable is pulled; the store stays. */
  readonly stopServer: () => Promise<void>;
  /** Serves again at the same address. */
  readonly startServer: () => Promise<void>;
  readonly close: () => Promise<void>;
}

const instrument = (
  name: string,
  kind: string,
  [least, greatest]: readonly [string, string],
  [resolution, error, repeatability]: readonly [string, string, string],
  turn?: string,
): Instrument => {
  const mm = (text: string) => ({ text, unit: 'mm' });
  return {
    name,
    kind,
    range: { least: mm(least), greatest: mm(greatest) },
    resolution: mm(resolution),
    permissibleError: mm(error),
    repeatability: mm(repeatability),
    zero: mm('0.000'),
    ...(turn === undefined ? {} : { turn: mm(turn) }),
  };
};

/** Invented; figures of the order that such instruments have. */
export const instruments: readonly Instrument[] = [
  instrument('mic-25-50', 'outside micrometer', ['25', '50'], ['0.001', '0.003', '0.001'], '0.5'),
  instrument('mic-50-75', 'outside micrometer', ['50', '75'], ['0.001', '0.003', '0.001'], '0.5'),
  instrument('mic-75-100', 'outside micrometer', ['75', '100'], ['0.001', '0.003', '0.001'], '0.5'),
  instrument('bore-50-160', 'bore gauge', ['50', '160'], ['0.001', '0.003', '0.001']),
  instrument('dial-10', 'dial gauge', ['0', '10'], ['0.01', '0.005', '0.002'], '1'),
  instrument('depth-150', 'depth gauge', ['0', '150'], ['0.01', '0.005', '0.002']),
  instrument('feeler-1', 'feeler set', ['0.03', '1'], ['0.01', '0.003', '0.003']),
];

export const openWorkshop = async (): Promise<Workshop> => {
  const failure = await buildWebIfStale();
  if (failure) throw new Error(`the browser app does not build:\n${failure}`);
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-browser-'));
  const store = await openSqliteStore(join(folder, 'store.sqlite'));
  const { engine } = readEngineType(engineText);
  if (!engine) throw new Error('the engine type for the tests has errors');
  const { id, title, version } = engine;
  await store.putEngineType({ id, title, version, text: engineText });
  for (const one of instruments) await store.putInstrument(one);
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
