/** @module What was found wrong at a path of an engine type, before line and column are looked up. */
import type { FilePath } from './file-path.ts';

export interface Finding {
  readonly weight: 'error' | 'warning';
  readonly path: FilePath;
  /** Whether the key is meant, and not its value. */
  readonly of?: 'key';
  readonly what: string;
  readonly remedy: string;
}

export const wrong = (path: FilePath, what: string, remedy: string): Finding => ({
  weight: 'error',
  path,
  what,
  remedy,
});

export const doubtful = (path: FilePath, what: string, remedy: string): Finding => ({
  weight: 'warning',
  path,
  what,
  remedy,
});
