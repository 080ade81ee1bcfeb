/** @module The rule that an engine type can be worked in its order, broken by the least change. */
import { describeRule } from '../../../test/engines/breach.ts';

describeRule('can be worked in its order', [
  {
    breaks: 'operations in a circle',
    changes: [['phase: strip\n    after: [isolate-and-drain]', 'phase: strip\n    after: [lift-head]']],
    says: /circle: .*lift-onto-stand after .*lift-head.*mark-parts after lift-onto-stand|circle: lift-onto-stand after lift-head/,
    on: 'after: [lift-head]',
  },
  {
    breaks: 'strip after build',
    changes: [
      [
        '    phase: strip\n    after: [lift-crankshaft, draw-camshaft, strip-valves]',
        '    phase: strip\n    after: [lift-crankshaft, draw-camshaft, fit-sump-plug]',
      ],
      [
        '  close-galleries:\n',
        '  fit-sump-plug: { title: Fit the sump plug, phase: build }\n  close-galleries:\n',
      ],
    ],
    says: /wash-block \(strip\) is to come after fit-sump-plug \(build\)/,
    on: 'after: [lift-crankshaft, draw-camshaft, fit-sump-plug]',
  },
]);
