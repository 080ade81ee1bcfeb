/** @module The worst size, what must come off it, and the steps that lie beyond, on one line. */
import { expanded } from '../../quantity/uncertain.ts';
import { figure, numberLine } from '../number-line.ts';
import { lettered, numberOr, type Picture, tableIn } from './picture.ts';

/** @param way  1 where metal comes off a bore and the size grows, -1 where it comes off a shaft */
const nextSizePicture =
  (title: string, way: 1 | -1): Picture =>
  (given, reckoned) => {
    const { quantities } = given;
    const worst = quantities.worst?.value ?? 0;
    const uncertain = quantities.worst ? expanded(quantities.worst, 0.95) : 0;
    const clean = quantities['clean-up']?.value ?? 0;
    const steps = tableIn(given, 'steps').flat();
    const chosen = numberOr(reckoned, 'size');
    return numberLine({
      title,
      description:
        chosen === undefined
          ? 'No step cleans up the worst place.'
          : `The first step that cleans up the worst place, ${figure(worst)} mm, is ${lettered(reckoned, 'size')}.`,
      unit: 'mm',
      stretches: [
        {
          from: worst,
          to: worst + way * (uncertain + clean),
          words: 'must come off: uncertain side and clean-up allowance',
          hatch: 'close',
        },
      ],
      marks: [
        { at: worst, words: `worst place ${figure(worst)}`, spread: uncertain },
        ...steps.map((at) => ({
          at,
          words: at === chosen ? `to ${figure(at)}` : figure(at),
          strong: at === chosen,
        })),
      ],
    });
  };

export const regrindSizePicture = nextSizePicture('The next undersize that cleans up', -1);
export const reboreSizePicture = nextSizePicture('The next oversize that cleans up', 1);
