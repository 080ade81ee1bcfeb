/** @module End float: the thrust face between its washers, the float as found and as it will be against its limits. */

import { sideBySide } from '../side-by-side.ts';
import { againstLimits } from './against-limits.ts';
import { section } from './gap-section.ts';
import { lettered, numberIn, numberOr, type Picture } from './picture.ts';

export const endFloatPicture: Picture = ({ quantities }, reckoned) => {
  const { results } = reckoned;
  const found = numberIn(reckoned, 'end-float');
  const after = numberOr(reckoned, 'after');
  const words = lettered(reckoned, 'end-float');
  const title = 'End float of the shaft';
  const asFound = { at: found, words: `found ${words}`, u: results['end-float']?.u ?? 0 };
  const fit = results.chosen?.value;
  return sideBySide(
    after === undefined
      ? `${title}: ${words}`
      : `${title}: found ${words}, then ${lettered(reckoned, 'after')}`,
    [
      section({
        title,
        outer:
          fit === undefined ? 'between the thrust faces' : `fit ${fit}, ${lettered(reckoned, 'thickness')}`,
        inner: 'thrust collar of the shaft',
        gap: after === undefined ? words : lettered(reckoned, 'after'),
        open: (after ?? found) > 0,
        slim: false,
      }),
      after === undefined
        ? againstLimits(`${title} against its limits`, quantities, asFound)
        : againstLimits(
            `${title} against its limits`,
            quantities,
            { at: after, words: `then ${lettered(reckoned, 'after')}`, u: results.after?.u ?? 0 },
            [asFound],
          ),
    ],
    1,
  );
};
