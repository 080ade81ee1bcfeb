/** @module A key that is there or is not: an optional one is left out and never set to undefined. */

/** A key with its value, or nothing. */
export const given = <Key extends string, Value>(key: Key, value: Value | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { readonly [K in Key]?: Value };
