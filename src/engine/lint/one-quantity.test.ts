/** @module The rule that forces and lengths are not mixed, broken by the least change. */
import { describe, expect, it } from 'vitest';
import { describeRule } from '../../../test/engines/breach.ts';
import { brambleholtText, changed, quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { readEngineType } from '../read-engine-type.ts';

const pistonAsForce: readonly (readonly [string, string])[] = [
  [
    'title: piston diameter at the skirt, 12 mm up and square to the pin\n    at: piston',
    'title: piston diameter at the skirt, 12 mm up and square to the pin\n    at: piston\n    quantity: force',
  ],
];

describeRule('keeps forces and lengths apart', [
  {
    breaks: 'a force taken from a length',
    changes: [
      ...pistonAsForce,
      ['{ new: { least: 84.915 mm, greatest: 84.935 mm }', '{ new: { least: 84.915 N, greatest: 84.935 N }'],
      ['wear: { least: 84.860 mm }', 'wear: { least: 84.860 N }'],
    ],
    says: /is a length and piston diameter .* a force/,
    on: '[{ greatest: bore-diameter }, piston-diameter]',
  },
  {
    breaks: 'a sum of lengths that is said to be a force',
    changes: [
      ['title: bore taper\n    at: bore', 'title: bore taper\n    at: bore\n    quantity: force'],
      ['limits: { new: { greatest: 0.012 mm }, wear: { greatest: 0.100 mm } }', ''],
    ],
    says: /bore taper is computed from .*, a length, and is said to be a force.*delete its `quantity`/,
    on: '{ range-over-planes: bore-diameter }',
  },
]);

describe('a figure of the wrong kind', () => {
  it('that stands without its unit is shown with one of its own kind', () => {
    const { troubles } = readEngineType(changed(brambleholtText, ['least: 236 N', 'least: 236']));
    expect(troubles[0]).toMatchObject({ remedy: 'say the unit, for example `236 N`' });
  });

  it('is refused with the right units named', () => {
    const { troubles } = readEngineType(changed(quillfeatherText, ...pistonAsForce));
    expect(troubles.map(({ what, remedy }) => `${what}: ${remedy}`).join('\n')).toMatch(
      /mm is a unit of length, not of force: give it in N, kN, lbf, kgf/,
    );
  });
});
