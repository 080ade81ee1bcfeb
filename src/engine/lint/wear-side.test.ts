/** @module The rule that an engine type has wear limits on the side of wear, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const journal = 'limits: { new: { least: 54.970 mm, greatest: 54.990 mm }, wear: { least: 54.930 mm } }';

describeRule('has wear limits on the side of wear', [
  {
    breaks: 'a wear limit inside the limits as made',
    changes: [[journal, journal.replace('54.930', '54.980')]],
    says: /wear limit of main journal diameter, 54.98 mm, would throw out a new part/,
    on: 'wear: { least: 54.980',
  },
  {
    breaks: 'a wear limit on the side to which it does not wear',
    changes: [[journal, journal.replace('wear: { least: 54.930', 'wear: { greatest: 55.030')]],
    says: /main journal diameter wears smaller, yet a greatest wear limit is given/,
    on: 'wear: { greatest: 55.030',
  },
]);
