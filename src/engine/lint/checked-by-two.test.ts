/** @module The rule that an engine type is checked by a second person, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('is checked by a second person', [
  {
    breaks: 'figures that nobody has checked',
    changes: [["checked: { by: Perpetua Sallow, on: '2026-03-02' }\n", '']],
    says: /nobody has checked these figures/,
    on: 'format: endfloat engine type 1',
    weight: 'warning',
  },
]);
