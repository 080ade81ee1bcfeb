/** @module `npm run bench`: installs and builds what is missing, then runs the benches. */
import { join } from 'node:path';
import { ensureInstalled, node24, root } from './install.mjs';
import { chromiumPath, ensureOutsidePrograms } from './outside.mjs';
import { runHere } from './run.mjs';
import { giveUp } from './say.mjs';
import { buildWebIfStale } from './web.mjs';

await ensureInstalled();
await ensureOutsidePrograms();
const failure = await buildWebIfStale();
if (failure)
  giveUp(`the browser app does not build:\n${failure}`, 'mend what is named above, then run this again');

const env = { ...process.env, CHROMIUM_PATH: chromiumPath() ?? '' };
const { code } = await runHere(node24, [join(root, 'bench', 'run.ts'), ...process.argv.slice(2)], {
  cwd: root,
  env,
});
process.exit(code);
