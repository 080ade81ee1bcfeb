/** @module The rule that an engine type can compute what it derives, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('can compute what it derives', [
  {
    breaks: 'a characteristic computed from itself',
    changes: [
      ['derived: { range-over-axes: bore-diameter }', 'derived: { greatest: bore-taper }'],
      ['derived: { range-over-planes: bore-diameter }', 'derived: { greatest: bore-ovality }'],
    ],
    says: /computed from itself: bore-ovality from bore-taper from bore-ovality/,
    on: 'derived: { greatest: bore-taper }',
  },
  {
    breaks: 'many readings where one value is wanted',
    changes: [['[{ greatest: bore-diameter }, piston-diameter]', '[bore-diameter, piston-diameter]']],
    says: /bore diameter has 6 readings at each place.*\{ least: bore-diameter \}/,
    on: '[bore-diameter, piston-diameter]',
  },
  {
    breaks: 'an ovality without axes',
    changes: [['{ range-over-axes: bore-diameter }', '{ range-over-axes: ring-gap }']],
    says: /ring gap in its own bore is not taken over several axes/,
    on: '{ range-over-axes: ring-gap }',
  },
  {
    breaks: 'a range over places of what has one place',
    changes: [['{ range-over-planes: bore-diameter }', '{ range-over-places: head-flatness }']],
    says: /head flatness over its length is taken at one place alone/,
    on: '{ range-over-places: head-flatness }',
  },
  {
    breaks: 'a step to neighbours of places that do not match',
    changes: [['{ range-over-planes: bore-diameter }', '{ range-over-neighbours: main-journal-diameter }']],
    says: /taken at 4 places \(main bearing\), bore taper at 3/,
    on: '{ range-over-neighbours: main-journal-diameter }',
  },
  {
    breaks: 'places that do not match',
    changes: [
      ['[{ greatest: bore-diameter }, piston-diameter]', '[{ greatest: main-shell-bore }, piston-diameter]'],
    ],
    says: /taken at 4 places \(main bearing\), piston clearance at 3 \(piston\)/,
    on: '[{ greatest: main-shell-bore }, piston-diameter]',
  },
  {
    breaks: 'computed and measured at once',
    changes: [
      [
        'derived: { range-over-planes: bore-diameter }',
        'derived: { range-over-planes: bore-diameter }\n    instrument: bore gauge',
      ],
    ],
    says: /bore taper is computed and measured at once/,
    on: 'derived: { range-over-planes: bore-diameter }\n    instrument',
  },
]);
