/** @module The rule that an engine type judges a component at its own places, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('judges a component at its own places', [
  {
    breaks: 'a component judged at other places than its own',
    changes: [
      ['judged-by: [piston-diameter, piston-clearance]', 'judged-by: [piston-diameter, main-clearance]'],
    ],
    says: /pistons sit at 3 places, main bearing clearance is taken at 4/,
    on: 'judged-by: [piston-diameter, main-clearance]',
  },
  {
    breaks: 'a follower at other places, piece by piece',
    changes: [['components: [bores, pistons]', 'components: [valves, pistons]']],
    says: /valves sit at 6 places, pistons at 3/,
    on: 'components: [valves, pistons]',
  },
]);
