/** @module Reading engine types: what comes of a sound file, and what is said of slips. */
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import {
  brambleholt,
  changed,
  lineOf,
  mudlark,
  quillfeather,
  quillfeatherText,
} from '../../test/engines/demo-engines.ts';
import { readEngineType } from './read-engine-type.ts';

const first = (text: string) => readEngineType(text).troubles[0];

describe('an engine type read from its file', () => {
  it('has its places spelled out in order, with titles to read aloud', () => {
    const { places } = quillfeather();
    expect([...places.keys()].slice(0, 5)).toEqual(['main.1', 'main.2', 'main.3', 'main.4', 'thrust.1']);
    expect(places.get('main.2')).toEqual({ id: 'main.2', kind: 'main', number: 2, title: 'main bearing 2' });
    expect(places.get('head.1')?.title).toBe('cylinder head');
  });

  it('has its figures in millimetres, radians, newton metres and hours', () => {
    const engine = quillfeather();
    expect(engine.stroke).toBe(98);
    expect(engine.components.get('mains')?.life).toBe(9000);
    expect(engine.fasteners.get('main-cap-bolts')?.stages).toMatchObject([
      { kind: 'torque', torque: 40 },
      { kind: 'torque', torque: 70 },
      { kind: 'torque', torque: 95, printed: { text: '95', unit: 'N·m' } },
    ]);
    const [, , last] = engine.fasteners.get('big-end-bolts')?.stages ?? [];
    expect(last).toEqual({ kind: 'angle', angle: Math.PI / 3, printed: { text: '60', unit: 'deg' } });
    expect(engine.pumpTiming?.rate).toBeCloseTo((10.5 * Math.PI) / 180, 15);
    expect(mudlark().pinOffset).toBe(0.5);
  });

  it('takes figures in other units, and keeps them as printed', () => {
    const text = changed(
      quillfeatherText,
      ['stroke: 98 mm', 'stroke: 3.858 in'],
      ['tolerance: 0.05 mm', 'tolerance: 2 thou'],
      ['[10 N·m, 20 N·m]', '[7 lbf·ft, 15 lbf·ft]'],
    );
    const { engine } = readEngineType(text);
    expect(engine?.stroke).toBeCloseTo(97.9932, 10);
    expect(engine?.pumpTiming?.tolerance).toBeCloseTo(0.0508, 12);
    // source: 1 lbf·ft = 1.3558179483 N·m by definition of its factors
    const [, last] = engine?.fasteners.get('pump-flange-nuts')?.stages ?? [];
    expect(last).toMatchObject({ kind: 'torque', printed: { text: '15', unit: 'lbf·ft' } });
    expect(last?.kind === 'torque' ? last.torque : 0).toBeCloseTo(20.337269, 5);
  });

  it('has every hole of a joint where it stands: each by itself, on a ring from the top clockwise, in rows', () => {
    const nuts = quillfeather().fasteners.get('head-nuts');
    expect(nuts?.holes?.[4]).toEqual({ name: '5', x: 184, y: -6 });
    const ring = mudlark().fasteners.get('head-nuts');
    expect(ring?.order).toEqual(['1', '3', '2', '4']);
    for (const [at, [x, y]] of (
      [
        [0, -56],
        [56, 0],
        [0, 56],
        [-56, 0],
      ] as const
    ).entries()) {
      expect(ring?.holes?.[at]?.x).toBeCloseTo(x, 10);
      expect(ring?.holes?.[at]?.y).toBeCloseTo(y, 10);
    }
    const rows = brambleholt().fasteners.get('head-bolts')?.holes;
    expect(rows).toHaveLength(26);
    expect([rows?.[12], rows?.[13]]).toEqual([
      { name: '13', x: 816, y: 0 },
      { name: '14', x: 0, y: 156 },
    ]);
  });

  it('tightens again at the last torque unless it says what is pulled then', () => {
    const [within, later] = quillfeather().fasteners.get('head-nuts')?.again ?? [];
    expect(within).toMatchObject({ after: 'run-in', by: 'tighten-head-again', stages: [{ torque: 100 }] });
    expect(later).toMatchObject({ hours: 50, cold: true });
  });

  it('has prices in hundredths exactly', () => {
    const cents = (price: string) =>
      readEngineType(changed(quillfeatherText, ["price: '148.00'", `price: '${price}'`])).engine?.offers[0]
        ?.cents;
    expect([cents('0.29'), cents('1.1'), cents('70.07'), cents('9999999.99'), cents('148')]).toEqual([
      29, 110, 7007, 999_999_999, 14_800,
    ]);
  });

  it('lets a used part go to the wear limit on the side of wear, and to the limit as made on the other', () => {
    const { characteristics, components } = quillfeather();
    expect(characteristics.get('main-journal-diameter')?.limits).toMatchObject({
      new: { least: 54.97, greatest: 54.99 },
      goesBack: { least: 54.93, greatest: 54.99 },
      printed: { 'new.least': { text: '54.970', unit: 'mm' }, 'wear.least': { text: '54.930', unit: 'mm' } },
    });
    expect(characteristics.get('bore-diameter')?.limits?.goesBack).toEqual({ least: 85, greatest: 85.15 });
    expect(characteristics.get('main-journal-ovality')?.limits?.goesBack).toEqual({ greatest: 0.03 });
    expect(components.get('mains')?.sizes?.steps[0]?.limits.goesBack).toEqual({
      least: 54.68,
      greatest: 54.74,
    });
  });

  it('lets a part without wear limits go as far as the limits as made', () => {
    expect(quillfeather().characteristics.get('pump-pack-found')?.limits).toMatchObject({
      new: { least: 0.2, greatest: 1.2 },
      goesBack: { least: 0.2, greatest: 1.2 },
    });
  });

  it('has one cell at least for every characteristic', () => {
    const { characteristics } = quillfeather();
    expect(characteristics.get('end-float')).toMatchObject({ planes: [''], axes: [''] });
    expect(characteristics.get('main-shell-bore')).toMatchObject({ planes: ['front', 'rear'], axes: [''] });
    expect(characteristics.get('main-clearance')?.derived).toEqual({
      kind: 'difference',
      from: { kind: 'greatest', of: 'main-shell-bore' },
      less: { kind: 'least', of: 'main-journal-diameter' },
    });
  });

  it('is the same from JSON as from YAML', () => {
    const json = JSON.stringify(parse(quillfeatherText), null, '\t');
    expect(readEngineType(json).engine).toEqual(quillfeather());
    expect(readEngineType(new TextEncoder().encode(json)).engine).toEqual(quillfeather());
  });
});

