/** @module Programs from outside that the tests hold ours against: where they are, and how they are got. */
import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { runQuietly } from './run.mjs';
import { giveUp, say, since, yellow } from './say.mjs';

const chromiumNames = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];
const chromiumElsewhere = [
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

const onPath = (name) =>
  (process.env.PATH ?? '')
    .split(delimiter)
    .map((folder) => join(folder, name))
    .find((path) => existsSync(path));

const debianPython = '/usr/bin/python3';
const python = () => (existsSync(debianPython) ? debianPython : onPath('python3'));

/** The browser for the browser tests: `CHROMIUM_PATH`, else the usual places. */
export const chromiumPath = () => {
  const asked = process.env.CHROMIUM_PATH;
  if (asked && !existsSync(asked)) {
    giveUp(
      `CHROMIUM_PATH is ${asked}, and there is no such file`,
      'correct it, or unset it to search the usual places',
    );
  }
  return (
    asked || chromiumNames.map(onPath).find(Boolean) || chromiumElsewhere.find((path) => existsSync(path))
  );
};

const pythonHas = (module) => async () => {
  const found = python();
  return found !== undefined && (await runQuietly(found, ['-c', `import ${module}`])).code === 0;
};

const outsidePrograms = [
  {
    what: 'chromium (a browser, for the browser tests)',
    debian: 'chromium',
    isHere: async () => Boolean(chromiumPath()),
  },
  { what: 'glpsol (a linear solver)', debian: 'glpk-utils', isHere: async () => Boolean(onPath('glpsol')) },
  { what: 'scipy (numerics, for python3)', debian: 'python3-scipy', isHere: pythonHas('scipy') },
  {
    what: 'uncertainties (for python3)',
    debian: 'python3-uncertainties',
    isHere: pythonHas('uncertainties'),
  },
  {
    what: 'exiftool (reads what pictures tell beside the picture)',
    debian: 'libimage-exiftool-perl',
    isHere: async () => Boolean(onPath('exiftool')),
  },
  {
    what: 'zbarimg (reads the codes of printed labels)',
    debian: 'zbar-tools',
    isHere: async () => Boolean(onPath('zbarimg')),
  },
  { what: 'units (unit conversion)', debian: 'units', isHere: async () => Boolean(onPath('units')) },
];

const missingPrograms = async () => {
  const here = await Promise.all(outsidePrograms.map((program) => program.isHere()));
  return outsidePrograms.filter((_, index) => !here[index]);
};

/** How this user may install Debian packages: the words before `apt-get`, or undefined when it may not. */
const installer = async () => {
  if (!onPath('apt-get')) return undefined;
  if (process.getuid?.() === 0) return [];
  const sudo = onPath('sudo');
  return sudo && (await runQuietly(sudo, ['-n', 'true'])).code === 0 ? ['sudo', '-n'] : undefined;
};

const apt = (before, args) => {
  const [program, ...rest] = [...before, 'apt-get', ...args];
  return runQuietly(program, rest, { env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });
};

const installAll = async (before, packages) => {
  const start = performance.now();
  say(`Installing from the system's packages: ${packages.join(', ')} …`);
  // A list that could not be refreshed may still be good enough: the install decides.
  await apt(before, ['update', '-q']);
  const install = (names) => apt(before, ['install', '-y', '-q', '--no-install-recommends', ...names]);
  const { code, output } = await install(packages);
  if (code === 0) {
    say(`Installed in ${since(start)}.`);
    return;
  }
  say(
    `${output.trim().split('\n').slice(-12).join('\n')}\napt-get ended with code ${code}; trying one at a time …`,
  );
  for (const name of packages) await install([name]);
};

/**
 * Gets what is missing when this user may install packages, and says plainly what stays missing:
 * the tests that need it then count as skipped.
 */
export const ensureOutsidePrograms = async () => {
  const missing = await missingPrograms();
  if (missing.length === 0) return;
  const before = await installer();
  if (before)
    await installAll(
      before,
      missing.map((program) => program.debian),
    );
  const still = await missingPrograms();
  if (still.length === 0) return;
  say(yellow(`Not on this machine, so the tests that need them are skipped:`));
  for (const { what } of still) say(`  ${what}`);
  say(`To run them too: sudo apt-get install ${still.map((program) => program.debian).join(' ')}`);
  say(`(or, for the browser alone, set CHROMIUM_PATH to a Chromium or Chrome you have)`);
};
