/** @module The rule that an engine type can prove its hold points, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('can prove its hold points', [
  {
    breaks: 'proof without limits',
    changes: [['    limits: { new: { least: 81.80 mm, greatest: 82.80 mm } }\n', '']],
    says: /hold point 'Fit each pump on its shim pack' asks for depth from the pump pad/,
    on: 'needs: [pump-depth]',
    weight: 'warning',
  },
  {
    breaks: 'reading again of nothing',
    changes: [
      ['    needs: [inlet-clearance, exhaust-clearance]\n    read-again: true\n', '    read-again: true\n'],
    ],
    says: /reads again, and names nothing that it needs/,
    on: 'read-again: true',
  },
]);
