/** @module The rule that a figure printed in two units is the same in both, broken by the least change. */
import { describe, expect, it } from 'vitest';
import { describeRule } from '../../../test/engines/breach.ts';
import { quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { readEngineType } from '../read-engine-type.ts';

const washer = 'least: 0.10 mm, greatest: 0.25 mm }, wear: { greatest: 0.40 mm }';

describeRule('holds both figures of a pair against each other', [
  {
    // source: TM 9-6115-604-34 prints 0.089 mm beside 0.0025 in
    breaks: 'a pair as a manual printed it',
    changes: [[washer, 'least: 0.0025 in (0.089 mm), greatest: 0.0100 in }, wear: { greatest: 0.0160 in }']],
    says: /0.0025 in is 0.064 mm, and 0.089 mm stands beside it, which is 0.0035 in/,
    on: '0.0025 in (0.089 mm)',
    weight: 'warning',
  },
  {
    breaks: 'a torque whose pounds are another',
    changes: [['stages: [40 N·m, 70 N·m, 95 N·m]', 'stages: [40 N·m, 70 N·m, 95 N·m (85 lbf·ft)]']],
    says: /95 N·m is 70 lbf·ft, and 85 lbf·ft stands beside it, which is 115 N·m/,
    on: '95 N·m (85 lbf·ft)',
    weight: 'warning',
  },
  {
    breaks: 'the same unit twice',
    changes: [[washer, washer.replace('0.25 mm', '0.25 mm (0.25 mm)')]],
    says: /the figure in brackets is in mm too/,
    on: '0.25 mm (0.25 mm)',
    weight: 'warning',
  },
  {
    breaks: 'brackets without a figure',
    changes: [[washer, washer.replace('0.25 mm', '0.25 mm (see table)')]],
    says: /'see table': it cannot be read as a number/,
    on: '0.25 mm (see table)',
  },
]);

describe('a pair that agrees', () => {
  it('is kept whole and reckoned by its first figure', () => {
    const { engine, troubles } = readEngineType(
      quillfeatherText.replace('least: 54.970 mm', 'least: 54.970 mm (2.1642 in)'),
    );
    expect(troubles).toEqual([]);
    expect(engine?.printedPairs).toMatchObject([
      { figure: { text: '54.970', unit: 'mm' }, also: { text: '2.1642', unit: 'in' } },
    ]);
    const limits = engine?.characteristics.get('main-journal-diameter')?.limits;
    expect(limits?.new.least).toBe(54.97);
    expect(limits?.printed['new.least']).toEqual({ text: '54.970', unit: 'mm' });
  });
});
