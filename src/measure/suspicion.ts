/** @module One figure against the slips that could have made it: the likeliest, with its odds. */
import { lengthOf, resolutionOf, type Typed } from '../quantity/typed.ts';
import { sizeOfReading } from './cell-size.ts';
import type { Honest } from './honest.ts';
import type { Instrument } from './instrument.ts';
import { raisedAt } from './odds.ts';
import type { Reading } from './reading.ts';
import type { Sheet } from './sheet.ts';
import { slips } from './slips/list.ts';
import { reachedBy } from './slips/outside-range.ts';
import type { Priors } from './slips/priors.ts';
import type { Candidate, Slip } from './slips/slip.ts';
import type { Taken } from './taken.ts';

/** What a slip would have made the figure from. */
export interface Suspect {
  readonly slip: Slip;
  readonly candidate: Candidate;
  /** Which of the slip's ways it is. */
  readonly way: number;
  /** mm. */
  readonly size: number;
  /** How readily the instrument shows it: 1, or hardly ever. */
  readonly shown: number;
}

export interface Suspicion extends Suspect {
  readonly odds: number;
}

/** A figure that its instrument cannot show is honest once in a thousand, where the register is wrong. */
const registerWrong = 0.001;

/** Read between the lines, once in ten for each digit more than the scale has: common practice, no source. */
const betweenLines = 0.1;

/** An instrument is read in another unit than its own, once in ten: common practice, no source. */
const otherUnit = 0.1;

const digitsTooMany = (instrument: Instrument, typed: Typed): number => {
  const step = resolutionOf(typed);
  const finest = lengthOf(instrument.resolution);
  const digits = finest.kind === 'answer' && step > 0 ? Math.log10(finest.value / step) : 0;
  return Math.max(0, Math.round(digits));
};

const shownBy = (instrument: Instrument, typed: Typed): number =>
  (reachedBy(instrument, typed) ? 1 : registerWrong) *
  (typed.unit === instrument.resolution.unit ? 1 : otherUnit) *
  betweenLines ** Math.min(3, digitsTooMany(instrument, typed));

interface SuspectsKept {
  readonly instruments: Sheet['instruments'];
  readonly suspects: readonly Suspect[];
}

/** A reading never changes. */
const kept = new WeakMap<Reading, SuspectsKept>();

/** All that a figure may have been. */
export const suspectsOf = (sheet: Sheet, { reading, instrument, scale }: Taken): readonly Suspect[] => {
  const before = kept.get(reading);
  if (before?.instruments === sheet.instruments) return before.suspects;
  const suspects = slips.flatMap((slip) =>
    slip.candidates(reading.typed, instrument).flatMap((candidate, way) => {
      const size = sizeOfReading(sheet, { ...reading, typed: candidate.likely });
      return size
        ? [{ slip, candidate, way, size: size.value * scale, shown: shownBy(instrument, candidate.likely) }]
        : [];
    }),
  );
  kept.set(reading, { instruments: sheet.instruments, suspects });
  return suspects;
};

/** The likeliest slip behind a reading, whatever its odds; undefined where none could have made the figure. */
export const weighed = (
  sheet: Sheet,
  taken: Taken,
  honest: Honest,
  priors: Priors,
): Suspicion | undefined => {
  const asItStands = honest.density(taken.size) * shownBy(taken.instrument, taken.reading.typed);
  const most = slips.reduce((sum, slip) => Math.max(sum, (priors[slip.name] ?? 0) * slip.reach), 0);
  if (most * honest.peak < raisedAt * asItStands) return undefined;
  let worst: Suspicion | undefined;
  for (const suspect of suspectsOf(sheet, taken)) {
    const { slip, candidate, size, shown } = suspect;
    const weight = ((priors[slip.name] ?? 0) * candidate.share * candidate.stretch) / asItStands;
    if (weight * honest.peak < raisedAt) continue;
    const odds = weight * shown * honest.density(size);
    if (odds > (worst?.odds ?? 0)) worst = { ...suspect, odds };
  }
  return worst;
};
