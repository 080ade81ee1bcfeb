/** @module Every place's clearance with the parts chosen for it, between the limits and about their middle. */
import { coverageFactor } from '../../quantity/coverage.ts';
import { figure, numberLine } from '../number-line.ts';
import { numberOr, type Picture } from './picture.ts';

/** More would run into each other: those furthest from the middle are drawn. */
const most = 16;

export const assignPicture: Picture = ({ quantities }, reckoned) => {
  const least = quantities.least?.value ?? 0;
  const greatest = quantities.greatest?.value ?? 0;
  const places = Object.keys(reckoned.results)
    .flatMap((key) => (key.endsWith('.off') ? [key.slice(0, -'.off'.length)] : []))
    .map((place) => ({
      place,
      parts: String(reckoned.results[`${place}.parts`]?.value ?? ''),
      clearance: numberOr(reckoned, `${place}.clearance`) ?? 0,
      off: Math.abs(numberOr(reckoned, `${place}.off`) ?? 0),
      spread: coverageFactor(0.95, Infinity) * (reckoned.results[`${place}.clearance`]?.u ?? 0),
    }));
  const drawn = places.toSorted((a, b) => b.off - a.off).slice(0, most);
  const left = places.length - drawn.length;
  return numberLine({
    title: 'Clearance of every place with its parts',
    description:
      places.length === 0
        ? 'The parts in stock do not serve every place.'
        : `${places.map(({ place, parts, clearance }) => `${place} with ${parts}: ${figure(clearance)} mm`).join('; ')}.${left > 0 ? ` ${left} nearer to the middle are not drawn.` : ''}`,
    unit: 'mm',
    stretches: [{ from: least, to: greatest, words: 'within the limits', hatch: 'wide' }],
    marks: [
      { at: (least + greatest) / 2, words: 'middle', strong: true },
      ...drawn.map(({ place, parts, clearance, spread }) => ({
        at: clearance,
        words: `${place}: ${parts}`,
        spread,
      })),
    ],
  });
};
