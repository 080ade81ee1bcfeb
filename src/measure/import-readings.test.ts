/** @module What a readings file gives, and what it says of bad rows. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { instruments, smallEngine } from '../../test/engines/small-engine.ts';
import type { TableRow } from '../engine/table-row.ts';
import { readingsTemplate, readReadings } from './import-readings.ts';
import { judge } from './judge.ts';
import { entryOrder } from './scheme.ts';
import { layOut } from './sheet.ts';
import { sheetBoxes } from './sheet-box.ts';
import { usualInstrument } from './usual-instrument.ts';

const head = 'place,characteristic,plane,axis,reading,unit,instrument,temperature';
const good = 'main.1,main-journal-diameter,front,vertical,54.980,mm,mic-50-75,21';
const read = (...rows: string[]) => readReadings([head, ...rows].join('\n'), smallEngine, instruments);

describe('a readings file in CSV', () => {
  it('gives readings as typed, named by their line', () => {
    const { readings, troubles } = read('', good);
    expect(troubles).toEqual([]);
    expect(readings).toEqual([
      {
        id: 'row-3',
        cell: { place: 'main.1', characteristic: 'main-journal-diameter', plane: 'front', axis: 'vertical' },
        typed: { text: '54.980', unit: 'mm' },
        instrument: 'mic-50-75',
        temperature: { text: '21', unit: '°C' },
      },
    ]);
  });

  it('takes semicolons with decimal commas, columns in any order, capitals and a byte order mark', () => {
    const text =
      '\ufeffReading;Unit;Place;Characteristic;Plane;Axis;Temperature\r\n54,980;mm;main.1;main-journal-diameter;front;vertical;68 °F\r\n';
    const { readings } = readReadings(text, smallEngine);
    expect(readings[0]).toMatchObject({
      typed: { text: '54,980', unit: 'mm' },
      temperature: { text: '68', unit: '°F' },
    });
  });

  it('takes a unit beside the figure', () => {
    expect(read('thrust.1,end-float,,,0.20 mm,,mic-50-75,').readings[0]?.typed).toEqual({
      text: '0.20',
      unit: 'mm',
    });
  });

  it('passes over rows that have not been read yet', () => {
    expect(read('main.1,main-journal-diameter,front,vertical,,mm,,', good)).toMatchObject({
      readings: [{ id: 'row-3' }],
      troubles: [],
    });
  });

  it.each([
    [
      'main.9,main-journal-diameter,front,vertical,54.98,mm,,',
      'main-journal-diameter is not found at that place',
    ],
    [
      'bore.1,main-journal-diameter,front,vertical,54.98,mm,,',
      'main-journal-diameter is not found at that place',
    ],
    ['main.1,main-jornal-diameter,front,vertical,54.98,mm,,', 'there is no such characteristic'],
    ['main.1,main-clearance,,,0.05,mm,,', 'it is worked out and not read'],
    ['main.1,main-journal-diameter,middle,vertical,54.98,mm,,', 'there is no such plane'],
    ['main.1,main-journal-diameter,front,,54.98,mm,,', 'the axis is missing'],
    ['thrust.1,end-float,front,,0.2,mm,,', 'no plane is asked for there'],
    ['main.1,main-journal-diameter,front,vertical,5 4.98,mm,,', 'cannot be read'],
    ['main.1,main-journal-diameter,front,vertical,54.98,,,', 'the unit is missing'],
    ['main.1,main-journal-diameter,front,vertical,54.98,bar,,', 'length'],
    ['main.1,main-journal-diameter,front,vertical,54.98,mm,,warm', 'number'],
    ['main.1,main-journal-diameter,front,vertical,54,980,mm,mic-50-75,21', 'the row has 9 fields'],
    ['__proto__,constructor,front,vertical,54.98,mm,,', 'there is no such characteristic'],
  ])('leaves out the row %s and says why, with row and remedy', (row, what) => {
    const { readings, troubles } = read(row, good);
    const [trouble, ...more] = troubles.filter(({ weight }) => weight === 'error');
    expect(more).toEqual([]);
    expect(trouble?.row).toBe(2);
    expect(trouble?.what).toContain(what);
    expect(trouble?.remedy).not.toBe('');
    expect(readings.map(({ id }) => id)).toEqual(['row-3']);
  });

  it('names the nearest characteristic', () => {
    expect(read('main.1,main-jornal-diameter,front,vertical,54.98,mm,,').troubles[0]?.remedy).toContain(
      'main-journal-diameter',
    );
  });

  it('says that a cell is read twice, keeps both, and the last counts', () => {
    const file = read(good, good.replace('54.980', '54.900'));
    expect(file.readings).toHaveLength(2);
    expect(file.troubles).toMatchObject([{ row: 2, weight: 'warning' }]);
    const sheet = layOut(smallEngine, file.readings, file.instruments);
    expect(judge(sheet, 'main-journal-diameter', 'main.1').value?.value).toBe(54.9);
  });

  it('takes the usual figures for an instrument that nobody knows, and says so once', () => {
    const rear = good.replace('front', 'rear');
    const { instruments: used, troubles } = readReadings([head, good, rear].join('\n'), smallEngine);
    expect(used).toEqual([usualInstrument('outside micrometer', 'mic-50-75', 54.98)]);
    expect(troubles).toMatchObject([{ row: 2, weight: 'warning', where: 'mic-50-75' }]);
  });

  it.each([
    ['', 'the file is empty'],
    ['place,reading\n', 'the column characteristic is missing'],
    [`${head},place\n`, 'the column place stands twice'],
    ['{ "readings": [', 'the file begins like JSON and is none'],
    ['{ "figures": [] }', 'the file is JSON and holds no readings'],
    ['place\u0000', 'a control character (U+0000) stands in the text'],
    [`${head}\n"main.1`, 'a quote may never be closed'],
  ])('of %j says what it lacks', (text, what) => {
    const { readings, troubles } = readReadings(text, smallEngine);
    expect(readings).toEqual([]);
    expect(troubles[0]?.what).toContain(what);
    expect(troubles[0]?.remedy).not.toBe('');
  });

  it('says that a column is not read', () => {
    const { readings, troubles } = readReadings(`${head},initials\n${good},AB`, smallEngine, instruments);
    expect(readings).toHaveLength(1);
    expect(troubles).toMatchObject([{ row: 1, weight: 'warning' }]);
  });

  it('reads thousands of rows', () => {
    const many = Array.from({ length: 5000 }, () => good);
    expect(readReadings([head, ...many].join('\n'), smallEngine, instruments).readings).toHaveLength(5000);
  });

  it('shows no more troubles than help anybody', () => {
    const bad = Array.from({ length: 5000 }, () => 'x,y,z,,1,mm,,');
    expect(readReadings([head, ...bad].join('\n'), smallEngine).troubles).toHaveLength(100);
  });

  it('never loses an error among warnings', () => {
    const again = Array.from({ length: 500 }, () => good);
    const { troubles } = readReadings([head, ...again, 'x,y,z,,1,mm,,'].join('\n'), smallEngine, instruments);
    expect(troubles.at(-1)).toMatchObject({ row: 502, weight: 'error' });
  });

  it.each([
    ['50 MB of junk', 'x'.repeat(50_000_000)],
    ['brackets two million deep', '['.repeat(2_000_000)],
    ['three million quotes', `${head}\n${'"'.repeat(3_000_000)}`],
    ['a million and a half empty rows', `${head}\n${',\n'.repeat(1_500_000)}`],
    ['twenty thousand bad rows', [head, ...Array.from({ length: 20_000 }, () => 'x,y,z,,1,mm,,')].join('\n')],
  ])(
    'takes little longer over %s than over an honest file',
    (_what, text) => {
      const timed = (file: string) => {
        const start = performance.now();
        expect(readReadings(file, smallEngine, instruments).readings.length).toBeLessThanOrEqual(5000);
        return performance.now() - start;
      };
      const honest = [head, ...Array.from({ length: 5000 }, () => good)].join('\n');
      expect(timed(text)).toBeLessThan(25 * timed(honest));
    },
    60_000,
  );
});

describe('a readings file in JSON', () => {
  const reading = {
    place: 'main.1',
    characteristic: 'main-journal-diameter',
    plane: 'front',
    axis: 'vertical',
    reading: '54.980',
    unit: 'mm',
    instrument: 'mic-own',
  };
  const instrument = {
    name: 'mic-own',
    kind: 'outside micrometer',
    least: '50 mm',
    greatest: '75 mm',
    resolution: '0.001 mm',
    'permissible-error': '0.004 mm',
    repeatability: '0.0015 mm',
    zero: '-0.002 mm',
    turn: '0.5 mm',
  };
  const json = (value: unknown) => readReadings(JSON.stringify(value), smallEngine);

  it('may be a list, or carry its instruments and the sizes found', () => {
    expect(json([{ ...reading, instrument: '' }]).readings).toHaveLength(1);
    const file = json({
      readings: [reading],
      instruments: [instrument],
      'sizes-found': { mains: '0.25', wheels: '1', bores: 'standard' },
    });
    expect(file.instruments).toMatchObject([
      { name: 'mic-own', zero: { text: '-0.002', unit: 'mm' }, turn: { text: '0.5', unit: 'mm' } },
    ]);
    expect([...file.sizesFound]).toEqual([['mains', '0.25']]);
    expect(file.troubles.map(({ what }) => what)).toEqual([
      'there is no such component',
      'there is no such component',
    ]);
  });

  it('keeps the last zeros: a bare number is refused', () => {
    const { readings, troubles } = json([{ ...reading, reading: 54.98 }]);
    expect(readings).toEqual([]);
    expect(troubles[0]).toMatchObject({ row: 1, weight: 'error' });
    expect(troubles[0]?.what).toContain('last zeros');
  });

  it.each([
    [{ readings: [7] }, 1],
    [{ readings: [{ ...reading, extra: 'x' }] }, 1],
    [{ readings: [{ ...reading, place: undefined }] }, 1],
    [{ readings: [], instruments: [{ ...instrument, zero: 'none' }] }, 0],
    [{ readings: [], instruments: [{ name: 'mic-own' }] }, 0],
    [{ readings: [], 'sizes-found': { mains: '0.33' } }, 0],
  ])('says what is wrong in %j', (value, row) => {
    const { readings, troubles } = json(value);
    expect(readings).toEqual([]);
    expect(troubles).toMatchObject([{ row, weight: 'error' }]);
  });
});

describe('the page about readings files', () => {
  const page = readFileSync(new URL('../../docs/readings-file.md', import.meta.url), 'utf8');
  const examples = [...page.matchAll(/(?:^ {4}.*\n)+/gm)].map(([block]) => block.replaceAll(/^ {4}/gm, ''));

  it('shows a table and a JSON file that can be read as they stand', () => {
    expect(examples).toHaveLength(2);
    const [table, json] = examples.map((text) => readReadings(text, smallEngine, instruments));
    expect(table).toMatchObject({ readings: [{ id: 'row-2' }, { id: 'row-3' }], troubles: [] });
    expect(json).toMatchObject({
      readings: [{ id: 'row-1' }],
      instruments: [{ name: 'mic-50-75' }],
      troubles: [],
    });
    expect([...(json?.sizesFound ?? [])]).toEqual([['mains', '0.25']]);
  });
});

describe('the template of a readings file', () => {
  it('has every cell in the order of entry, and comes back as nothing read and nothing wrong', () => {
    const template = readingsTemplate(smallEngine);
    expect(template.split('\n')).toHaveLength(entryOrder(smallEngine).length + 2);
    expect(template).toMatch(/^main\.1,main-journal-diameter,front,vertical,,mm,,,1[A-Y]$/m);
    expect(readReadings(template, smallEngine)).toMatchObject({ readings: [], troubles: [] });
  });
});

describe('readings from the boxes of a printed sheet', () => {
  const boxes = sheetBoxes(smallEngine);
  const [first, second] = boxes;
  const typed = (...rows: string[]) =>
    readReadings(['box,reading', ...rows].join('\n'), smallEngine, instruments);

  it('go to the cells that the boxes stand for, in the unit that the sheet names', () => {
    const all = boxes.map(({ code }, at) => `${code},${at + 1}.5`);
    const { readings, troubles } = typed(...all);
    expect(troubles.filter(({ weight }) => weight === 'error')).toEqual([]);
    expect(readings.map(({ cell }) => cell)).toEqual(entryOrder(smallEngine));
    expect(readings[0]?.typed).toEqual({ text: '1.5', unit: 'mm' });
    expect(typed(`${first?.code},2 9/16 in`).readings[0]?.typed).toEqual({ text: '2 9/16', unit: 'in' });
  });

  it('may be typed small and with a blank', () => {
    expect(typed(` ${first?.code.toLowerCase().replace(/(\d)(\D)/, '$1 $2')} ,54.98`).readings).toHaveLength(
      1,
    );
  });

  it('are told where the letter does not prove the number', () => {
    const letter = second?.code.slice(-1);
    const says = (row: string) => typed(row).troubles[0]?.what;
    expect(says(`1${letter},54.98`)).toBe(`the box with this number is ${first?.code}`);
    expect(says('1,54.98')).toBe('the letter of the box is missing');
    expect(says('9999A,54.98')).toBe('there is no box 9999A');
    expect(says('x,54.98')).toBe('there is no box x');
  });

  it('never have the letter of a neighbour, so that a row typed one or two off shows', () => {
    for (const [at, { code }] of boxes.entries())
      for (const near of boxes.slice(at + 1, at + 3)) expect(near.code.slice(-1)).not.toBe(code.slice(-1));
  });

  it('are told where the row names another place', () => {
    const { troubles } = readReadings(
      `box,place,reading\n${first?.code},main.2,54.98`,
      smallEngine,
      instruments,
    );
    expect(troubles).toMatchObject([{ row: 2, weight: 'error', where: 'place' }]);
  });

  it('of another engine type do not pass for this one', () => {
    const other: typeof smallEngine = {
      ...smallEngine,
      characteristics: new Map([...smallEngine.characteristics].reverse()),
    };
    const codes = new Set(boxes.map(({ code }) => code));
    const passing = sheetBoxes(other).filter(({ code }) => codes.has(code));
    expect(passing.length).toBeLessThan(boxes.length / 5);
  });
});

describe('readings as the rows of a sheet', () => {
  const rows = (...body: readonly Partial<TableRow>[]): readonly TableRow[] => [
    { line: 1, fields: ['place', 'characteristic', 'plane', 'axis', 'reading', 'unit', 'note'] },
    ...body.map((row, at) => ({ line: at + 2, fields: [], ...row })),
  ];
  const cell = ['main.1', 'main-journal-diameter', 'front', 'vertical'];
  const date = { what: 'it holds a date', where: 'cell E2', remedy: 'type it again' };

  it('are read like those of a text', () => {
    const { readings, troubles } = readReadings(
      rows({ fields: [...cell, '54.980', 'mm'] }),
      smallEngine,
      instruments,
    );
    expect(readings[0]?.typed).toEqual({ text: '54.980', unit: 'mm' });
    expect(troubles.filter(({ weight }) => weight === 'error')).toEqual([]);
  });

  it('are told at the cell that is no figure, in the columns that are read alone', () => {
    const read = (column: number) =>
      readReadings(
        rows({ fields: [...cell, column === 4 ? '' : '54.98', 'mm'], wrong: new Map([[column, date]]) }),
        smallEngine,
        instruments,
      );
    expect(read(4).troubles).toMatchObject([{}, { row: 2, weight: 'error', where: 'cell E2' }]);
    expect(read(4).readings).toEqual([]);
    expect(read(6).readings).toHaveLength(1);
  });
});
