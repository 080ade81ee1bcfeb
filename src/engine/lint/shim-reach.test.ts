/** @module The rule that an engine type can shim every pack in its range, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('can shim every pack in its range', [
  {
    breaks: 'a gap that no pack fills',
    changes: [['shims: [0.10 mm, 0.15 mm, 0.20 mm, 0.25 mm, 0.30 mm, 0.50 mm]', 'shims: [0.20 mm, 0.50 mm]']],
    says: /no pack of 4 shims or fewer comes within 0.05 mm of the thicknesses between 0.25 mm and 0.35 mm/,
    on: 'shims: [0.20 mm, 0.50 mm]',
  },
  {
    breaks: 'too few shims in a pack',
    changes: [['most-shims: 4', 'most-shims: 2']],
    says: /no pack of 2 shims or fewer comes within 0.05 mm of the thicknesses between 0.85 mm and 0.95 mm/,
    on: 'shims: [0.10 mm, 0.15 mm',
  },
  {
    breaks: 'an open range',
    changes: [['range: { least: 0.20 mm, greatest: 1.20 mm }', 'range: { least: 0.20 mm }']],
    says: /range of packs has an open end/,
    on: 'range: { least: 0.20 mm }',
  },
]);
