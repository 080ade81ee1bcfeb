/** @module The project's own text files, as the structure rules read them. */
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { pureFolders } from './layers.ts';

export const root: string = fileURLToPath(new URL('../..', import.meta.url));
export const fixture = (name: string): string => join(root, 'test/checks/fixtures', name);

export interface TextFile {
  /** From the root, with forward slashes. */
  readonly path: string;
  readonly text: string;
}

const codeFolders = ['src', 'scripts', 'bin', 'bench', 'demo', 'test'];
const isCode = (path: string): boolean => /\.(ts|tsx|mts|js|mjs|css)$/.test(path);

export const isTest = (path: string): boolean => /\.test\.tsx?$/.test(path);

const below = (base: string, folder: string): TextFile[] =>
  existsSync(join(base, folder))
    ? readdirSync(join(base, folder), { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile())
        .map((entry) => join(entry.parentPath, entry.name))
        .map((file) => ({ path: relative(base, file).split(sep).join('/'), file }))
        .filter(({ path }) => isCode(path) && !/(^|\/)(node_modules|fixtures)\//.test(path))
        .sort((a, b) => (a.path < b.path ? -1 : 1))
        .map(({ path, file }) => ({ path, text: readFileSync(file, 'utf8') }))
    : [];

/** All code, tests included, the violating examples left out. */
export const codeFiles = (base: string = root): readonly TextFile[] =>
  codeFolders.flatMap((folder) => below(base, folder));

/** What the pure folders hold, tests left out. */
export const pureFiles = (base: string = root): readonly TextFile[] =>
  pureFolders.flatMap((folder) => below(base, `src/${folder}`)).filter(({ path }) => !isTest(path));
