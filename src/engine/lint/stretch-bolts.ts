/** @module Rule: bolts that stretch for good can be renewed, by a part that fits the same places in the same number. */
import type { EngineType } from '../engine-type.ts';
import type { Fastener } from '../fastener.ts';
import { type Finding, wrong } from '../finding.ts';

const renewed = ({ oneUse }: EngineType, fastener: Fastener): readonly Finding[] => {
  const { name, title, at, count, stretch, renewedBy } = fastener;
  if (renewedBy === undefined)
    return stretch?.kind === 'once'
      ? [
          wrong(
            ['fasteners', name, 'stretch'],
            `${title} stretch once, and nothing says what they are renewed by`,
            'name a part under one-use: `renewed-by: …`',
          ),
        ]
      : [];
  const part = oneUse.get(renewedBy);
  if (part === undefined || (part.at === at && part.each >= count)) return [];
  return [
    wrong(
      ['fasteners', name, 'renewed-by'],
      part.at === at
        ? `${title} are ${count} to a place, and ${part.title} only ${part.each}`
        : `${title} sit at ${at}, and ${part.title} at ${part.at}`,
      'mend the place or the number of one of them',
    ),
  ];
};

const length = ({ name, title, stretch }: Fastener): readonly Finding[] =>
  stretch?.kind === 'up to a length' && !(stretch.longest > 0)
    ? [
        wrong(
          ['fasteners', name, 'stretch', 'longest'],
          `${title} cannot be so short`,
          'give the longest length at which the manual lets them be used again',
        ),
      ]
    : [];

export const stretchBolts = (engine: EngineType): readonly Finding[] =>
  [...engine.fasteners.values()].flatMap((fastener) => [...renewed(engine, fastener), ...length(fastener)]);
