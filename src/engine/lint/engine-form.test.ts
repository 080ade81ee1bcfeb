/** @module The rule that an engine type describes one engine that can turn, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('describes one engine that can turn', [
  {
    breaks: 'a rod that cannot turn',
    changes: [['rod: 168 mm', 'rod: 48 mm']],
    says: /a rod of 48 mm cannot turn.*longer than 49 mm/,
    on: 'rod: 48 mm',
  },
  {
    breaks: 'a firing order that leaves a cylinder out',
    changes: [['[1, 3, 2]', '[1, 3, 3]']],
    says: /1, 3, 3 does not name each of 3 cylinders once/,
    on: '[1, 3, 3]',
  },
  {
    breaks: 'places that cannot be shared among the cylinders',
    changes: [['title: injector, count: 3', 'title: injector, count: 4']],
    says: /4 places \(injector\) cannot be shared among 3 cylinders/,
    on: 'title: injector, count: 4',
  },
  {
    breaks: 'more bearings than the crankshaft can have',
    changes: [['title: main bearing, count: 4', 'title: main bearing, count: 5']],
    says: /5 bearings \(main bearing\) for 3 crank throws/,
    on: 'title: main bearing, count: 5',
  },
  {
    breaks: 'fewer bearings than is usual',
    changes: [['title: main bearing, count: 4', 'title: main bearing, count: 2']],
    says: /2 bearings \(main bearing\) for 3 crank throws/,
    on: 'title: main bearing, count: 2',
    weight: 'warning',
  },

  {
    breaks: 'a stroke of nothing',
    changes: [['stroke: 98 mm', 'stroke: 0 mm']],
    says: /the stroke is not above zero/,
    on: 'stroke: 0 mm',
  },
  {
    breaks: 'as many bearings in a vee as in a row',
    changes: [['layout: in line', 'layout: vee']],
    says: /4 bearings \(main bearing\) for 2 crank throws/,
    on: 'title: main bearing, count: 4',
  },
]);
