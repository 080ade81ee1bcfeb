/** @module The texts that lie beside the demo: engine types and readings. */
import { readFile } from 'node:fs/promises';

export const textOf = (path: string): Promise<string> => readFile(new URL(path, import.meta.url), 'utf8');
