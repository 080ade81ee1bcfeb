/** @module The rule that couplings couple what can be coupled, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const last = '  - { kind: disturbed, by: lift-head, renew: head-gasket }\n';
const added = (coupling: string): readonly [string, string] => [last, `${last}  - ${coupling}\n`];

describeRule('couples what can be coupled', [
  {
    breaks: 'a component coupled with itself',
    changes: [added('{ kind: matched, components: [valves, valves] }')],
    says: /valves is coupled with itself/,
    on: '{ kind: matched',
  },
  {
    breaks: 'a disturbance of nothing in particular',
    changes: [added('{ kind: disturbed, renew: rings }')],
    says: /must say what disturbs/,
    on: '{ kind: disturbed, renew: rings }',
  },
  {
    breaks: 'a disturbance of two things at once',
    changes: [added('{ kind: disturbed, if: bores, by: lift-head, renew: rings }')],
    says: /a component or an operation, and not both/,
    on: '{ kind: disturbed, if: bores, by',
  },
  {
    breaks: 'a way that no offer takes',
    changes: [
      [
        'ways: [grinding, exchange-crankshaft, new-crankshaft]',
        'ways: [grinding, exchange-crankshafts, new-crankshaft]',
      ],
    ],
    says: /no offer is of the way exchange-crankshafts.*write exchange-crankshaft,/,
    on: 'exchange-crankshafts',
  },
  {
    breaks: 'a way that stands twice',
    changes: [
      [
        'ways: [grinding, exchange-crankshaft, new-crankshaft]',
        'ways: [grinding, exchange-crankshaft, new-crankshaft, grinding]',
      ],
    ],
    says: /grinding stands twice in the list/,
    on: 'ways: [grinding, exchange-crankshaft, new-crankshaft, grinding]',
  },
  {
    breaks: 'a way that nothing excludes',
    changes: [
      ['ways: [grinding, exchange-crankshaft, new-crankshaft]', 'ways: [grinding, exchange-crankshaft]'],
    ],
    says: /no coupling excludes the way new-crankshaft/,
    on: 'way: new-crankshaft',
    weight: 'warning',
  },
  {
    breaks: 'a balance within nothing',
    changes: [added('{ kind: balance, of: pistons, most: 0 g }')],
    says: /no two parts have the very same mass/,
    on: 'most: 0 g',
  },
  {
    breaks: 'a balance of one whole',
    changes: [added('{ kind: balance, of: mains, most: 8 g }')],
    says: /main journals of the crankshaft are one whole/,
    on: 'of: mains, most',
  },
  {
    breaks: 'masses offered further apart than the balance allows',
    changes: [
      added('{ kind: balance, of: pumps, most: 8 g }'),
      ["    deposit: '60.00'\n", "    deposit: '60.00'\n    mass: { least: 800 g, greatest: 812 g }\n"],
    ],
    says: /masses offered lie up to 12.0 g apart, and 8.0 g is the most/,
    on: 'mass: { least: 800 g',
  },
  {
    breaks: 'a mass that is a length',
    changes: [added('{ kind: balance, of: pumps, mass: pump-depth, most: 8 g }')],
    says: /a mass is wanted, and depth from the pump pad .* is a length/,
    on: 'mass: pump-depth',
  },
  {
    breaks: 'an operation that is not there',
    changes: [['by: lift-head, renew', 'by: lift-heads, renew']],
    says: /there is no operation lift-heads/,
    on: 'by: lift-heads',
  },
]);
