/** @module Rule: a least limit is not greater than the greatest one. */
import type { EngineType } from '../engine-type.ts';
import { type Finding, wrong } from '../finding.ts';
import { everyLimits, limitText } from './every-limits.ts';

export const limitsInOrder = (engine: EngineType): readonly Finding[] =>
  everyLimits(engine).flatMap((at) =>
    (['new', 'wear'] as const).flatMap((side) => {
      const { path, title, figures } = at;
      const least = figures[`${side}.least`];
      const greatest = figures[`${side}.greatest`];
      if (least === undefined || greatest === undefined || least <= greatest) return [];
      return [
        wrong(
          [...path, side],
          `the limits of ${title} cross: least ${limitText(least, at)}, greatest ${limitText(greatest, at)}`,
          'look both up in the manual; probably they are swapped or a digit is wrong',
        ),
      ];
    }),
  );
