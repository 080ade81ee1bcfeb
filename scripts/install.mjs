/** @module Brings node_modules to what package-lock.json says, from whatever state it is in. Runs on any Node. */
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { delimiter, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runQuietly } from './run.mjs';
import { giveUp, say, since } from './say.mjs';

export const root = fileURLToPath(new URL('..', import.meta.url));

const lockFile = join(root, 'package-lock.json');
const stampFile = join(root, 'node_modules', '.installed-from');

/** The Node that npm brings: the one everything after the install runs on. */
export const node24 = join(
  root,
  'node_modules',
  'node',
  'bin',
  process.platform === 'win32' ? 'node.exe' : 'node',
);

const fingerprint = () => {
  const hash = createHash('sha256').update(readFileSync(lockFile));
  return hash.update(`${process.platform} ${process.arch}`).digest('hex');
};

const allThere = () => {
  const { packages } = JSON.parse(readFileSync(lockFile, 'utf8'));
  return Object.entries(packages).every(
    ([folder, { optional, peer }]) => optional || peer || existsSync(join(root, folder, 'package.json')),
  );
};

const installed = () =>
  existsSync(stampFile) &&
  readFileSync(stampFile, 'utf8') === fingerprint() &&
  existsSync(node24) &&
  allThere();

/** npm must not run on the Node that it is about to replace. */
const pathWithoutOurs = () =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .filter((folder) => !resolve(folder).startsWith(join(root, 'node_modules')))
    .join(delimiter);

const npmCi = () => {
  const env = { ...process.env, PATH: pathWithoutOurs() };
  const args = ['ci', '--no-audit', '--no-fund', '--loglevel=error'];
  return runQuietly('npm', args, { cwd: root, env, shell: process.platform === 'win32' });
};

export const ensureInstalled = async () => {
  if (installed()) return;
  const start = performance.now();
  say('Installing what package-lock.json names (about half a minute the first time) …');
  const { code, output } = await npmCi();
  if (code !== 0) {
    giveUp(
      `npm ci ended with code ${code}:\n${output.trim()}`,
      'see that the npm registry can be reached, then run this again',
    );
  }
  if (!existsSync(node24)) {
    giveUp(
      'the npm package "node" did not bring Node 24',
      'see that npm may run its install script (npm install-scripts ls), then run this again',
    );
  }
  writeFileSync(stampFile, fingerprint());
  say(`Installed in ${since(start)}.`);
};

// `npm install` by hand ends here too (the "prepare" script), so that the next start does not install again.
if (process.argv[2] === '--stamp' && existsSync(join(root, 'node_modules')) && existsSync(lockFile)) {
  writeFileSync(stampFile, fingerprint());
}
