/** @module Type checks: the core without Node and browser, the Node side, the browser app, the browser tests. */
import { join } from 'node:path';
import { node24, root } from './install.mjs';
import { runQuietly } from './run.mjs';

const projects = [
  { name: 'types of the core', file: 'tsconfig.core.json' },
  { name: 'types of the Node side', file: 'tsconfig.json' },
  { name: 'types of the browser app', file: 'src/web/tsconfig.json' },
  { name: 'types of the browser tests', file: 'test/browser/tsconfig.json' },
];

const tsc = join(root, 'node_modules', '@typescript', 'native', 'bin', 'tsc');

/** @returns one check a project: its name, and what the compiler says when it fails */
export const checkTypes = async () => {
  const checks = [];
  for (const { name, file } of projects) {
    const { code, output } = await runQuietly(node24, [tsc, '-p', file, '--pretty', 'false'], { cwd: root });
    checks.push({ name, failure: code === 0 ? undefined : output });
  }
  return checks;
};

if (process.argv[1] === import.meta.filename) {
  const failed = (await checkTypes()).filter(({ failure }) => failure !== undefined);
  for (const { name, failure } of failed) console.error(`${name}:\n${failure}`);
  process.exitCode = failed.length === 0 ? 0 : 1;
}
