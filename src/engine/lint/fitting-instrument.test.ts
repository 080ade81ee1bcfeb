/** @module The rule that instruments measure what they are named for, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('asks for instruments that measure what is asked', [
  {
    breaks: 'a diameter that is read with a spring tester',
    changes: [['instrument: outside micrometer', 'instrument: spring tester']],
    says: /is a length, and a spring tester measures a force.*name a outside micrometer, a ball micrometer/,
    on: 'instrument: spring tester',
  },
]);
