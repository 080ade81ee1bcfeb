/**
 * @module `npm run soak [minutes] [word …]`: the property tests again and again, each round from a seed of its own,
 * until the time is over or one fails. What is found becomes an example in the test that found it.
 */
import { randomInt } from 'node:crypto';
import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ensureInstalled, node24, root } from './install.mjs';
import { ensureOutsidePrograms } from './outside.mjs';
import { runQuietly } from './run.mjs';
import { giveUp, say, since } from './say.mjs';

const usualMinutes = 30;
const [asked = usualMinutes, ...words] = process.argv.slice(2);
const minutes = Number(asked);
if (!(minutes > 0)) {
  giveUp(
    `soak is given its minutes first, and ${asked} is no number of minutes`,
    'for example: npm run soak 30 plan',
  );
}

const drawsCases = (file) => /\bfc\.(assert|sample)\b/.test(readFileSync(join(root, file), 'utf8'));
const files = globSync('{src,test,demo}/**/*.test.ts', { cwd: root })
  .filter((file) => !file.startsWith(join('test', 'browser')) && words.every((word) => file.includes(word)))
  .filter(drawsCases)
  .toSorted();
if (files.length === 0)
  giveUp(`no property test has ${words.join(' and ')} in its path`, 'give a part of a path');

await ensureInstalled();
await ensureOutsidePrograms();
const begun = performance.now();
let rounds = 0;
while (performance.now() - begun < minutes * 60_000) {
  const seed = randomInt(2 ** 31);
  const env = { ...process.env, PROPERTY_SEED: String(seed), NO_COLOR: '1' };
  const args = [join(root, 'node_modules/vitest/vitest.mjs'), 'run', '--reporter=dot', ...files];
  const { code, output } = await runQuietly(node24, args, { cwd: root, env });
  if (code !== 0) {
    giveUp(
      `seed ${seed}, after ${rounds} rounds that held:\n${output.trim()}`,
      `PROPERTY_SEED=${seed} npx vitest run <the file named above>; then keep the case as an example`,
    );
  }
  rounds += 1;
  say(`${rounds}  seed ${seed}: ${files.length} files hold (${since(begun)})`);
}
