/** @module How big letters must be to be read from some way off, and how words fill a box with letters as big as fit. */

/**
 * Height of a capital that is read with ease from a distance.
 *
 * A capital must fill an angle: an eye of normal acuity (6/6) just tells letters of 5 minutes of arc apart, and
 * ISO 9241-303 asks for at least 16 and better 20 to 22 for words that are read at work. 22 minutes are 6.4 mm a
 * metre; at arm's length, 0.7 m, that is 4.5 mm, which leaves something over for poor light and a smeared lens.
 *
 * @param metres  distance, m, above 0
 * @returns mm
 * @source  ISO 9241-303, character height, from memory; 6/6 acuity is defined by 5 minutes of arc (ISO 8596)
 */
export const capitalReadFrom = (metres: number): number =>
  2000 * metres * Math.tan(((22 / 60) * Math.PI) / 180 / 2);

export const armsLength = 0.7;

/** Capitals over the size of the face, of the faces that the page names; the lowest of them. */
const capitalOverSize = 0.66;
/** Widths of letters over the size of the face, bold, in the widest face that a machine may fall back on. */
const narrow = /[ijl.,:;'|]/;
const slim = /[ftr\s()/-]/;
const wide = /[mwMW@]/;
const capital = /[\p{Lu}%&]/u;
const letterWidth = (letter: string): number => {
  if (narrow.test(letter)) return 0.37;
  if (slim.test(letter)) return 0.48;
  if (wide.test(letter)) return 1.06;
  return capital.test(letter) ? 0.84 : 0.72;
};

/** Width of a line over the size of its face. */
const lineWidth = (line: string): number => [...line].reduce((sum, letter) => sum + letterWidth(letter), 0);

const leading = 1.08;
/** A label has no room for a tale. */
const mostWords = 12;

/** Size of the face that gives capitals of a height, mm. */
export const sizeForCapital = (capital: number): number => capital / capitalOverSize;
export const capitalOf = (size: number): number => size * capitalOverSize;

export interface Lettered {
  readonly lines: readonly string[];
  /** Of the face, mm. */
  readonly size: number;
  /** Of all lines, mm. */
  readonly height: number;
}

/** Breaks at spaces alone, a number kept with its word: a name cut in two is no name. */
const wordsOf = (text: string): readonly string[] => text.split(/ (?!\d)/);

/** Every way to lay words on one line, two lines and so on, as even as can be. */
const layings = (words: readonly string[]): readonly (readonly string[])[] => {
  const widths = new Set(
    words.flatMap((_, from) =>
      words.slice(from).map((__, to) => lineWidth(words.slice(from, from + to + 1).join(' '))),
    ),
  );
  return [...widths].map((most) => {
    const lines: string[] = [];
    for (const word of words) {
      const longer = `${lines.at(-1)} ${word}`;
      if (lines.length > 0 && lineWidth(longer) <= most) lines[lines.length - 1] = longer;
      else lines.push(word);
    }
    return lines;
  });
};

/** Words as large as a box takes them, at most of a size; in as few lines as that allows. */
export const lettered = (
  text: string,
  box: { readonly width: number; readonly height: number },
  largest: number,
): Lettered => {
  const laid = layings(wordsOf(text).slice(0, mostWords)).map((lines) => {
    const widest = Math.max(...lines.map(lineWidth));
    const size = Math.min(largest, box.width / widest, box.height / (lines.length * leading));
    return { lines, size, height: lines.length * size * leading };
  });
  return laid.reduce((best, one) =>
    one.size > best.size || (one.size === best.size && one.lines.length < best.lines.length) ? one : best,
  );
};

export const baselines = ({
  lines,
  size,
}: Lettered): readonly { readonly words: string; readonly down: number }[] =>
  lines.map((words, at) => ({ words, down: size * (leading * at + 0.8) }));
