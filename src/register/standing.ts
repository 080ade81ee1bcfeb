/** @module What must be said of an instrument before it is believed. A caution, never a block. */

import { kindOf } from '../engine/instrument-kind.ts';
import type { Instrument } from '../measure/instrument.ts';
import type { Registered } from './register.ts';

export interface Caution {
  readonly kind: 'withdrawn' | 'overdue' | 'out of tolerance' | 'never checked';
  /** The instrument's name. */
  readonly of: string;
  /** Behind its name: `was due for calibration by 2026-03-02`. */
  readonly says: string;
}

/** `mic-50-75 was due for calibration by 2026-03-02`. */
export const cautionText = ({ of, says }: Caution): string => `${of} ${says}`;

/**
 * Cautions of an instrument on a day; none where nothing speaks against it.
 *
 * One whose calibration is not known is not overdue: many shops hold their own against rings and bars, and a check
 * says how it stands.
 *
 * @param on  a day, or a moment, as `2026-03-02` or `2026-03-02T08:00:00Z`; the due day itself still counts as in time
 */
export const standing = (instrument: Instrument, on: string): readonly Caution[] => {
  const { name, calibration, checked, zero, setTo } = instrument;
  const cautions: Caution[] = [];
  if (checked && !checked.good)
    cautions.push({
      kind: 'out of tolerance',
      of: name,
      says: `was out of tolerance when it was last checked, on ${checked.on} against ${checked.against}`,
    });
  if (calibration && calibration.due < on.slice(0, 10))
    cautions.push({
      kind: 'overdue',
      of: name,
      says: `was due for calibration by ${calibration.due} (certificate ${calibration.certificate})`,
    });
  if (!checked && !zero && !setTo && !kindOf(instrument.kind).master)
    cautions.push({ kind: 'never checked', of: name, says: `was never checked on its zero or a master` });
  return cautions;
};

/** The same of an instrument as the register has it, first of all that it was withdrawn. */
export const standingInRegister = ({ instrument, withdrawn }: Registered, on: string): readonly Caution[] => [
  ...(withdrawn
    ? [
        {
          kind: 'withdrawn' as const,
          of: instrument.name,
          says: `was withdrawn on ${withdrawn.at.slice(0, 10)} (${withdrawn.why.trim()})`,
        },
      ]
    : []),
  ...standing(instrument, on),
];
