/**
 * @module `npm test`: installs what is missing, then runs every check there is, to the end even when one
 * fails, and closes with one line: passed, failed, skipped.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureInstalled, node24, root } from './install.mjs';
import { chromiumPath, ensureOutsidePrograms } from './outside.mjs';
import { runQuietly } from './run.mjs';
import { bold, green, red, say, since, yellow } from './say.mjs';
import { checkTypes } from './types.mjs';
import { buildWebIfStale } from './web.mjs';

const begun = performance.now();
const totals = { passed: 0, failed: 0, skipped: 0 };

const tool = (path) => join(root, 'node_modules', ...path.split('/'));
const toolEnvironment = { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' };

/** Counts one check, and prints everything that is known about it when it failed. */
const count = ({ name, failure }, took) => {
  if (failure === undefined) {
    totals.passed += 1;
    say(`${green('ok')}      ${name} (${took})`);
  } else {
    totals.failed += 1;
    say(`${red('failed')}  ${name} (${took})\n${String(failure).trim()}\n`);
  }
};

/** Runs a stage; a stage that breaks down is a failed check, and the next one still runs. */
const stage = async (name, run) => {
  const start = performance.now();
  try {
    for (const check of await run()) count(check, since(start));
  } catch (error) {
    count({ name, failure: error.stack ?? error }, since(start));
  }
};

const biome = (name, command) => async () => {
  const args = [tool('@biomejs/biome/bin/biome'), ...command, '--colors=off', '--max-diagnostics=50'];
  const { code, output } = await runQuietly(node24, args, { cwd: root });
  return [{ name, failure: code === 0 ? undefined : output }];
};

const webApp = async () => [{ name: 'browser app builds', failure: await buildWebIfStale() }];

const readReport = (file) => {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
};

/** Everything that vitest runs: tests beside the code, structure rules, stores, the app in a browser. */
const tests = async () => {
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-test-'));
  const file = join(folder, 'report.json');
  const everyTest = process.argv.length > 2 ? '' : 'yes';
  const chromium = chromiumPath() ?? '';
  const env = { ...toolEnvironment, TEST_REPORT: file, EVERY_TEST: everyTest, CHROMIUM_PATH: chromium };
  const args = [tool('vitest/vitest.mjs'), 'run', '--reporter=default', '--reporter=./scripts/report.ts'];
  const { code, output } = await runQuietly(node24, [...args, ...process.argv.slice(2)], { cwd: root, env });
  const report = readReport(file);
  rmSync(folder, { recursive: true });
  if (!report || report.passed + report.failed.length === 0)
    return [{ name: 'tests', failure: `no test ran\n${output}` }];
  totals.passed += report.passed;
  totals.failed += report.failed.length;
  totals.skipped += report.skipped.length;
  for (const line of output.split('\n').filter((text) => text.startsWith('asked why:'))) say(yellow(line));
  if (report.failed.length > 0) say(`${output.trim()}\n\n${red('failed:')}\n  ${report.failed.join('\n  ')}`);
  if (report.skipped.length > 0) say(`${yellow('skipped:')}\n  ${report.skipped.join('\n  ')}`);
  const verdict = report.failed.length === 0 && code !== 0 ? output : undefined;
  return verdict === undefined ? [] : [{ name: `tests (vitest ended with code ${code})`, failure: verdict }];
};

await ensureInstalled();
await ensureOutsidePrograms();
await stage('format', biome('format', ['format']));
await stage('lint', biome('lint', ['check', '--formatter-enabled=false', '--error-on-warnings']));
await stage('types', checkTypes);
await stage('browser app builds', webApp);
say('Running the tests …');
await stage('tests', tests);

say(`In ${since(begun)}.`);
const line = `${totals.passed} passed, ${totals.failed} failed, ${totals.skipped} skipped`;
say(process.stdout.isTTY ? bold(line) : line);
process.exitCode = totals.failed === 0 ? 0 : 1;
