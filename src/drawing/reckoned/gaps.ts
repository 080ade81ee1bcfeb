/** @module Clearances of two measured parts: both in section, and beneath them the clearance against its limits. */
import { figure } from '../number-line.ts';
import { sideBySide } from '../side-by-side.ts';
import { againstLimits } from './against-limits.ts';
import { section } from './gap-section.ts';
import { lettered, numberIn, type Picture } from './picture.ts';

interface PairDrawn {
  readonly title: string;
  readonly outer: readonly [key: string, words: string];
  readonly inner: readonly [key: string, words: string];
  readonly slim: boolean;
}

const pairPicture =
  ({ title, outer, inner, slim }: PairDrawn): Picture =>
  ({ quantities }, reckoned) => {
    const gap = numberIn(reckoned, 'clearance');
    const words = lettered(reckoned, 'clearance');
    const sizeOf = ([key, name]: readonly [string, string]) =>
      `${name} ${figure(quantities[key]?.value ?? 0)} mm`;
    return sideBySide(
      `${title}: ${words}`,
      [
        section({ title, outer: sizeOf(outer), inner: sizeOf(inner), gap: words, open: gap > 0, slim }),
        againstLimits(`${title} against its limits`, quantities, {
          at: gap,
          words: `clearance ${words}`,
          u: reckoned.results.clearance?.u ?? 0,
        }),
      ],
      1,
    );
  };

export const pistonClearancePicture = pairPicture({
  title: 'Clearance of the piston in its bore',
  outer: ['bore', 'bore'],
  inner: ['piston', 'piston'],
  slim: false,
});

export const stemClearancePicture = pairPicture({
  title: 'Clearance of the stem in its guide',
  outer: ['guide', 'guide'],
  inner: ['stem', 'stem'],
  slim: true,
});

export const ringSideClearancePicture = pairPicture({
  title: 'Side clearance of the ring in its groove',
  outer: ['groove', 'groove'],
  inner: ['ring', 'ring'],
  slim: true,
});
