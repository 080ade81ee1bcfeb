/** @module Where a function that falls with the hours comes down to a value. */

/** Hours beyond which nothing is asked. */
export const longest = 1e8;

/** The hours at which survival comes down to a probability, to a millionth of them; 0 where it begins there. */
export const hoursAt = (survival: (run: number) => number, probability: number, start: number): number => {
  if (survival(0) <= probability) return 0;
  let [low, high] = [start, start];
  while (low > 1e-3 && survival(low) <= probability) low /= 2;
  if (low <= 1e-3) return 0;
  while (high < longest && survival(high) > probability) high *= 2;
  if (high >= longest) return longest;
  // The secant of the ends in the logarithm of the hours, an end that stays weighed half (Illinois).
  let [a, b] = [Math.log(low), Math.log(high)];
  let [above, below] = [survival(low) - probability, survival(high) - probability];
  for (let turn = 0; turn < 60 && b - a > 1e-7; turn += 1) {
    const next = turn % 6 === 5 ? (a + b) / 2 : a + ((b - a) * above) / (above - below);
    const off = survival(Math.exp(next)) - probability;
    if (Math.abs(off) < 1e-9) return Math.exp(next);
    if (off > 0) {
      [a, above] = [next, off];
      below /= 2;
    } else {
      [b, below] = [next, off];
      above /= 2;
    }
  }
  return Math.exp((a + b) / 2);
};
