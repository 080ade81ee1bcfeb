/** @module A frame's start added wrongly: the reading of one micrometer written as that of the next size. */
import { shifted } from './shifted.ts';
import type { Slip } from './slip.ts';

/** Frames go by 25 mm, or by the inch. source: common practice, no source: an error of 25 mm is the wrong frame */
const steps = { mm: { text: '25', unit: 'mm' }, in: { text: '1', unit: 'in' } } as const;

export const wrongFrame: Slip = {
  name: 'wrong frame',
  says: 'the start of another frame added',
  /** Once in three hundred readings: common practice, no source. */
  chance: 0.003,
  of: 'readings',
  reach: 0.5,
  onScale: false,
  sticks: true,
  candidates: (typed, { kind }) => {
    const step = typed.unit === 'mm' || typed.unit === 'in' ? steps[typed.unit] : undefined;
    if (!step || !kind.endsWith('micrometer')) return [];
    return [1, -1].flatMap((times) => {
      const likely = shifted(typed, step, times);
      return likely ? [{ likely, share: 0.5, stretch: 1 }] : [];
    });
  },
};
