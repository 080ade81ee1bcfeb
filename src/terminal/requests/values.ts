/** @module Values typed behind keys, on their way into a request. */

export type Values = Readonly<Record<string, unknown>>;

/** Those that were typed, under the names that the request has for them. */
export const given = (values: Values, names: Readonly<Record<string, string>>): Values =>
  Object.fromEntries(
    Object.entries(names).flatMap(([typed, into]) =>
      values[typed] === undefined ? [] : [[into, values[typed]]],
    ),
  );

/** What belongs together, where any of it is given: the shape then asks for the rest. */
export const together = (name: string, parts: Values): Values =>
  Object.keys(parts).length === 0 ? {} : { [name]: parts };

/** A text, '' where none was typed. */
export const word = (value: unknown): string => (typeof value === 'string' ? value : '');

/** A list, empty where none was typed. */
export const listed = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
