/** @module The wrong number read on a scale: one or two numbered lines out. */
import { shifted } from './shifted.ts';
import type { Slip } from './slip.ts';

const kinds = ['outside micrometer', 'ball micrometer', 'bore gauge', 'dial gauge', 'depth gauge', 'caliper'];

/**
 * Numbers stand at every tenth of a millimetre as the figure is read, and at every hundredth of an inch.
 * source: common practice, no source: an error of 0.10 or 0.20 is a misread number
 */
const steps = { mm: { text: '0.1', unit: 'mm' }, in: { text: '0.01', unit: 'in' } } as const;

export const misreadNumber: Slip = {
  name: 'misread number',
  says: 'a number on the scale misread',
  /** Once in fifty readings: common practice, no source. */
  chance: 0.02,
  of: 'readings',
  reach: 0.35,
  onScale: true,
  sticks: false,
  candidates: (typed, { kind }) => {
    const step = typed.unit === 'mm' || typed.unit === 'in' ? steps[typed.unit] : undefined;
    if (!step || !kinds.includes(kind)) return [];
    return [1, -1, 2, -2].flatMap((times) => {
      const likely = shifted(typed, step, times);
      return likely ? [{ likely, share: Math.abs(times) === 1 ? 0.35 : 0.15, stretch: 1 }] : [];
    });
  },
};
