/** @module An instrument that was found out when it was last held against its zero or a master. */
import type { KnownSlip } from './slip.ts';

export const failedCheck: KnownSlip = {
  name: 'out of calibration',
  says: 'an instrument that failed its last check',
  /** Not a chance but whether it is asked about at all: above 0 it is. */
  chance: 1,
  of: 'instruments',
};
