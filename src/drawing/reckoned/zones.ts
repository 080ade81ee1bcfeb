/** @module Sums about limits: the verdict of a size, the guard band inside the limits, the repeats that would settle it. */
import type { Verdict } from '../../measure/verdict-model.ts';
import { expanded } from '../../quantity/uncertain.ts';
import type { Values } from '../../reckon/reckoning.ts';
import { figure, numberLine } from '../number-line.ts';
import { toleranceZone } from '../tolerance-zone.ts';
import { numberOr, type Picture } from './picture.ts';

const boundsIn = ({ quantities }: Values) => {
  const { least, greatest } = quantities;
  return {
    ...(least !== undefined && { least: least.value }),
    ...(greatest !== undefined && { greatest: greatest.value }),
  };
};

const zoneOf = (given: Values, verdict: Verdict) => {
  const bounds = boundsIn(given);
  const size = given.quantities.size;
  return toleranceZone({
    title: 'the size',
    limits: { new: bounds, goesBack: bounds, printed: {} },
    ...(size !== undefined && {
      value: size.value,
      expanded: expanded(size, 0.95),
    }),
    verdict,
  });
};

export const verdictPicture: Picture = (given, { results }) =>
  zoneOf(given, (results.verdict?.value ?? 'not yet known') as Verdict);

export const repeatsNeededPicture: Picture = (given) => zoneOf(given, 'unsure');

/** The limits as one stretch, what may be accepted as the close one within it. */
export const guardBandPicture: Picture = (given, reckoned) => {
  const { least, greatest } = boundsIn(given);
  const guard = numberOr(reckoned, 'guard-band') ?? 0;
  const lowest = numberOr(reckoned, 'least-accepted');
  const highest = numberOr(reckoned, 'greatest-accepted');
  // A zone open to one side is drawn some guard bands wide.
  const room = Math.max(8 * guard, 1e-3);
  const from = least ?? (greatest ?? 0) - room;
  const to = greatest ?? (least ?? 0) + room;
  const accepted = lowest !== undefined || highest !== undefined;
  return numberLine({
    title: 'What may be accepted, within the limits',
    description: accepted
      ? `A guard band of ${figure(guard, 5)} mm is kept inside each limit.`
      : 'No size can be proved within these limits.',
    unit: 'mm',
    stretches: [
      { from, to, words: 'limits: wide hatching', hatch: 'wide' },
      ...(accepted
        ? [
            {
              from: lowest ?? from,
              to: highest ?? to,
              words: 'accepted: close hatching',
              hatch: 'close',
            } as const,
          ]
        : []),
    ],
    marks: [
      ...(least === undefined ? [] : [{ at: least, words: figure(least) }]),
      ...(greatest === undefined ? [] : [{ at: greatest, words: figure(greatest) }]),
      ...(lowest === undefined ? [] : [{ at: lowest, words: figure(lowest, 5), strong: true }]),
      ...(highest === undefined ? [] : [{ at: highest, words: figure(highest, 5), strong: true }]),
    ],
  });
};
