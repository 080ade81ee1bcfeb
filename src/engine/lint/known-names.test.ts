/** @module The rule that an engine type names what it defines, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('names what it defines', [
  {
    breaks: 'a place that is not there',
    changes: [['title: main journal diameter\n    at: main', 'title: main journal diameter\n    at: mian']],
    says: /no kind of place mian.*write main/,
    on: 'at: mian',
  },
  {
    breaks: 'a characteristic that a hold point asks for',
    changes: [['needs: [ring-gap]', 'needs: [ring-gaps]']],
    says: /no characteristic ring-gaps.*write ring-gap/,
    on: 'needs: [ring-gaps]',
  },
  {
    breaks: 'a characteristic that another is computed from',
    changes: [['{ range-over-axes: bore-diameter }', '{ range-over-axes: bore-width }']],
    says: /no characteristic bore-width/,
    on: '{ range-over-axes: bore-width }',
  },
  {
    breaks: 'a component that an offer is for',
    changes: [['component: head-gasket, does', 'component: head-gaskett, does']],
    says: /no component head-gaskett.*write head-gasket/,
    on: 'component: head-gaskett',
  },
  {
    breaks: 'a size that an offer is for',
    changes: [
      ["component: rings, does: replace, size: '0.25'", "component: rings, does: replace, size: '0.75'"],
    ],
    says: /rings has no size 0.75.*standard, 0.25, 0.50, 1.00/,
    on: "size: '0.75'",
  },
  {
    breaks: 'an operation that is waited for',
    changes: [['after: [lift-onto-stand]', 'after: [lift-on-stand]']],
    says: /no operation lift-on-stand.*write lift-onto-stand/,
    on: '[lift-on-stand]',
  },
]);
