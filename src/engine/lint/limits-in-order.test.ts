/** @module The rule that an engine type has its limits in order, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const journal = 'limits: { new: { least: 54.970 mm, greatest: 54.990 mm }, wear: { least: 54.930 mm } }';

describeRule('has its limits in order', [
  {
    breaks: 'a least limit above the greatest',
    changes: [[journal, journal.replace('least: 54.970', 'least: 54.997')]],
    says: /cross: least 54.997 mm, greatest 54.99 mm/,
    on: 'least: 54.997',
  },
]);
