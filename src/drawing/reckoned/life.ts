/** @module Pictures of the sums about hours: what share of worn parts still lasts, repair against replacement. */

import { breakEvenPrice, waysGiven } from '../../reckon/economic-limit.ts';
import type { Values } from '../../reckon/reckoning.ts';
import { wearLasts } from '../../reckon/remaining-hours.ts';
import { wearGiven } from '../../reckon/remaining-hours-reckoning.ts';
import { chart } from '../chart.ts';
import { numberIn, type Picture } from './picture.ts';

const points = 60;

export const remainingHoursPicture: Picture = (given, reckoned) => {
  const wear = wearGiven(given);
  const [counted, middle] = [numberIn(reckoned, 'counted-on'), numberIn(reckoned, 'middle')];
  const to = Math.max(1, numberIn(reckoned, 'one-in-ten') * 1.4);
  const curve = Array.from({ length: points + 1 }, (_, index) => {
    const hours = (to * index) / points;
    return [hours, 100 * (wearLasts(wear, hours) ?? 1)] as const;
  });
  return chart({
    title: 'How long the worn part lasts',
    description: `Of 100 such parts 90 outlast ${counted} h and 50 outlast ${middle} h.`,
    x: { words: 'hours from now, h', from: 0, to },
    y: { words: 'of 100 such parts, still within the limit', from: 0, to: 100 },
    curves: [{ points: curve, stroke: 'accent' }],
    marks: [
      { at: [counted, 100 * (wearLasts(wear, counted) ?? 1)], words: `${counted} h counted on`, led: true },
      { at: [middle, 100 * (wearLasts(wear, middle) ?? 1)], words: `${middle} h in the middle` },
    ],
  });
};

const waysIn = (given: Values) => {
  const ways = waysGiven(given);
  if (ways.kind === 'refused') throw new Error(ways.refusal.what);
  return ways.value;
};

export const economicLimitPicture: Picture = (given, reckoned) => {
  const { repair, replacement } = waysIn(given);
  const to = 1.15 * Math.max(repair.hours, replacement.hours);
  const cheaper = reckoned.results['cheaper-by-the-hour']?.value;
  return chart({
    title: 'Repair against replacement',
    description: `The repair costs ${repair.price} for ${repair.hours} h, the replacement ${replacement.price} for ${replacement.hours} h; by the hour ${cheaper} is cheaper.`,
    x: { words: 'hours counted on, h', from: 0, to },
    y: {
      words: 'price',
      from: 0,
      to: 1.2 * Math.max(repair.price, breakEvenPrice(to, replacement)),
    },
    curves: [
      {
        points: [
          [0, 0],
          [to, breakEvenPrice(to, replacement)],
        ],
        words: 'as dear by the hour as the replacement',
        stroke: 'dashed',
      },
    ],
    marks: [
      { at: [repair.hours, repair.price], words: 'repair', led: true },
      { at: [replacement.hours, replacement.price], words: 'replacement' },
    ],
  });
};
