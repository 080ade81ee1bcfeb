/** @module The rule that the second check of the pumps can be read and turned into crank angle, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const check = 'check: { characteristic: spill-angle, nominal: 24 deg, larger-is: earlier, spread: 0.8 deg }';

describeRule('has a second check of its pumps that can be read', [
  {
    breaks: 'a check that is not read at the pumps',
    changes: [
      ['characteristic: spill-angle', 'characteristic: cam-lift'],
      ['nominal: 24 deg', 'nominal: 24 mm'],
    ],
    says: /pump cam lift is taken at cam, and the pumps sit at pump/,
    on: 'characteristic: cam-lift',
  },
  {
    breaks: 'a length on a rim of no known size',
    changes: [
      ['quantity: angle\n', 'quantity: length\n'],
      ['{ least: 22.9 deg, greatest: 25.1 deg }', '{ least: 72.0 mm, greatest: 79.0 mm }'],
      ['    instrument: protractor\n', '    instrument: caliper\n'],
      ['nominal: 24 deg', 'nominal: 75.4 mm'],
    ],
    says: /not said how far the rim runs for each degree: give `rim`: π times the diameter/,
    on: 'check: { characteristic: spill-angle',
  },
  {
    breaks: 'a nominal figure outside its limits',
    changes: [['nominal: 24 deg', 'nominal: 26 deg']],
    says: /26\.00 deg lies outside 22\.90 deg to 25\.10 deg/,
    on: 'check: { characteristic',
  },
  {
    breaks: 'a check that nobody asks for',
    changes: [['needs: [spill-angle]', 'needs: []']],
    says: /no operation asks for crank before top dead centre/,
    on: 'check: { characteristic',
    weight: 'warning',
  },
  {
    breaks: 'a check that counts nobody knows which way',
    changes: [[check, check.replace(' larger-is: earlier,', '')]],
    says: /not said which way the second check counts/,
    on: 'check: { characteristic',
  },
]);
