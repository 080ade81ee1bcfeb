/** @module The program's version, from the package that it came in. */
import { existsSync, readFileSync } from 'node:fs';

/** Beside the sources in a checkout, one folder further up from what is published. */
const places = ['../../package.json', '../../../package.json'];

export const programVersion = (): string => {
  const url = places.map((place) => new URL(place, import.meta.url)).find((place) => existsSync(place));
  const described: unknown = url === undefined ? {} : JSON.parse(readFileSync(url, 'utf8'));
  return typeof described === 'object' && described !== null && 'version' in described
    ? String(described.version)
    : 'of unknown version';
};
