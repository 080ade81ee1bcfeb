/** @module The rule that tightening again has its time and its operation, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

const on = '- after: run-in';

describeRule('says when a joint is tightened again', [
  {
    breaks: 'an operation that does not tighten it',
    changes: [['by: tighten-head-again', 'by: full-load']],
    says: /full-load does not tighten head nuts on their studs/,
    on: 'by: full-load',
  },
  {
    breaks: 'an operation that comes before it is due',
    changes: [
      [
        '    after: [run-in]\n    needs: [inlet-clearance, exhaust-clearance]\n    read-again: true\n    tightens: [head-nuts]',
        '    after: [first-start]\n    needs: [inlet-clearance, exhaust-clearance]\n    read-again: true\n    tightens: [head-nuts]',
      ],
    ],
    says: /tighten-head-again does not come after run-in/,
    on: 'by: tighten-head-again',
  },
  {
    breaks: 'no operation',
    changes: [['        by: tighten-head-again\n', '']],
    says: /nothing says when/,
    on,
  },
  {
    breaks: 'both within the job and after it',
    changes: [['      - after: run-in\n', '      - after: run-in\n        hours: 50 h\n']],
    says: /either within the job or after hours of running/,
    on,
  },
  {
    breaks: 'an operation that is not there',
    changes: [['after: run-in\n        by', 'after: run-inn\n        by']],
    says: /there is no operation run-inn/,
    on: 'after: run-inn',
  },
]);
