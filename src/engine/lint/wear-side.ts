/** @module Rule: a wear limit stands on the side to which the part wears, and outside the limits as made. */
import type { EngineType } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import { everyLimits, type LimitsAt, limitText } from './every-limits.ts';

const wrongSide = ({ path, title, wears, figures }: LimitsAt): readonly Finding[] => {
  if (wears === 'either') return [];
  const side = wears === 'smaller' ? 'greatest' : 'least';
  if (figures[`wear.${side}`] === undefined) return [];
  return [
    wrong(
      [...path, 'wear', side],
      `${title} wears ${wears}, yet a ${side} wear limit is given`,
      `give the wear limit as \`${side === 'least' ? 'greatest' : 'least'}\`, or mend \`wears\``,
    ),
  ];
};

const insideNew = (at: LimitsAt): readonly Finding[] => {
  const { path, title, figures } = at;
  const inside = (side: 'least' | 'greatest', made: number | undefined, sign: 1 | -1): readonly Finding[] => {
    const wear = figures[`wear.${side}`];
    if (wear === undefined || made === undefined || sign * (wear - made) >= 0) return [];
    return [
      wrong(
        [...path, 'wear', side],
        `the wear limit of ${title}, ${limitText(wear, at)}, would throw out a new part (${side} as made ${limitText(made, at)})`,
        'look both up in the manual; a wear limit lies outside the limits as made',
      ),
    ];
  };
  return [
    ...inside('least', figures['new.least'] ?? figures['new.greatest'], -1),
    ...inside('greatest', figures['new.greatest'] ?? figures['new.least'], 1),
  ];
};

export const wearSide = (engine: EngineType): readonly Finding[] =>
  everyLimits(engine).flatMap((at) => [...wrongSide(at), ...insideNew(at)]);
