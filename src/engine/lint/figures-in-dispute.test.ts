/** @module The rule that two people agree on the figures, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const checked = "checked: { by: Perpetua Sallow, on: '2026-03-02' }";

describeRule('wants two people of one mind', [
  {
    breaks: 'a figure that the second person read otherwise',
    changes: [
      [
        checked,
        "differs:\n  - { at: pump-timing/datum, reads: 83.50 mm, by: Perpetua Sallow, on: '2026-03-02' }",
      ],
    ],
    says: /Perpetua Sallow read 83.50 mm here in the manual/,
    on: 'datum: 83.00 mm',
    weight: 'warning',
  },
  {
    breaks: 'one person who typed in and checked',
    changes: [[checked, `entered: { by: '  perpetua sallow', on: '2026-03-01' }\n${checked}`]],
    says: /Perpetua Sallow typed the figures in and checked them too/,
    on: checked,
    weight: 'warning',
  },
]);
