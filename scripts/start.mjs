/** @module `npm start`: installs and builds what is missing, works the demo job through, then serves the workshop. */
import { join } from 'node:path';
import { ensureInstalled, node24, root } from './install.mjs';
import { runHere } from './run.mjs';
import { giveUp } from './say.mjs';
import { buildWebIfStale } from './web.mjs';

const endfloat = join(root, 'src', 'terminal', 'main.ts');

/** `--port 4000` and `--port=4000` both reach `serve`, as does PORT; all else is passed on as it stands. */
const serveOptions = () => {
  const options = process.argv.slice(2);
  const asked = options.some((option) => option === '--port' || option.startsWith('--port='));
  return process.env.PORT && !asked ? [...options, '--port', process.env.PORT] : options;
};

await ensureInstalled();
const failure = await buildWebIfStale();
if (failure)
  giveUp(`the browser app does not build:\n${failure}`, 'mend what is named above, then run npm start again');

const demo = await runHere(node24, [endfloat, 'demo']);
if (demo.interrupted || demo.code !== 0) process.exit(demo.code);
const served = await runHere(node24, [endfloat, 'serve', ...serveOptions()]);
process.exit(served.code);
