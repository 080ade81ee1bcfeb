/** @module Runs the `endfloat` command in a folder of its own: as a person does, or (quicker) within the test. */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { v7 } from 'uuid';
import { runTerminal } from '../../src/terminal/run.ts';

const launcher = fileURLToPath(new URL('../../bin/endfloat.js', import.meta.url));

export const root: string = fileURLToPath(new URL('../..', import.meta.url));
export const demoFile = (path: string): string => join(root, 'demo', path);

export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Bench {
  readonly folder: string;
  /** As a program of its own. */
  readonly run: (words: readonly string[], input?: string) => Promise<Ended>;
  /** The same command line within this program: many are asked in the time that one program takes to start. */
  readonly ask: (words: readonly string[], input?: string) => Promise<Ended>;
  /** Runs with `--json`, expects success, and gives what was printed. */
  readonly json: <T>(...words: readonly string[]) => Promise<T>;
  readonly clear: () => void;
}

/** @param now  what `ask` takes for the time; what is due depends on the day */
export const bench = (now: () => string = () => new Date().toISOString()): Bench => {
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-job-'));
  const { ENDFLOAT_STORE: _, ...env } = process.env;
  const run = (words: readonly string[], input = ''): Promise<Ended> =>
    new Promise((done, fail) => {
      const child = spawn(process.execPath, [launcher, ...words], {
        cwd: folder,
        env: { ...env, ENDFLOAT_BY: 'Odo Ferrick', ENDFLOAT_BENCH: 'bench 2' },
      });
      const out: Buffer[] = [];
      const err: Buffer[] = [];
      child.stdout.on('data', (piece: Buffer) => out.push(piece));
      child.stderr.on('data', (piece: Buffer) => err.push(piece));
      child.on('error', fail);
      child.on('close', (code) =>
        done({ code, out: Buffer.concat(out).toString('utf8'), err: Buffer.concat(err).toString('utf8') }),
      );
      child.stdin.end(input);
    });
  const ask = async (words: readonly string[], input = ''): Promise<Ended> => {
    let out = '';
    let err = '';
    const code = await runTerminal(words, {
      folder,
      env: { ENDFLOAT_BY: 'Odo Ferrick', ENDFLOAT_BENCH: 'bench 2' },
      out: (text) => {
        out += text;
      },
      err: (text) => {
        err += text;
      },
      watched: false,
      standardInput: async () => new TextEncoder().encode(input),
      now,
      newId: () => v7(),
      newToken: () => v7().replaceAll('-', ''),
      user: () => 'Odo Ferrick',
      stopped: async () => undefined,
    });
    return { code, out, err };
  };
  return {
    folder,
    run,
    ask,
    json: async <T>(...words: readonly string[]): Promise<T> => {
      const { code, out, err } = await run([...words, '--json']);
      if (code !== 0) throw new Error(`endfloat ${words.join(' ')} ended with ${code}: ${err}`);
      return JSON.parse(out) as T;
    },
    clear: () => rmSync(folder, { recursive: true, force: true }),
  };
};
