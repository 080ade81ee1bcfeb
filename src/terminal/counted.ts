/** @module A number with its noun: `1 error`, `3 errors`. */

export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;
