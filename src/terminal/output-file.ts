/** @module Writes a file where a person asked for it, whole or not at all. */
import { mkdir, rename, rm, writeFile } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { plain } from './plain.ts';
import type { World } from './world.ts';

/** A job's number as part of a file's name: whatever a person typed, it stays in its folder. */
export const fileNameOf = (number: string): string =>
  number.replace(/[^\p{L}\p{N}_-]+/gu, '-').slice(0, 80) || 'job';

/** @returns the full path of the file written */
export const writeWhole = async (path: string, text: string, world: World): Promise<Answer<string>> => {
  const full = resolve(world.folder, path);
  const beside = `${full}.${world.newId()}.part`;
  try {
    await mkdir(dirname(full), { recursive: true });
    await writeFile(beside, text);
    await rename(beside, full);
    return answer(full);
  } catch (error) {
    await rm(beside, { force: true }).catch(() => undefined);
    const why = error instanceof Error ? error.message : String(error);
    return refuse(`the file cannot be written (${plain(why)})`, plain(path), 'name another place with --to');
  }
};