describe('a slip in an engine type file', () => {
  it('is told with line and column: a figure without its unit', () => {
    expect(first(changed(quillfeatherText, ['stroke: 98 mm', 'stroke: 98']))).toEqual({
      weight: 'error',
      line: lineOf(quillfeatherText, 'stroke: 98'),
      column: 9,
      what: '98 stands without a unit',
      where: 'stroke',
      remedy: 'say the unit, for example `98 mm`',
    });
  });

  it.each([
    ['life: 9000 h', 'life: 9000', /9000 h/],
    ['rate: 10.5 deg/mm', 'rate: 10.5', /10.5 deg\/mm/],
    ['[40 N·m, 70 N·m, 95 N·m]', '[40 N·m, 70, 95 N·m]', /70 N·m/],
    ['clean-up: 0.05 mm', "clean-up: '0.05'", /write for example 0.05 mm/],
  ])('%s written as %s asks for the unit', (from, to, remedy) => {
    const text = changed(quillfeatherText, [from, to]);
    expect(first(text)).toMatchObject({ remedy, line: lineOf(text, to) });
  });

  it.each([
    ['a unit of another kind', 'rod: 168 mm', 'rod: 168 kg', /kg is a unit of mass, not of length/],
    ['a word that is not known', 'wears: smaller', 'wears: smaler', /'smaler' is not one of the words/],
    ['a key that is not known', 'stroke: 98 mm', 'strok: 98 mm', /stroke is missing/],
    ['a key put twice', 'rod: 168 mm', 'stroke: 98 mm', /stroke stands twice: at line 11 and at line 12/],
    [
      'a price without quotes',
      "price: '148.00'",
      'price: 148.00',
      /148 is read as a number, and text is wanted/,
    ],
    ['a price with a comma', "price: '148.00'", "price: '148,00'", /'148,00' is not written as it must be/],
    ['half a place', 'count: 4,', 'count: 4.5,', /4.5 stands where a whole number belongs/],
    ['no place at all', 'count: 4,', 'count: 0,', /0 is out of range/],
    ['a name with capitals', '  main: {', '  Main: {', /'Main' is not a name/],
    [
      'a list where a word belongs',
      'title: main journal diameter',
      'title: [main]',
      /a list stands where text belongs/,
    ],
    [
      'nothing where text belongs',
      'title: main journal diameter',
      'title:',
      /nothing stands where text belongs/,
    ],
    ['an empty list', 'firing-order: [1, 3, 2]', 'firing-order: []', /list has the wrong length/],
    ['a coupling of no kind', 'kind: same size', 'kind: same sise', /'same sise' is not one of the words/],
    ['half a coupling', '[mains, main-shells]', '[mains]', /the list has the wrong length/],
    ['a sum that is none', '{ range-over-axes: bore', '{ range-over-axis: bore', /cannot be computed/],
    [
      'half a difference',
      '[{ greatest: bore-diameter }, piston-diameter]',
      '[piston-diameter]',
      /wrong length/,
    ],
    ['a thread without a known pitch', 'thread: M12', 'thread: M13', /the coarse pitch of M13 is not known/],
    [
      'a tab for indentation',
      '  main-clearance:',
      '\tmain-clearance:',
      /a tab stands|indentation|cannot be read/,
    ],
    ['an open quote', "on: '2026-03-02'", "on: '2026-03-02", /quote|key/],
    [
      'another kind of file',
      'endfloat engine type 1',
      'engine type',
      /'engine type' is not one of the words/,
    ],
  ])('is said in words: %s', (_, from, to, says) => {
    const { engine, troubles } = readEngineType(changed(quillfeatherText, [from, to]));
    expect(engine).toBeUndefined();
    expect(troubles.map(({ what }) => what).join('\n')).toMatch(says);
    for (const { what, remedy } of troubles)
      expect(`${what} ${remedy}`).not.toMatch(/undefined|NaN|Invalid|expected/);
  });

  it('names the key that was probably meant, at the key', () => {
    const text = changed(quillfeatherText, ['stroke: 98 mm', 'strok: 98 mm']);
    expect(readEngineType(text).troubles).toContainEqual(
      expect.objectContaining({
        what: 'the key strok is not known here',
        remedy: 'write stroke, if that is what is meant',
        line: lineOf(text, 'strok: 98 mm'),
        column: 1,
      }),
    );
  });

  it('names the key that was probably meant in one kind of coupling', () => {
    const text = changed(quillfeatherText, ['if: mains', 'iff: mains']);
    expect(readEngineType(text).troubles.map(({ remedy }) => remedy)).toContain(
      'write if, if that is what is meant',
    );
  });

  it('in a file of another kind is not buried in missing keys', () => {
    expect(readEngineType('name: something else\nversion: 3\n').troubles).toHaveLength(1);
    expect(readEngineType('').troubles).toMatchObject([{ what: 'the file is empty', line: 1, column: 1 }]);
    expect(readEngineType('- a\n- b').troubles).toMatchObject([{ what: 'the file holds no keys' }]);
  });

  it('is found on its line in JSON too', () => {
    const json = JSON.stringify(parse(quillfeatherText), null, '\t').replace('"98 mm"', '98');
    expect(first(json)).toMatchObject({ where: 'stroke', line: lineOf(json, '"stroke"') });
  });
});
