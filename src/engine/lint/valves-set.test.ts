/** @module The rule that valve clearances can be read, proved and set in an order, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('says of valve clearances what can be read and proved', [
  {
    breaks: 'clearances without limits',
    changes: [['    limits: { new: { least: 0.26 mm, greatest: 0.34 mm } }\n', '']],
    says: /valve clearance, inlet has no least and greatest limit as made/,
    on: 'title: valve clearance, inlet',
  },
  {
    breaks: 'a clearance read at no cylinder',
    changes: [['at: inlet-rocker', 'at: gear']],
    says: /is read at timing gears, which does not stand along the cylinders/,
    on: 'inlet: inlet-clearance',
  },
  {
    breaks: 'clearances that nobody asks for',
    changes: [
      ['needs: [inlet-clearance, exhaust-clearance]', 'needs: [exhaust-clearance]'],
      ['needs: [inlet-clearance, exhaust-clearance]', 'needs: [exhaust-clearance]'],
    ],
    says: /no operation asks for valve clearance, inlet to be proved/,
    on: 'inlet: inlet-clearance',
    weight: 'warning',
  },
  {
    breaks: 'an angle that no valve has',
    changes: [['inlet-closes: 42 deg', 'inlet-closes: 222 deg']],
    says: /222 deg is no angle of a valve's timing/,
    on: 'inlet-closes: 222 deg',
  },
  {
    breaks: 'an order of its own that leaves a valve out',
    changes: [
      [
        '  engine-is: cold\n',
        '  engine-is: cold\n  order: [{ top: 1, inlet: [1, 2, 3], exhaust: [1, 3] }]\n',
      ],
    ],
    says: /the order sets the exhaust valves of cylinders 1, 3: name each cylinder from 1 to 3 once under exhaust/,
    on: 'order: [{ top: 1',
  },
]);
