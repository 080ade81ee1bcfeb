/** @module The rule that rate, sign and place of the shims agree, broken by the least change. */
import { describe, expect, it } from 'vitest';
import { describeRule } from '../../../test/engines/breach.ts';
import { changed, mudlark, mudlarkText, quillfeatherText } from '../../../test/engines/demo-engines.ts';
import { toDegrees } from '../../quantity/brand.ts';
import { readEngineType } from '../read-engine-type.ts';

// source: by hand; a straight flank, base 17 mm and roller 8 mm: 25 sin 22° / cos² 22° = 10.894 mm a radian of cam,
// half of it a radian of crank on a four-stroke: 10.519 degrees of crank a millimetre; read off the table, 0.1 % less
describeRule('has a rate, a sign and a place of its shims that agree', [
  {
    breaks: 'a rate that the cam contradicts',
    changes: [['rate: 10.5 deg/mm', 'rate: 8 deg/mm']],
    says: /a rate of 8\.00 deg\/mm is given, and the cam comes to 10\.51 deg\/mm, one degree of the camshaft counted as two of the crank/,
    on: 'rate: 8 deg/mm',
  },
  {
    breaks: 'a rate in degrees of the camshaft',
    changes: [['rate: 10.5 deg/mm', 'rate: 5.26 deg/mm']],
    says: /the two differ twofold: look whether rate and angles are of the crank/,
    on: 'rate: 5.26 deg/mm',
  },
  {
    breaks: 'shims under the flange that advance',
    changes: [['adding-shims: retards', 'adding-shims: advances']],
    says: /said to advance the pump, and they sit under the pump flange: shims there lift the pump away .* second spill/,
    on: 'adding-shims: advances',
    weight: 'warning',
  },
  {
    breaks: 'a button whose pack is counted as one under the flange',
    changes: [
      ['shims-sit: under the pump flange', 'shims-sit: under the tappet button'],
      ['adding-shims: retards', 'adding-shims: advances'],
    ],
    says: /not said how the pack follows from the depth.*pack-is: depth less datum/,
    on: 'shims-sit: under the tappet button',
    weight: 'warning',
  },
  {
    breaks: 'a timing point beyond the table',
    changes: [['timing-point: 22 deg', 'timing-point: 44 deg']],
    says: /the timing point lies beyond the table of lifts/,
    on: 'angles-of: camshaft at half crank speed',
  },
  {
    breaks: 'no sign of the shims',
    changes: [['  adding-shims: retards\n', '']],
    says: /not said whether a thicker pack makes the pump later or earlier: .*manual's page on pump timing/,
    on: 'pump-timing:',
  },
  {
    breaks: 'no place of the shims',
    changes: [['  shims-sit: under the pump flange\n', '']],
    says: /not said where the shims sit: .*section drawing/,
    on: 'pump-timing:',
  },
  {
    breaks: 'angles of nobody knows what',
    changes: [['    angles-of: camshaft at half crank speed\n', '']],
    says: /not said what the cam's angles are degrees of/,
    on: '  cam:\n',
  },
]);

describe('the rate of shims', () => {
  it('is asked for where neither a rate nor a cam is given', () => {
    const text = quillfeatherText
      .replace('  rate: 10.5 deg/mm\n', '')
      .replace(/ {2}cam:\n {4}angles-of[^\n]*\n {4}timing-point[^\n]*\n {4}lift-table[^\n]*\n/, '');
    const { engine, troubles } = readEngineType(text);
    expect(engine).toBeUndefined();
    expect(troubles.map(({ what, remedy }) => `${what}: ${remedy}`).join()).toMatch(
      /how many degrees of crank a millimetre of shim comes to: give `rate`.* or `cam`/,
    );
  });

  it('follows from the flank where no figure is given', () => {
    // source: by hand; (48 − 14) sin 16° = 9.3717 mm a radian of cam, 4.6858 of crank: 12.2274 degrees a millimetre
    expect(toDegrees(mudlark().pumpTiming?.rate ?? (0 as never))).toBeCloseTo(12.2274, 3);
  });

  it.each([
    [
      'radius: 48 mm, tappet: flat',
      'radius: straight, tappet: flat',
      /flat tappet cannot follow a straight flank/,
    ],
    ['radius: 48 mm, tappet: flat', 'radius: 12 mm, tappet: flat', /no rounder than the base circle/],
    ['base-radius: 14 mm', 'base-radius: 0 mm', /radius of the cam is not above zero/],
    ['timing-point: 16 deg', 'timing-point: 95 deg', /does not lie on the flank/],
    [
      '    flank: { base-radius: 14 mm, radius: 48 mm, tappet: flat }\n',
      '',
      /neither a table of lifts nor a flank/,
    ],
  ])('cannot follow from a cam with %s turned into “%s”', (from, to, says) => {
    const { engine, troubles } = readEngineType(changed(mudlarkText, [from, to]));
    expect(engine).toBeUndefined();
    expect(troubles.map(({ what }) => what).join()).toMatch(says);
  });
});
