/** @module Runs a program that says what it has acknowledged, number by number, and kills it when it is told to. */
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';

interface Ending {
  /** The last sequence that was acknowledged. */
  readonly acknowledged: number;
  readonly signal: NodeJS.Signals | null;
}

/** Lets a program run until so many more are acknowledged, waits a little, and kills it. */
export const runAndKill = (
  program: URL,
  given: readonly string[],
  after: number,
  wait: number,
): Promise<Ending> =>
  new Promise((done, fail) => {
    const child = spawn(process.execPath, [fileURLToPath(program), ...given], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let text = '';
    let killing = false;
    child.stdout.setEncoding('utf8');
    child.stdout.on('data', (chunk: string) => {
      text += chunk;
      if (killing || text.split('\n').length <= after) return;
      killing = true;
      setTimeout(() => child.kill('SIGKILL'), wait);
    });
    child.on('error', fail);
    child.on('close', (_, signal) => {
      // A last line without its end may be half a number.
      const lines = text.slice(0, text.lastIndexOf('\n') + 1).trimEnd();
      done({ acknowledged: Number(lines.split('\n').at(-1) ?? 0), signal });
    });
  });
