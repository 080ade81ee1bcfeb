/** @module `npm run build:package`: dist as it is published: plain JavaScript, the browser app, the demo's files. */
import { cpSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, node24, root } from './install.mjs';
import { runQuietly } from './run.mjs';
import { giveUp, say } from './say.mjs';
import { buildWebIfStale } from './web.mjs';

await ensureInstalled();
for (const folder of ['src', 'demo']) rmSync(join(root, 'dist', folder), { recursive: true, force: true });

const failure = await buildWebIfStale();
if (failure)
  giveUp(`the browser app does not build:\n${failure}`, 'mend what is named above, then run this again');

const tsc = join(root, 'node_modules', '@typescript', 'native', 'bin', 'tsc');
const { code, output } = await runQuietly(node24, [tsc, '-p', 'tsconfig.build.json', '--pretty', 'false'], {
  cwd: root,
});
if (code !== 0)
  giveUp(`the program does not compile:\n${output}`, 'mend what is named above, then run this again');

const isData = (entry) => entry.isFile() && !/\.tsx?$/.test(entry.name);
for (const entry of readdirSync(join(root, 'demo'), { recursive: true, withFileTypes: true }).filter(
  isData,
)) {
  const file = join(entry.parentPath, entry.name);
  cpSync(file, join(root, 'dist', file.slice(root.length)), { recursive: true });
}
say('dist holds the package.');
