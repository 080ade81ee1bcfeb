/** @module The `endfloat` command's entry: hands the machine to the command line and sets the exit code. */
import { randomBytes } from 'node:crypto';
import { enableCompileCache } from 'node:module';
import { userInfo } from 'node:os';
import { v7 } from 'uuid';
import type { World } from './world.ts';

// A command starts in half the time when its sources need not be read into code again; where the cache cannot be
// kept, nothing else changes.
enableCompileCache();
const { runTerminal } = await import('./run.ts');

const standardInput = async (): Promise<Uint8Array> => {
  const pieces: Uint8Array[] = [];
  for await (const piece of process.stdin) pieces.push(piece as Uint8Array);
  return Buffer.concat(pieces);
};

const user = (): string => {
  try {
    return userInfo().username;
  } catch {
    return 'somebody'; // some machines know no name for who runs a program
  }
};

const stopped = (): Promise<void> =>
  new Promise((settle) => {
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => settle());
  });

const world: World = {
  folder: process.cwd(),
  env: process.env,
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  watched: process.stderr.isTTY === true,
  standardInput,
  now: () => new Date().toISOString(),
  newId: () => v7(),
  newToken: () => randomBytes(24).toString('base64url'),
  user,
  stopped,
};

// A reader such as `head` may close the pipe early: what it wanted is done.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(0);
    throw error;
  });

process.exitCode = await runTerminal(process.argv.slice(2), world);
