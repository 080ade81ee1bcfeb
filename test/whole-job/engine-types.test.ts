/** @module Engine types in the terminal: edited, filled from tables, compared, and printed as sheets to be typed in later. */
import { copyFileSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { afterAll, beforeEach, describe, expect, it } from 'vitest';
import { criticalFigures } from '../../src/engine/edit/critical-figures.ts';
import { fileData } from '../../src/engine/edit/edit-engine.ts';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { bench, demoFile, root } from './endfloat.ts';

const at = bench();
afterAll(at.clear);

const file = (name: string) => join(at.folder, name);
const original = readFileSync(demoFile('engines/quillfeather-3w.yaml'), 'utf8');

beforeEach(() => copyFileSync(demoFile('engines/quillfeather-3w.yaml'), file('type.yaml')));

const written = () => readFileSync(file('type.yaml'), 'utf8');

describe('endfloat edit', () => {
  it('changes a figure where it stands, makes the next version and takes the check away', async () => {
    const done = await at.ask([
      'edit',
      'type.yaml',
      'end-float',
      'wear.greatest=0.42 mm',
      '--to',
      'type.yaml',
      '--by',
      'Ilse Quarrow',
    ]);
    expect(done).toMatchObject({ code: 0, out: expect.stringContaining('end-float is set') });
    const { engine } = readEngineType(written());
    expect(engine).toMatchObject({ version: 2, entered: { by: 'Ilse Quarrow' } });
    expect(engine?.checked).toBeUndefined();
    expect(done.err).toContain('nobody has checked these figures');
    const kept = original.split('\n').filter((line) => !written().split('\n').includes(line));
    expect(kept).toEqual([
      'version: 1',
      "checked: { by: Perpetua Sallow, on: '2026-03-02' }",
      '    limits: { new: { least: 0.10 mm, greatest: 0.25 mm }, wear: { greatest: 0.40 mm } }',
    ]);
  });

  it('keeps the check where only words change, and a step has limits of its own', async () => {
    await at.ask(['edit', 'type.yaml', 'end-float', 'source=sheet 12', '--to', 'type.yaml']);
    expect(readEngineType(written()).engine?.checked?.by).toBe('Perpetua Sallow');
    await at.ask([
      'edit',
      'type.yaml',
      'bore-diameter',
      'wear.greatest=85.390 mm',
      '--step',
      '0.25',
      '--to',
      'type.yaml',
    ]);
    expect(
      readEngineType(written()).engine?.components.get('bores')?.sizes?.steps[0]?.limits.goesBack.greatest,
    ).toBe(85.39);
  });

  it.each([
    [['end-flote', 'new.least=1 mm'], 2, /no characteristic end-flote.*end-float/],
    [['end-float', 'new.lest=1 mm'], 2, /new\.lest cannot be set.*new\.least/],
    [['end-float', 'new.least=1 mm', '--step', '0.25'], 2, /no step 0\.25/],
    [['end-float', 'new.least=a tenth'], 1, /it cannot be read as a number/],
  ] as const)('%j writes nothing and says why', async (words, code, says) => {
    const done = await at.ask(['edit', 'type.yaml', ...words, '--to', 'type.yaml']);
    expect(done.code).toBe(code);
    expect(done.err).toMatch(says);
    expect(written()).toBe(original);
  });
});

describe('endfloat changes', () => {
  it('names each figure that changed, and nothing where none did', async () => {
    await at.ask(['edit', 'type.yaml', 'end-float', 'wear.greatest=0.42 mm', '--to', 'new.yaml']);
    const { out } = await at.ask(['changes', 'type.yaml', 'new.yaml']);
    expect(out).toMatch(
      /changed {2}characteristics, end-float, limits, wear, greatest {2}0\.40 mm {2}0\.42 mm/,
    );
    expect((await at.ask(['changes', 'type.yaml', 'type.yaml'])).out).toBe('Nothing changed.\n');
  });
});

describe('endfloat second-check', () => {
  /** What somebody types into the blank table who reads the same manual, but for the pumps' datum. */
  const typed = async (datum: string) => {
    const { out } = await at.ask(['second-check', 'type.yaml']);
    const file = fileData(written());
    const figures = new Map(
      (file.kind === 'answer' ? criticalFigures(file.value.data) : []).map((one) => [one.at, one.figure]),
    );
    expect(out).not.toContain('54.970');
    const [head, ...rows] = out.trim().split('\n');
    return [
      head,
      ...rows.map((row) => {
        const name = row.split(',')[0] ?? '';
        return `${row}${name === 'pump-timing/datum' ? datum : figures.get(name)}`;
      }),
    ].join('\n');
  };

  it('shows what was read differently, and signs once another person read the same', async () => {
    await at.ask([
      'edit',
      'type.yaml',
      'end-float',
      'wear.greatest=0.42 mm',
      '--to',
      'type.yaml',
      '--by',
      'Ilse Quarrow',
    ]);
    writeFileSync(file('figures.csv'), await typed('83.50 mm'));
    const apart = await at.ask([
      'second-check',
      'type.yaml',
      'figures.csv',
      '--by',
      'Odo Ferrick',
      '--to',
      'type.yaml',
    ]);
    expect(apart).toMatchObject({
      code: 1,
      out: expect.stringMatching(/datum of the pumps .*83\.00 mm +83\.50 mm/),
    });
    expect((await at.ask(['check', 'type.yaml'])).out).toContain(
      'Odo Ferrick read 83.50 mm here in the manual',
    );
    writeFileSync(file('figures.csv'), await typed('83.00 mm'));
    const own = await at.ask(['second-check', 'type.yaml', 'figures.csv', '--by', 'ilse quarrow']);
    expect(own).toMatchObject({
      code: 1,
      err: expect.stringContaining('ilse quarrow typed these figures in'),
    });
    const done = await at.ask([
      'second-check',
      'type.yaml',
      'figures.csv',
      '--by',
      'Odo Ferrick',
      '--to',
      'type.yaml',
    ]);
    expect(done).toMatchObject({
      code: 0,
      out: expect.stringContaining('figures agree: checked by Odo Ferrick'),
    });
    expect(readEngineType(written()).engine).toMatchObject({
      version: 4,
      checked: { by: 'Odo Ferrick' },
      differs: [],
    });
  });
});

describe('endfloat limits', () => {
  it('takes a table in CSV, says what its columns mean, and keeps figures as they stand', async () => {
    writeFileSync(
      file('limits.csv'),
      'Item;Min;Max;Service limit;Units\nend-float;0,12;1/64 in;0,45;mm\nring-gap;;;1,05;mm\n',
    );
    const done = await at.ask(['limits', 'type.yaml', 'limits.csv', '--to', 'type.yaml']);
    expect(done).toMatchObject({ code: 0, out: expect.stringContaining('2 rows taken, 4 changes.') });
    expect(done.err).toContain('“Service limit” is wear limit, on the side to which it wears');
    expect(written()).toContain(
      "limits: { new: { least: '0,12 mm', greatest: 1/64 in }, wear: { greatest: '0,45 mm' } }",
    );
  });

  it('takes a workbook, with columns matched by hand', async () => {
    const cells = (row: number, texts: readonly string[]) =>
      `<row r="${row}">${texts.map((text) => `<c t="inlineStr"><is><t>${text}</t></is></c>`).join('')}</row>`;
    writeFileSync(
      file('limits.xlsx'),
      zipSync({
        'xl/workbook.xml': strToU8('<workbook><sheets><sheet name="A" r:id="r1"/></sheets></workbook>'),
        'xl/_rels/workbook.xml.rels': strToU8('<R><Relationship Id="r1" Target="worksheets/s.xml"/></R>'),
        'xl/worksheets/s.xml': strToU8(
          `<worksheet><sheetData>${cells(1, ['A', 'B'])}${cells(2, ['end-float', '0.41 mm'])}</sheetData></worksheet>`,
        ),
      }),
    );
    const done = await at.ask([
      'limits',
      'type.yaml',
      'limits.xlsx',
      '--column',
      'characteristic=A',
      '--column',
      'wear=B',
      '--to',
      'type.yaml',
    ]);
    expect(done).toMatchObject({ code: 0 });
    expect(written()).toContain('wear: { greatest: 0.41 mm }');
  });

  it('writes nothing where a row has an error, and names each', async () => {
    writeFileSync(file('limits.csv'), 'Item,Max,Units\nend-float,-,mm\nend-flote,0.3,mm\nring-gap,NaN,mm\n');
    const done = await at.ask(['limits', 'type.yaml', 'limits.csv', '--to', 'type.yaml']);
    expect(done.code).toBe(1);
    for (const says of ['limits.csv:2: error', 'limits.csv:3: error', 'limits.csv:4: error'])
      expect(done.err).toContain(says);
    expect(written()).toBe(original);
  });
});

describe('a workbook of readings', () => {
  it('is judged, and its cells that are no figure are told by their address', async () => {
    copyFileSync(join(root, 'test/spreadsheet/workbook.xlsx'), file('readings.xlsx'));
    const judged = await at.ask(['judge', 'type.yaml', 'readings.xlsx']);
    expect(judged.code).toBe(1);
    for (const says of [
      '9: error: it holds a date',
      'cell E10',
      'cell E11',
      'cell E12',
      '13: error: it is far too large',
    ])
      expect(judged.err).toContain(says);
    expect(judged.out).toContain('main.1');
  });
});

describe('endfloat sheet', () => {
  it('is filled in by hand, typed in by its boxes and judged', async () => {
    const { boxes } = await at.json<{
      readonly boxes: readonly { readonly box: string; readonly characteristic: string }[];
    }>('sheet', 'type.yaml', '--to', 'sheet.html');
    const page = readFileSync(file('sheet.html'), 'utf8');
    expect(boxes.map(({ box }) => box).every((box) => page.includes(`>${box}<`))).toBe(true);
    const float = boxes.find(({ characteristic }) => characteristic === 'end-float');
    writeFileSync(file('typed.csv'), `box,reading\n${float?.box},0.20\n`);
    const judged = await at.ask(['judge', 'type.yaml', 'typed.csv']);
    expect(judged.out).toMatch(/end-float +0\.200 mm/);
    writeFileSync(
      file('typed.csv'),
      `box,reading\n${Number.parseInt(float?.box ?? '', 10) + 1}${float?.box.slice(-1)},0.20\n`,
    );
    expect((await at.ask(['judge', 'type.yaml', 'typed.csv'])).err).toContain('the box with this number is');
  });

  it('of a job names its engine, and a name that is neither is told', async () => {
    await at.ask([
      'book-in',
      'type.yaml',
      'owner=A',
      'plate=QF 301',
      'hours=1h',
      'complaint=none',
      'currency=crowns',
    ]);
    expect((await at.ask(['sheet', 'J-1'])).out).toContain('QF 301');
    expect(await at.ask(['sheet', 'J-9'])).toMatchObject({ code: 2 });
    expect(await at.ask(['sheet', 'none.yaml'])).toMatchObject({
      code: 2,
      err: expect.stringContaining('no such file'),
    });
  });
});
