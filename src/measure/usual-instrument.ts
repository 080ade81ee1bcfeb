/** @module An instrument of which only the kind is known: the figures that its standard or common practice allow. */

import { kindOf } from '../engine/instrument-kind.ts';
import { formatFigure } from '../quantity/figure.ts';
import type { Typed } from '../quantity/typed.ts';
import { unitsOf } from '../quantity/unit.ts';
import type { Instrument } from './instrument.ts';

const mm = (figure: number, decimals = 3): Typed => ({ text: figure.toFixed(decimals), unit: 'mm' });

/** Frames go by 25 mm; so do their permissible errors. */
const frameAround = (size: number): readonly [least: number, greatest: number] => {
  const step = Math.max(0, Math.ceil(size / 25) - 1);
  return [25 * step, 25 * (step + 1)];
};

/** Maximum permissible error of an outside micrometer by the end of its range, mm. source: DIN 863-1, table. */
const micrometerError = (greatest: number): number => {
  const table: readonly (readonly [upTo: number, error: number])[] = [
    [50, 0.004],
    [100, 0.005],
    [150, 0.006],
    [200, 0.007],
    [250, 0.008],
    [300, 0.009],
  ];
  return table.find(([upTo]) => greatest <= upTo)?.[1] ?? 0.012;
};

interface Figures {
  readonly range: readonly [number, number];
  readonly resolution: number;
  readonly permissibleError: number;
  readonly repeatability: number;
  readonly turn?: number;
}

const figuresOf = (kind: string, size: number): Figures => {
  switch (kind) {
    // The finest scale that there is: how fine it was really read shows in the figures typed.
    case 'outside micrometer':
    case 'ball micrometer': {
      const range = frameAround(size);
      const permissibleError = micrometerError(range[1]);
      return { range, resolution: 0.001, permissibleError, repeatability: 0.002, turn: 0.5 };
    }
    // Common practice, no source: about 5 µm, and what it was set with.
    case 'bore gauge':
      return { range: [0, 500], resolution: 0.001, permissibleError: 0.005, repeatability: 0.002 };
    // source: DIN 878:2006, 10 mm range, total error; from memory
    case 'dial gauge':
      return { range: [0, 10], resolution: 0.001, permissibleError: 0.017, repeatability: 0.003, turn: 1 };
    // source: DIN 862, 0.02 mm reading, 20 µm and 20 µm more for a depth
    case 'depth gauge':
      return { range: [0, 300], resolution: 0.01, permissibleError: 0.04, repeatability: 0.01 };
    // Common practice, no source: 5 µm thin, 10 µm from half a millimetre up.
    case 'feeler set': {
      const permissibleError = size < 0.5 ? 0.005 : 0.01;
      return { range: [0, 2], resolution: 0.01, permissibleError, repeatability: 0.01 };
    }
    // source: DIN 862, 0.05 mm reading: 50 µm to 300 mm; anything unknown is taken to be no better
    default:
      return { range: [0, 300], resolution: 0.01, permissibleError: 0.05, repeatability: 0.02 };
  }
};

/** Of what is no length: common practice, no source: two in a hundred of what it shows. */
const usualGauge = (name: string, kind: string, size: number): Instrument => {
  const unit = unitsOf(kindOf(kind).measures)[0] ?? '';
  const most = Math.max(Math.abs(size), 1e-3);
  const share = (part: number): Typed => ({ text: formatFigure(most * part, 6), unit });
  return {
    name,
    kind,
    range: { least: share(0), greatest: share(2) },
    resolution: share(0.002),
    permissibleError: share(0.02),
    repeatability: share(0.005),
  };
};

/**
 * An instrument of which the register knows nothing: usual figures of its kind, and its zero never checked.
 *
 * @param kind  as the engine type names kinds of instruments; any other is taken for a coarse caliper
 * @param name  what it is called
 * @param size  of what is measured with it, in the core's unit, mm for a length; for micrometers it says which frame was used
 * @returns an instrument fit to judge by, with wider uncertainty than most real ones
 * @source  DIN 863-1 (micrometers), DIN 878 (dial gauges), DIN 862 (calipers); the rest common practice, no source
 */
export const usualInstrument = (kind: string, name: string, size = 100): Instrument => {
  if (kindOf(kind).measures !== 'length') return usualGauge(name, kind, size);
  const { range, resolution, permissibleError, repeatability, turn } = figuresOf(kind, size);
  return {
    name,
    kind,
    range: { least: mm(range[0], 0), greatest: mm(range[1], 0) },
    resolution: mm(resolution),
    permissibleError: mm(permissibleError),
    repeatability: mm(repeatability),
    ...(turn !== undefined && { turn: mm(turn, 1) }),
  };
};
