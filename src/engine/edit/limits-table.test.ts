/** @module Tables of limits: columns matched by their words, rows to edits, bad rows told and nothing changed in silence. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { quillfeather, quillfeatherText } from '../../../test/engines/demo-engines.ts';
import type { TableRow } from '../table-row.ts';
import { editEngine } from './edit-engine.ts';
import { limitColumns, matchColumns } from './limit-columns.ts';
import { readLimitsTable } from './limits-table.ts';

const engine = quillfeather();

const table = (...rows: readonly string[]): readonly TableRow[] =>
  rows.map((row, at) => ({ line: at + 1, fields: row.split('|') }));

const head = 'Characteristic|Step|New min|New max|Wear limit|Unit|Page|Place|Wears';
const read = (...rows: readonly string[]) => readLimitsTable(table(head, ...rows), engine);

const setBy = (...rows: readonly string[]) => {
  const { edits, troubles } = read(...rows);
  expect(troubles).toEqual([]);
  const edited = editEngine(quillfeatherText, edits);
  if (edited.kind === 'refused') throw new Error(edited.refusal.what);
  return edited.value;
};

describe('the headers of a table of limits', () => {
  it.each([
    [
      'Item;Min (new);Max (new);Service limit;Units;Manual page',
      ['characteristic', 'new.least', 'new.greatest', 'wear', 'unit', 'source'],
    ],
    [
      'Name;as made, at least;as made, at most;may go back, at least;may go back, at most',
      ['characteristic', 'new.least', 'new.greatest', 'wear.least', 'wear.greatest'],
    ],
    [
      'part;Description;Undersize;wear min;wear max;which way it wears',
      ['place', 'characteristic', 'step', 'wear.least', 'wear.greatest', 'wears'],
    ],
    ['x;y', []],
  ])('%s are matched by their words', (headers, meant) => {
    const match = matchColumns(headers.split(';'));
    expect(
      Object.entries(match)
        .sort(([, a], [, b]) => a - b)
        .map(([column]) => column),
    ).toEqual(meant);
  });

  it('may be matched by hand', () => {
    const rows = table('x|y|z', 'end-float|0.42|mm');
    expect(readLimitsTable(rows, engine).troubles.map(({ what }) => what)).toEqual([
      'no column names the characteristic',
      'no column gives a limit',
    ]);
    expect(readLimitsTable(rows, engine, { characteristic: 0, wear: 1, unit: 2 })).toMatchObject({
      troubles: [],
      edits: [{ kind: 'set limit', side: 'wear.greatest', figure: '0.42 mm' }],
    });
  });
});

describe('the page about engine types', () => {
  it('shows a table that can be taken as it stands', () => {
    const page = readFileSync(new URL('../../../docs/engine-types.md', import.meta.url), 'utf8');
    const shown = [...page.matchAll(/^ {4}(.*;.*)$/gm)].map(([, line]) => (line ?? '').replaceAll(';', '|'));
    expect(readLimitsTable(table(...shown), engine)).toMatchObject({
      rows: 1,
      troubles: [],
      edits: { length: 4 },
    });
    for (const column of limitColumns) expect(page).toContain(column);
  });
});

describe('a row of limits', () => {
  it('sets what it gives, leaves what it does not, and keeps figures as they stand', () => {
    const { text, engine: now } = setBy(
      'crankshaft END float||0.12|.26 mm|0.0170 in (0.43 mm)|mm|sheet 12||',
    );
    expect(text).toContain(
      'limits: { new: { least: 0.12 mm, greatest: .26 mm }, wear: { greatest: 0.0170 in (0.43 mm) } }'.replace(
        'greatest: .26 mm',
        "greatest: '.26 mm'",
      ),
    );
    expect(now?.characteristics.get('end-float')?.source).toBe('sheet 12');
    const { engine: less } = setBy('end-float||||0.44|mm|||');
    expect(less?.characteristics.get('end-float')?.limits).toMatchObject({
      new: { least: 0.1, greatest: 0.25 },
      goesBack: { greatest: 0.44 },
    });
  });

  it('takes a comma, and fractions of an inch', () => {
    expect(setBy('end-float||0,12|1/64|1/32|in||').text).toContain("least: '0,12 in'");
    expect(setBy('end-float||0,12|1/64|1/32|in||').text).toContain('greatest: 1/64 in');
  });

  it('puts the wear limit on the side to which it wears', () => {
    const sides = read('main-journal-diameter||||54.92|mm|||', 'end-float||||0.42|mm|||').edits;
    expect(sides).toMatchObject([{ side: 'wear.least' }, { side: 'wear.greatest' }]);
  });

  it('sets the limits of a rework step', () => {
    expect(read('main journal diameter|0.25|54.715|54.735|54.675|mm|||').edits).toMatchObject([
      { of: { component: 'mains', step: '0.25' }, side: 'new.least', figure: '54.715 mm' },
      { of: { component: 'mains', step: '0.25' }, side: 'new.greatest' },
      { of: { component: 'mains', step: '0.25' }, side: 'wear.least' },
    ]);
  });

  it('puts in a characteristic that is not there, where it says enough of it', () => {
    const { engine: now } = setBy('Rocker shaft diameter||17.97|18.00|17.92|mm|sheet 9|head|smaller');
    expect(now?.characteristics.get('rocker-shaft-diameter')).toMatchObject({
      title: 'Rocker shaft diameter',
      at: 'head',
      source: 'sheet 9',
      limits: { goesBack: { least: 17.92 } },
    });
  });

  it.each([
    ['||0.1|0.2||mm|||', 'the characteristic is missing'],
    ['end-flote||0.1|0.2||mm|||', 'there is no such characteristic'],
    ['end-flote||0.1|0.2||mm||shed|larger', 'there is no such kind of place'],
    ['end-flote||0.1|0.2||mm||head|up', 'which way a new characteristic wears is not said'],
    ['end-float||||||||', 'the row gives no figure'],
    ['end-float||0.1|0.2||||', "'0.1': the unit is missing: a length is asked for"],
    ['end-float||0.1|0.2||bar|||', "'0.1': bar is a unit of pressure, not of length"],
    ['end-float||-|0.2||mm|||', "'-': a sign without a number"],
    ['end-float||NaN|0.2||mm|||', "'NaN': it is no number"],
    ['end-float||1e30|0.2||mm|||', "'1e30': it is far too large for anything on a bench"],
    ['end-float||1,234.5|0.2||mm|||', "'1,234.5': it can be read in two ways"],
    ['end-float|0.25|0.1|0.2||mm|||', 'end-float has no rework steps'],
    ['main-journal-diameter|0.3|54|55||mm|||', 'main-journal-diameter has no such step'],
    ['main-journal-diameter||54|55||mm||bore|', 'main-journal-diameter is at main'],
    ['pump-pack-found||||1.3|mm|||', 'it wears either way, and one wear limit does not say which side'],
  ])('%s is told and gives no edit', (row, what) => {
    const { edits, troubles } = read('ring-gap||0.31|||mm|||', row);
    expect(troubles).toMatchObject([{ row: 3, weight: 'error', what }]);
    expect(edits).toHaveLength(1);
  });

  it('that stands twice is told', () => {
    expect(read('end-float||||0.42|mm|||', 'end-float||||0.43|mm|||').troubles).toMatchObject([
      { row: 3, what: 'end-float stands in row 2 too' },
    ]);
  });

  it('with a cell that is no figure is told at the cell', () => {
    const wrong = new Map([[4, { what: 'it holds a date', where: 'cell E2', remedy: 'type it again' }]]);
    const [first] = table(head);
    const rows = [...(first ? [first] : []), { line: 2, fields: ['end-float', '', '0.1'], wrong }];
    expect(readLimitsTable(rows, engine).troubles).toMatchObject([{ row: 2, where: 'cell E2' }]);
  });

  it('among thousands is found, and no more than a page of troubles is told', () => {
    const rows = Array.from({ length: 5000 }, () => 'end-flote||0.1|||mm|||');
    const { troubles, edits } = read(...rows, 'end-float||0.11|||mm|||');
    expect(troubles).toHaveLength(100);
    expect(edits).toHaveLength(1);
  });
});
