/** @module The colour that a bright steel takes as it is warmed: a rough thermometer. */

/**
 * Colours with the temperature at which each is seen, °C; the published sources differ by 10 to 15 °C.
 * source: average of five sources in a steel text of the early 20th century: 430, 458, 478, 523, 551, 572, 603, 627 °F.
 */
const colours: readonly (readonly [celsius: number, name: string])[] = [
  [221, 'pale yellow'],
  [237, 'light straw'],
  [248, 'dark straw'],
  [273, 'reddish purple'],
  [288, 'bluish purple'],
  [300, 'blue'],
  [317, 'grey-blue'],
  [331, 'greenish blue'],
];

/**
 * The oxide colour of clean, bright carbon steel that has been brought to a temperature once and not held there.
 *
 * @param celsius  °C, any
 * @returns the nearest colour; undefined where none is seen yet, or where all are past
 * @source  average of five sources in a steel text of the early 20th century, public domain
 * @example temperColour(300) // 'blue'
 */
export const temperColour = (celsius: number): string | undefined => {
  const [first, last] = [colours[0]?.[0] ?? 0, colours.at(-1)?.[0] ?? 0];
  if (celsius < first - 6 || celsius > last + 15) return undefined;
  return colours.toSorted(([a], [b]) => Math.abs(a - celsius) - Math.abs(b - celsius))[0]?.[1];
};
