/** @module Programs from outside that sums are held against: found on this machine, run, and told apart when absent. */
import { spawnSync } from 'node:child_process';

const programs = {
  glpsol: { probe: ['glpsol', '--version'], debian: 'glpk-utils' },
  exiftool: { probe: ['exiftool', '-ver'], debian: 'libimage-exiftool-perl' },
  zbarimg: { probe: ['zbarimg', '--version'], debian: 'zbar-tools' },
  units: { probe: ['units', '--version'], debian: 'units' },
  scipy: { probe: ['/usr/bin/python3', '-c', 'import scipy'], debian: 'python3-scipy' },
  uncertainties: {
    probe: ['/usr/bin/python3', '-c', 'import uncertainties'],
    debian: 'python3-uncertainties',
  },
} as const;

export type OutsideProgram = keyof typeof programs;

/**
 * Why a check against a program cannot run here, or undefined when it can. For the test:
 * `context.skip(lacking('glpsol') !== undefined, lacking('glpsol'))`.
 */
export const lacking = (name: OutsideProgram): string | undefined => {
  const { probe, debian } = programs[name];
  const [command = '', ...args] = probe;
  return spawnSync(command, args, { stdio: 'ignore' }).status === 0
    ? undefined
    : `${name} is not on this machine: apt-get install ${debian}`;
};

/** Runs a program on some input and gives what it prints; a program that fails fails the test. */
export const ask = (command: string, args: readonly string[], input = ''): string => {
  const { status, stdout, stderr, error } = spawnSync(command, [...args], { input, encoding: 'utf8' });
  if (error) throw error;
  if (status !== 0) throw new Error(`${command} ended with code ${status}: ${stderr}${stdout}`);
  return stdout;
};

/** Runs a piece of Python with Debian's own interpreter, and reads the JSON it prints. */
export const askPython = (code: string): unknown => JSON.parse(ask('/usr/bin/python3', ['-c', code]));
