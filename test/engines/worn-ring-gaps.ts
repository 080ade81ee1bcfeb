/** @module Ring gaps of worn engines: as made, opened by the growth of their bores and by their own wear. Invented. */
import type { EngineType } from '../../src/engine/engine-type.ts';
import type { Reading } from '../../src/measure/reading.ts';
import { cellsOf } from '../../src/measure/scheme.ts';
import { instrumentOf } from './doubt-trial.ts';
import { readBy } from './slipped-reading.ts';
import { normalBy, placesIn, type TrueSize } from './worn-engine.ts';

/** Gaps as made, opened by π times what the bore has grown where it grew least, and by what the rings have worn. */
export const ringGaps = (
  engine: EngineType,
  sizes: readonly TrueSize[],
  random: () => number,
): readonly Reading[] => {
  const gap = engine.characteristics.get('ring-gap');
  if (!gap) throw new Error('no ring gaps');
  const instrument = instrumentOf(gap);
  const made = engine.characteristics.get('bore-diameter')?.limits?.new.least ?? 0;
  const { least = 0, greatest = 0 } = gap.limits?.new ?? {};
  return placesIn(sizes).flatMap((bore) => {
    const grown = Math.min(...sizes.filter(({ cell }) => cell.place === bore).map(({ size }) => size)) - made;
    const place = bore.replace('bore', 'piston');
    return cellsOf(engine, 'ring-gap', place).map((cell, at) => {
      const size = least + (greatest - least) * random() + Math.PI * grown + 0.1 * random();
      return readBy(instrument, cell, size + 0.003 * normalBy(random), `gap ${place} ${at}`, random);
    });
  });
};
