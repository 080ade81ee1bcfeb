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

  {
    breaks: 'a range that runs backwards',
    changes: [
      ['range: { least: 0.20 mm, greatest: 1.20 mm }', 'range: { least: 1.20 mm, greatest: 0.20 mm }'],
    ],
    says: /packs from 1.2 mm to 0.2 mm cannot be right/,
    on: 'range: { least: 1.20 mm',
  },
  {
    breaks: 'a pack of inches',
    changes: [
      ['range: { least: 0.20 mm, greatest: 1.20 mm }', 'range: { least: 0.20 mm, greatest: 1.20 in }'],
    ],
    says: /packs from 0.2 mm to 30.48 mm cannot be right/,
    on: 'greatest: 1.20 in',
  },
  {
    breaks: 'a shim of nothing',
    changes: [['0.25 mm, 0.30 mm, 0.50 mm]', '0 mm, 0.30 mm, 0.50 mm]']],
    says: /no shim is that thick/,
    on: '0 mm, 0.30 mm, 0.50 mm]',
  },
  {
    breaks: 'a thin end that no shim reaches',
    changes: [['shims: [0.10 mm, 0.15 mm, 0.20 mm, 0.25 mm', 'shims: [0.35 mm, 0.40 mm, 0.45 mm']],
    says: /between 0.2 mm and 0.25 mm/,
    on: 'shims: [0.35 mm',
  },
]);
