#!/usr/bin/env node
/** @module The `endfloat` command: finds a Node that is new enough, and the program in a checkout or in the package. */
import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { constants } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const needed = 24;

const source = here('../src/terminal/main.ts');
const program = existsSync(source) ? source : here('../dist/src/terminal/main.js');

const stop = (what, remedy) => {
  console.error(`endfloat: ${what}\nWhat to do: ${remedy}`);
  process.exitCode = 2;
};

const runOnNewerNode = (node) => {
  const child = spawn(node, [program, ...process.argv.slice(2)], { stdio: 'inherit' });
  // An interrupt from the keyboard reaches the child by itself; one sent to this process alone is passed on.
  process.on('SIGINT', () => process.stdin.isTTY || child.kill('SIGINT'));
  for (const signal of ['SIGTERM', 'SIGHUP']) process.on(signal, () => child.kill(signal));
  child.on('error', (error) =>
    stop(`Node ${needed} at ${node} does not start: ${error.message}`, 'run npm install again'),
  );
  child.on('exit', (code, signal) => {
    process.exitCode = code ?? 128 + (constants.signals[signal] ?? 1);
  });
};

if (!existsSync(program)) {
  stop(
    `the program itself is missing (${program})`,
    'install the package again, or build it: npm run build:package',
  );
} else if (Number(process.versions.node.split('.')[0]) >= needed) {
  process.argv[1] = program;
  await import(pathToFileURL(program).href);
} else {
  const brought = here(`../node_modules/node/bin/node${process.platform === 'win32' ? '.exe' : ''}`);
  if (existsSync(brought)) runOnNewerNode(brought);
  else {
    stop(
      `it needs Node ${needed} or newer, and this is Node ${process.versions.node}`,
      `install Node ${needed}; in a checkout run npm start once, which brings it`,
    );
  }
}
