/** @module The sums of an engine type held against those that the program knows: what is wrong is told with its remedy. */
import { describe, expect, it } from 'vitest';
import { engineWithSums } from '../../../test/job/summing.ts';
import { readEngineType } from '../../engine/read-engine-type.ts';
import { readCheckedType } from './checked-engine-type.ts';

const given = '          shaft: { characteristic: main-journal-diameter }\n';
const keeps = 'keeps: { clearance: { least: 0.030 mm, greatest: 0.080 mm } }';

/** The limits with others of a size beside them. */
const sized = (more: string): string => keeps.replace('0.080 mm', `0.080 mm, ${more}`);

const troubles = (from: string, to: string) => {
  const text = engineWithSums.replace(from, to);
  expect(text).not.toBe(engineWithSums);
  return readCheckedType(text)
    .troubles.filter(({ where }) => where.includes('sums'))
    .map(({ where, what, remedy }) => `${where}: ${what}; ${remedy}`);
};

describe('the sums of an engine type', () => {
  it('are left alone where they are right', () => {
    expect(readCheckedType(engineWithSums)).toMatchObject({ engine: { id: 'sparrowbill-2' } });
    expect(readCheckedType(engineWithSums).troubles.filter(({ where }) => where.includes('sums'))).toEqual(
      [],
    );
  });

  it('may hold a result to other limits at another size, and then at every place by itself', () => {
    const own = sized("size-of: mains, sizes: { '0.25': { least: 0.040 mm, greatest: 0.090 mm } }");
    expect(troubles(keeps, own)).toEqual([]);
    const once = engineWithSums
      .replace(keeps, own)
      .replace('        each: true\n', '')
      .replace(`        given:\n${given}`, '');
    const told = readCheckedType(once).troubles.map(({ what, remedy }) => `${what}; ${remedy}`);
    expect(told.join('\n')).toContain(
      'may differ from place to place, and the sum is done once; say each: true',
    );
  });

  it.each([
    ['reckon: clearance', 'reckon: clearence', 'there is no sum clearence; write clearance'],
    [given, `${given}          oil: SAE 30\n`, 'clearance does not take oil'],
    [given, `${given}          bore: 50.03\n`, 'put it in quotes'],
    [given, `${given}          bore: 50.03 bar\n`, 'bar is a unit of pressure, not of length'],
    [given, given.replace('main-journal-diameter', 'main-jornal-diameter'), 'write main-journal-diameter'],
    [given, given.replace('characteristic:', 'instrument:'), 'not one of the words allowed here'],
    [given, given.replace('}', ', place: main.7 }'), 'main-journal-diameter is not found at main.7'],
    [given, given.replace('}', ', is: least }'), 'with characteristic go characteristic, of, place, places'],
    [given, given.replace('}', ', of: torque }'), 'with characteristic go'],
    [given, given.replace('}', ', engine: rod }'), 'where the input comes from'],
    [
      given,
      given.replace('{ characteristic: main-journal-diameter }', '{ fastener: nuts, of: torque }'),
      'there are no fasteners nuts',
    ],
    [
      given,
      given.replace('{ characteristic: main-journal-diameter }', '{ pumps: rate }'),
      'shaft takes a figure of length, and this gives one of angle per length',
    ],
    [
      given,
      given.replace('{ characteristic: main-journal-diameter }', '{ list: main-journal-diameter }'),
      'shaft takes a figure of length, and this gives words or a list',
    ],
    [
      given,
      given.replace('{ characteristic: main-journal-diameter }', '{ sum: preload, result: least }'),
      'no sum preload stands before this one',
    ],
    [given, `${given}          shared: { shared-by: [bore, shaft] }\n`, 'bore is not taken from readings'],
    ['        each: true\n', '', 'it is not said at which of 2 places main-journal-diameter is taken'],
    ['        each: true\n', '        each: true\n        at: piston\n', 'there is no kind of place piston'],
    [keeps, keeps.replace('clearance: {', 'clearence: {'), 'clearance gives no clearence; write clearance'],
    [
      keeps,
      keeps.replaceAll(' mm', ' deg'),
      'it comes in mm, and the limit is a figure of angle; give the limit in mm',
    ],
    [keeps, keeps.replace('0.080', '0.020'), 'the least is more than the greatest'],
    [keeps, keeps.replace('0.080 mm', '0.080 mn'), '0.080 mn'],
    [
      keeps,
      keeps.replace('least: 0.030 mm, greatest: 0.080 mm', 'is: [within]'),
      'it is a figure; give least, greatest or both',
    ],
    [keeps, keeps.replace('least: 0.030 mm, greatest: 0.080 mm', ''), 'it has no limit'],
    [
      keeps,
      sized("size-of: manes, sizes: { '0.25': { least: 0.04 mm } }"),
      'there is no component manes; write mains',
    ],
    [keeps, sized("size-of: pumps, sizes: { '0.25': { least: 0.04 mm } }"), 'have no sizes'],
    [keeps, sized("size-of: mains, sizes: { '0.52': { least: 0.04 mm } }"), 'have no size 0.52; write 0.25'],
    [
      keeps,
      sized('size-of: mains, sizes: { standard: { least: 0.04 mm } }'),
      'give those of standard beside it',
    ],
    [
      keeps,
      sized('size-of: mains, sizes: {}'),
      'size 0.25 has no limits here; give those of 0.25 from the manual',
    ],
    [keeps, sized('size-of: mains'), 'no other size has limits; give them under sizes'],
    [
      keeps,
      sized("sizes: { '0.25': { least: 0.04 mm } }"),
      'of what they are the sizes; name it under size-of',
    ],
    [
      keeps,
      sized("size-of: mains, sizes: { '0.25': { least: 0.04 bar } }"),
      'the limit is a figure of pressure',
    ],
    [keeps, sized("size-of: mains, sizes: { '0.25': {} }"), 'it has no limit'],
    [
      keeps,
      sized("size-of: mains, sizes: { '0.25': { least: 0.09 mm, greatest: 0.04 mm } }"),
      'the least is more than the greatest',
    ],
    [
      keeps,
      keeps.replace(
        'least: 0.030 mm, greatest: 0.080 mm',
        "is: [within], size-of: mains, sizes: { '0.25': { least: 0.04 mm } }",
      ),
      'words do not differ by size',
    ],
    ['torque: 80 N·m', 'torque: { sum: clearance, result: clearance }', 'and this gives one of length'],
    ['torque: 80 N·m', 'torque: { sum: clearance, result: clearence }', 'clearance gives no clearence'],
    ['torque: 80 N·m', 'torque: { sum: clearance, input: bor }', 'clearance takes no bor; write bore'],
    ['torque: 80 N·m', 'torque: { sum: clearance }', 'with sum go sum, result, input'],
    ["class: '8.8'", "class: '8.7'", 'write one of 8.8, 10.9, 12.9'],
  ])('case %#: %j for %j', (from, to, says) => {
    const found = troubles(from, to);
    expect(found.join('\n')).toContain(says);
    expect(found[0]).toMatch(/operations.*sums/);
  });

  it('that this program does not know leave a job’s engine readable', () => {
    const { engine } = readEngineType(engineWithSums.replace('reckon: clearance', 'reckon: to-come'));
    expect(engine?.operations.get('lay-crankshaft')?.sums.map(({ reckon }) => reckon)).toEqual([
      'to-come',
      'preload',
    ]);
  });
});
