/** @module The rule that an engine type measures timing at the pumps, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('measures timing at the pumps', [
  {
    breaks: 'a depth that is not taken at the pumps',
    changes: [['depth: pump-depth', 'depth: cam-lift']],
    says: /pump cam lift is taken at cam, and the pumps sit at pump/,
    on: 'depth: cam-lift',
  },
  {
    breaks: 'a tolerance of nothing',
    changes: [['tolerance: 0.05 mm', 'tolerance: 0 mm']],
    says: /the tolerance is not above zero/,
    on: 'tolerance: 0 mm',
  },
  {
    breaks: 'depths that need packs out of range',
    changes: [['datum: 83.00 mm', 'datum: 83.50 mm']],
    says: /would need packs from 0.7 mm to 1.7 mm/,
    on: 'datum: 83.50 mm',
    weight: 'warning',
  },

  {
    breaks: 'a depth with several readings a pump',
    changes: [
      ['at: pump\n    wears: larger', 'at: pump\n    scheme: { planes: [left, right] }\n    wears: larger'],
    ],
    says: /depth from the pump pad .* is not one reading a pump/,
    on: 'depth: pump-depth',
  },
]);
