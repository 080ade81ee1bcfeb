/** @module The nearest known name to one that is not known, so that a slip of the pen can be put right. */

/** Levenshtein distance: the fewest letters put in, taken out or changed. */
const distance = (a: string, b: string): number => {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index);
  for (const [i, letter] of [...a].entries()) {
    const next = [i + 1];
    for (let j = 1; j < row.length; j += 1) {
      const changed = (row[j - 1] ?? 0) + (letter === b[j - 1] ? 0 : 1);
      next.push(Math.min(changed, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? 0;
};

/** The known name that is nearest to a word, where one is near enough to be meant. */
export const nearestName = (word: string, known: Iterable<string>): string | undefined => {
  const short = word.slice(0, 64).toLowerCase();
  let best: string | undefined;
  let least = Math.max(2, Math.floor(short.length / 3)) + 1;
  for (const name of known) {
    if (Math.abs(name.length - short.length) >= least) continue;
    const far = distance(short, name);
    if (far < least) {
      least = far;
      best = name;
    }
  }
  return best;
};

/** What to do about a name that is not known: `write main, or one of main, bore`. */
export const chooseName = (word: string, known: Iterable<string>): string => {
  const all = [...known];
  const nearest = nearestName(word, all);
  const listed = all.slice(0, 8).join(', ');
  const rest = all.length > 8 ? ` and ${all.length - 8} more` : '';
  if (nearest !== undefined) return `write ${nearest}, if that is what is meant`;
  return all.length === 0 ? 'leave it out: none is defined' : `use one of ${listed}${rest}`;
};
