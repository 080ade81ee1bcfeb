/** @module The rule that a ring gap is read in a bore, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('links ring gaps to bores alone', [
  {
    breaks: 'a ring gap in a journal',
    changes: [['in-bore: bore-diameter', 'in-bore: main-journal-diameter']],
    says: /does not wear larger, as bores do/,
    on: 'in-bore: main-journal-diameter',
  },
  {
    breaks: 'a ring gap in what is worked out',
    changes: [['in-bore: bore-diameter', 'in-bore: bore-taper']],
    says: /is no measured length/,
    on: 'in-bore: bore-taper',
  },
  {
    breaks: 'a ring gap in bores that are more than the pistons',
    changes: [['in-bore: bore-diameter', 'in-bore: main-shell-bore']],
    says: /is read at 3 places, .* at 4/,
    on: 'in-bore: main-shell-bore',
  },
]);
