/** @module The known name nearest to one mistyped. */

/** Single-letter changes, omissions, insertions and swaps of neighbours between two words. */
const slipsBetween = (one: string, other: string): number => {
  let beforeLast: number[] = [];
  let last = Array.from({ length: other.length + 1 }, (_, i) => i);
  for (let i = 1; i <= one.length; i++) {
    const row = [i];
    for (let j = 1; j <= other.length; j++) {
      const same = one[i - 1] === other[j - 1];
      let least = Math.min((row[j - 1] ?? 0) + 1, (last[j] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1])
        least = Math.min(least, (beforeLast[j - 2] ?? 0) + 1);
      row.push(least);
    }
    beforeLast = last;
    last = row;
  }
  return last[other.length] ?? 0;
};

/** @returns the nearest name, or none where even the nearest is another word altogether */
export const nearest = (word: string, names: readonly string[]): string | undefined => {
  const typed = word.slice(0, 64).toLowerCase();
  const ranked = names
    .map((name) => ({ name, slips: slipsBetween(typed, name.toLowerCase()) }))
    .sort((a, b) => a.slips - b.slips || (a.name < b.name ? -1 : 1));
  const best = ranked[0];
  return best && best.slips <= Math.max(1, Math.floor(Math.max(best.name.length, typed.length) / 2))
    ? best.name
    : undefined;
};

/** ` Did you mean x?` as a remedy, or what to do when nothing is near. */
export const didYouMean = (word: string, names: readonly string[], otherwise: string): string => {
  const name = nearest(word, names);
  return name === undefined ? otherwise : `did you mean ${name}? ${otherwise}`;
};
