/** @module Runs one of the project's own tools, and keeps what it prints. */
import { spawnSync } from 'node:child_process';

export const runNode = (
  script: string,
  args: readonly string[],
  folder: string,
): { code: number; output: string } => {
  const env = { ...process.env, NO_COLOR: '1', FORCE_COLOR: '0' };
  const { status, stdout, stderr } = spawnSync(process.execPath, [script, ...args], {
    cwd: folder,
    encoding: 'utf8',
    env,
  });
  return { code: status ?? 1, output: stdout + stderr };
};
