/** @module Builds the browser app when its sources are newer than what was built. */
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { node24, root } from './install.mjs';
import { runQuietly } from './run.mjs';
import { say, since } from './say.mjs';

const stampFile = join(root, 'dist', 'web.stamp');
const notInTheApp = new Set(['store', 'server', 'terminal']);

const sources = () => {
  const files = readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !/\.test\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => !notInTheApp.has(file.slice(join(root, 'src').length + 1).split(/[\\/]/)[0]));
  return [...files, join(root, 'vite.config.ts'), join(root, 'package-lock.json')].sort();
};

const fingerprint = () => {
  const hash = createHash('sha256');
  for (const file of sources())
    hash.update(file.slice(root.length)).update('\0').update(readFileSync(file)).update('\0');
  return hash.digest('hex');
};

const built = (wanted) =>
  existsSync(join(root, 'dist', 'web', 'index.html')) &&
  existsSync(stampFile) &&
  readFileSync(stampFile, 'utf8') === wanted;

/** @returns what went wrong, or undefined when dist/web is up to date */
export const buildWebIfStale = async () => {
  const wanted = fingerprint();
  if (built(wanted)) return undefined;
  const start = performance.now();
  say('Building the browser app …');
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const { code, output } = await runQuietly(node24, [vite, 'build', '--logLevel', 'warn'], {
    cwd: root,
    // A test runner calls its world a test: what is built is the app that people use all the same.
    env: { ...process.env, NODE_ENV: 'production', NO_COLOR: '1', FORCE_COLOR: '0' },
  });
  if (code !== 0) return output;
  mkdirSync(join(root, 'dist'), { recursive: true });
  writeFileSync(stampFile, wanted);
  say(`Built in ${since(start)}.`);
  return undefined;
};
