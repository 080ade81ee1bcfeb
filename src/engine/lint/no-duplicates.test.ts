/** @module The rule that an engine type says nothing twice, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('says nothing twice', [
  {
    breaks: 'two kinds of place under one title',
    changes: [['big-end: { title: big end,', 'big-end: { title: main bearing,']],
    says: /two kinds of place are called main bearing/,
    on: 'big-end: { title: main bearing,',
  },
  {
    breaks: 'a plane that is listed twice',
    changes: [['planes: [top, middle, bottom]', 'planes: [top, middle, top]']],
    says: /top stands twice/,
    on: '[top, middle, top]',
  },
  {
    breaks: 'one offer twice',
    changes: [
      ["price: '104.00', per: set, days: 9", "price: '104.00', per: set, days: 8"],
      ['Oddy & Thrale Bearings', 'Tump Lane Engine Parts'],
    ],
    says: /the same offer stands twice: main-shells, replace, 0.25/,
    on: "price: '104.00', per: set, days: 8",
  },
  {
    breaks: 'a step called as the size as made',
    changes: [
      [
        "- name: '0.25'\n          limits: { new: { least: 54.720",
        '- name: standard\n          limits: { new: { least: 54.720',
      ],
    ],
    says: /the size standard is there already/,
    on: '- name: standard',
  },

  {
    breaks: 'two characteristics under one title',
    changes: [['title: bore taper', 'title: bore ovality']],
    says: /two characteristics are called bore ovality/,
    on: 'title: bore ovality\n    at: bore\n    derived: { range-over-planes',
  },
  {
    breaks: 'one coupling twice',
    changes: [['components: [bores, rings]', 'components: [bores, pistons]']],
    says: /the same coupling stands twice: bores and pistons/,
    on: 'components: [bores, pistons] }\n  - { kind: disturbed',
    weight: 'warning',
  },
]);
