/** @module The rule that nothing is hidden before it is proved, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('proves what it hides before it hides it', [
  {
    breaks: 'a characteristic of a hidden place that no hold point asks for',
    changes: [['needs: [bore-diameter, bore-ovality, bore-taper, ', 'needs: [bore-diameter, bore-taper, ']],
    says: /fit-pistons hides bore-ovality, and no hold point before it asks for that/,
    on: 'covers: [bore]',
  },
  {
    breaks: 'a check that comes after the cover',
    changes: [
      ['covers: [gear]', 'covers: [gear, end-float, pump-depth]'],
      ['covers: [big-end, main, thrust, cam]', 'covers: [big-end, main, cam]'],
    ],
    says: /close-timing-case hides pump-depth, and no hold point before it/,
    on: 'covers: [gear, end-float, pump-depth]',
  },
  {
    breaks: 'a name that is neither a place nor a characteristic',
    changes: [['covers: [ring-gap]', 'covers: [ring-gaps]']],
    says: /there is no kind of place or characteristic ring-gaps: write ring-gap/,
    on: 'covers: [ring-gaps]',
  },
]);
