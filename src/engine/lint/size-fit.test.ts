/** @module The rule that an engine type has sizes that fit their shells, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const shell = 'new: { least: 54.780 mm, greatest: 54.810 mm }';

describeRule('has sizes that fit their shells', [
  {
    breaks: 'a step without shells on offer',
    changes: [
      [
        "  - { component: big-end-shells, does: replace, size: '0.50', supplier: Tump Lane Engine Parts, price: '89.00', per: set, days: 7 }\n",
        '',
      ],
    ],
    says: /big end journals of the crankshaft can go to 0.50, and nobody offers big end shells in 0.50/,
    on: 'components: [big-ends, big-end-shells]',
  },
  {
    breaks: 'a step that the shells do not have',
    changes: [
      [
        "- name: '0.50'\n          limits: { new: { least: 54.470",
        "- name: '0.75'\n          limits: { new: { least: 54.470",
      ],
    ],
    says: /main journals of the crankshaft can go to 0.75, and main bearing shells have no such size/,
    on: 'components: [mains, main-shells]',
  },
  {
    breaks: 'shells that do not fit the journal of their size',
    changes: [[shell, 'new: { least: 54.830 mm, greatest: 54.860 mm }']],
    says: /new in 0.25, main bearing clearance would be 0.09 mm to 0.14 mm, and 0.04 mm to 0.09 mm is asked for/,
    on: 'components: [mains, main-shells]',
  },
]);
