/** @module What is said where a figure or a word is missing that nobody may guess: in trade words, with where to find it. */
import type { FilePath } from './file-path.ts';

interface Missing {
  readonly what: string;
  readonly remedy: string;
}

const words: Readonly<Record<string, Missing>> = {
  'pump-timing/adding-shims': {
    what: 'it is not said whether a thicker pack makes the pump later or earlier',
    remedy:
      "write `adding-shims: retards` or `adding-shims: advances` by the manual's page on pump timing; where it is silent, fit a thicker pack and see by a second spill which way it goes",
  },
  'pump-timing/shims-sit': {
    what: 'it is not said where the shims sit',
    remedy:
      'write `shims-sit: under the pump flange`, `under the tappet button` or `on the pad`, by the section drawing of the pump or by the engine itself',
  },
  'pump-timing/cam/angles-of': {
    what: "it is not said what the cam's angles are degrees of",
    remedy:
      'write `angles-of: camshaft at half crank speed`, the rule on a four-stroke, `camshaft at crank speed` or `crankshaft`: a degree of the one is two of the other',
  },
  'pump-timing/check/larger-is': {
    what: 'it is not said which way the second check counts',
    remedy:
      'write `larger-is: earlier` for degrees before top dead centre, or `larger-is: later` for what is read past the mark',
  },
};

/** Words for what is missing at a path; undefined where those of its shape will do. */
export const missingWords = (path: FilePath): Missing | undefined => words[path.join('/')];
