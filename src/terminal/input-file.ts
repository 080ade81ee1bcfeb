/** @module Reads a file that a person names, or says plainly why it cannot be read. */
import { open, stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { type Answer, answer, refuse } from '../quantity/refusal.ts';
import { plain } from './plain.ts';
import type { World } from './world.ts';

const mostBytes = 64 * 1024 * 1024;

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';

const troubles: Readonly<Record<string, readonly [string, string]>> = {
  ENOENT: ['there is no such file', 'look at the spelling and the folder'],
  ENOTDIR: ['there is no such file', 'a part of the path is a file and not a folder'],
  EACCES: ['the file may not be read', 'ask for leave to read it'],
  EPERM: ['the file may not be read', 'ask for leave to read it'],
  EISDIR: ['this is a folder', 'name a file'],
  ELOOP: ['the path goes round in circles', 'name the file itself'],
  ENAMETOOLONG: ['the name is too long', 'look at the spelling'],
};

const unread = (error: unknown, where: string): Answer<never> => {
  const [what, remedy] = troubles[codeOf(error)] ?? [
    'the file cannot be read',
    `the machine says ${codeOf(error)}`,
  ];
  return refuse(what, where, remedy);
};

/** The bytes of a file; `-` stands for standard input. */
export const bytesOf = async (path: string, world: World): Promise<Answer<Uint8Array>> => {
  const where = plain(path);
  if (path === '-') return answer(await world.standardInput());
  if (path === '' || path.includes('\0')) return refuse('no file is named', where, 'name a file');
  const full = resolve(world.folder, path);
  try {
    const kind = await stat(full);
    if (kind.isDirectory()) return refuse('this is a folder', where, 'name a file');
    // A device may never end; a pipe from another program does.
    if (!kind.isFile() && !kind.isFIFO()) return refuse('this is not a file', where, 'name a file');
    if (kind.size > mostBytes)
      return refuse('the file is larger than 64 MB', where, 'look whether it is the right one');
    const file = await open(full);
    try {
      return answer(await file.readFile());
    } finally {
      await file.close();
    }
  } catch (error) {
    return unread(error, where);
  }
};

/** The text of a file in UTF-8, the mark of byte order taken away. */
export const textOf = async (path: string, world: World): Promise<Answer<string>> => {
  const bytes = await bytesOf(path, world);
  if (bytes.kind === 'refused') return bytes;
  const where = plain(path);
  if (bytes.value.includes(0))
    return refuse('this is not a text file in UTF-8', where, 'name a text file, or save it again as UTF-8');
  try {
    return answer(new TextDecoder('utf-8', { fatal: true }).decode(bytes.value));
  } catch {
    return refuse('the text is not in UTF-8', where, 'save it again as UTF-8');
  }
};
