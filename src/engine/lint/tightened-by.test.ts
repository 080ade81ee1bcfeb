/** @module The rule that every fastener is tightened by an operation, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('tightens every fastener by an operation', [
  {
    breaks: 'a fastener that nothing tightens',
    changes: [['    tightens: [main-cap-bolts]\n', '']],
    says: /no operation tightens main cap bolts/,
    on: 'title: main cap bolts',
    weight: 'warning',
  },
  {
    breaks: 'one that is only ever tightened again',
    changes: [['    covers: [valve]\n    tightens: [head-nuts]\n', '    covers: [valve]\n']],
    says: /no operation tightens head nuts on their studs/,
    on: 'title: head nuts on their studs',
    weight: 'warning',
  },
  {
    breaks: 'a fastener that is not there',
    changes: [['tightens: [main-cap-bolts]', 'tightens: [main-cap-bolt]']],
    says: /there is no fastener main-cap-bolt: .*main-cap-bolts/,
    on: 'tightens: [main-cap-bolt]',
  },
]);
