/** @module Engine types in the browser by keys alone: figures edited, saved, checked by a second person; limits and readings from files. */
import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { v7 } from 'uuid';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { criticalFigures } from '../../src/engine/edit/critical-figures.ts';
import { fileData } from '../../src/engine/edit/edit-engine.ts';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { sheetBoxes } from '../../src/measure/sheet-box.ts';
import { type Hands, handsOf } from './bench-hands.ts';
import { desk, noBrowser, openBrowser, openPage, tablet } from './chromium.ts';
import { barriers, flawsOf } from './flaws.ts';
import { engineText, openWorkshop, type Workshop } from './workshop.ts';

const id = 'quillfeather-3w';
const { engine } = readEngineType(engineText);
if (!engine) throw new Error('the engine type for the tests has errors');

const figuresOf = (text: string) => {
  const file = fileData(text);
  return file.kind === 'answer' ? criticalFigures(file.value.data) : [];
};

const file = (name: string, content: string) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(content),
});

/** A job of the type as it stands on the shelf. */
const bookIn = async (address: string): Promise<void> => {
  const job = v7();
  const request = {
    kind: 'book in',
    number: 'J-1',
    engineType: engineText,
    owner: 'Hob Tarrant',
    plate: 'QF 301',
    hoursRun: { text: '4000', unit: 'h' },
    complaint: 'smokes',
    currency: 'crowns',
    conformance: 0.95,
  };
  const command = {
    id: v7(),
    job,
    at: new Date().toISOString(),
    actor: 'Odo Ferrick',
    bench: 'bench 2',
    request,
  };
  const answer = await fetch(`${address}/api/jobs/${job}/commands`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ command, after: 0 }),
  });
  if (!answer.ok) throw new Error(await answer.text());
};

describe.skipIf(noBrowser)(`engine types in the browser (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  let hands: Hands;
  let toChoose: ReturnType<typeof file> | undefined;

  beforeAll(async () => {
    workshop = await openWorkshop();
    await bookIn(workshop.address);
    browser = await openBrowser();
    ({ page, troubles } = await openPage(browser));
    page.setDefaultTimeout(15_000);
    hands = handsOf(page, engine);
    page.on('filechooser', async (chooser) => {
      if (toChoose) await chooser.setFiles(toChoose);
      toChoose = undefined;
    });
    await page.goto(workshop.address);
    await hands.signOn('Odo Ferrick');
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  const { press, fill, reach } = {
    press: (name: string | RegExp, role: 'button' | 'link' = 'button') =>
      hands.keys.press(page.getByRole(role, { name }).first()),
    fill: (label: string | RegExp, text: string) => hands.keys.fill(page.getByLabel(label).first(), text),
    reach: (label: string | RegExp) => hands.keys.reach(page.getByLabel(label).first()),
  };

  /** Enter on the field opens the machine's own dialogue, in which a file is chosen. */
  const choose = async (label: RegExp, chosen: ReturnType<typeof file>) => {
    toChoose = chosen;
    await reach(label);
    await page.keyboard.press('Enter');
    await expect.poll(() => toChoose, { timeout: 10_000 }).toBeUndefined();
  };

  const newest = async () => {
    const [first] = await workshop.store.engineTypeVersions(id);
    if (!first) throw new Error('the engine type is gone from the shelf');
    return first;
  };

  it('shows the shelf, and a figure that is edited with its trouble, its zone and its pair', async () => {
    await press('Engine types', 'link');
    await press(/Quillfeather/, 'link');
    await press(/^Figures/, 'link');
    await fill('As made, at most', '54.9x');
    await page.keyboard.press('Enter');
    await page.getByText(/there is no unit x/).waitFor();
    expect(await page.getByRole('button', { name: 'Save as version 2' }).isDisabled()).toBe(true);
    await fill('As made, at most', '54.990 mm');
    await fill('May go back, at least', '54.920 mm (2.1620 in)');
    await page.keyboard.press('Enter');
    // source: 54.920 / 25.4 = 2.16220
    await page.getByText('54.920 mm is 2.1622 in, and 2.1620 in stands beside it').waitFor();
    await fill('May go back, at least', '54.920 mm (2.1622 in)');
    await page.keyboard.press('Enter');
    await page
      .getByText('Changed on this bench: no errors, no warnings')
      .or(page.getByText('Changed on this bench: no errors.'))
      .waitFor();
    expect(await page.locator('.drawing svg').first().textContent()).toContain('54.920');
  });

  it('keeps what is being changed when the page is loaded anew, and saves it as the next version', async () => {
    await page.reload();
    await page.getByText('Changed on this bench').waitFor();
    await press('Save as version 2');
    await page.getByText('Saved as version 2').first().waitFor();
    const { version, text } = await newest();
    expect(version).toBe(2);
    expect(text).toContain('wear: { least: 54.920 mm (2.1622 in) }');
    expect(text).toContain('entered: { by: Odo Ferrick');
    expect(text).not.toContain('checked:');
    expect(text.split('\n').filter((line) => !engineText.includes(line))).toHaveLength(3);
  });

  it('does not let the one who typed in check, and shows a second person no figure', async () => {
    await press(/^Second check/, 'link');
    await page.getByText('You typed these figures in').waitFor();
    await press(/^fitter/);
    await hands.signOn('Perpetua Sallow');
    await page.getByText('What Odo Ferrick typed is not shown').waitFor();
    const shown = await page.locator('main').textContent();
    for (const { figure } of figuresOf((await newest()).text)) expect(shown).not.toContain(figure);
  });

  it('shows both a figure that was read differently, and signs once all agree', async () => {
    const figures = figuresOf((await newest()).text);
    const [first] = figures;
    await reach(first?.title ?? '');
    for (const { figure } of figures) {
      await page.keyboard.type(figure === '83.00 mm' ? '83.50 mm' : figure);
      await page.keyboard.press('Enter');
    }
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: '1 figure was read differently' }).waitFor();
    const row = page.getByRole('row', { name: /datum of the pumps/ });
    expect(await row.textContent()).toMatch(/83\.00 mm\s*83\.50 mm/);
    expect(await newest()).toMatchObject({ version: 3, text: expect.not.stringContaining('checked:') });
    await fill('datum of the pumps', '83.00 mm');
    await press(/^Hold them against the file/);
    await page.getByText(/Checked by Perpetua Sallow/).waitFor();
    expect(readEngineType((await newest()).text).troubles).toEqual([]);
  });

  it('tells what changed from version to version', async () => {
    await press(/^Versions/, 'link');
    await hands.keys.press(page.locator('summary', { hasText: 'What changed since version 1' }));
    const row = page.getByRole('row', { name: /main-journal-diameter, limits, wear, least/ });
    expect(await row.textContent()).toMatch(/54\.930 mm\s*54\.920 mm \(2\.1622 in\)/);
  });

  it('takes limits from a table once its columns are matched and its rows are right', async () => {
    await press(/^Limits table/, 'link');
    await choose(
      /^Table of limits/,
      file('limits.csv', 'Item;Min;Max;Service limit;X\nend-float;0,12;-;0,45;mm\n'),
    );
    await page.getByText("'0,12': the unit is missing").waitFor();
    await hands.keys.choose(page.getByLabel('Column “X”'), 'unit');
    await page.getByText("'-': a sign without a number").waitFor();
    expect(await page.getByRole('button', { name: /^Take these/ }).isDisabled()).toBe(true);
    await choose(
      /^Table of limits/,
      file('mended.csv', 'Item;Min;Max;Service limit;Units\nend-float;0,12;0,27;0,45;mm\n'),
    );
    await page.getByRole('cell', { name: '0,45 mm' }).waitFor();
    await press('Take these 1 rows');
    await page.getByText('Changed on this bench').waitFor();
    await press('Drop the changes');
    await page.getByText('Nothing changed yet').waitFor();
  });

  it('edits the text too, with its troubles by line', async () => {
    await press(/^Text/, 'link');
    await reach('Engine type file (YAML)');
    await page.keyboard.press('Control+Home');
    await page.keyboard.type('x: 1\n');
    await page.getByRole('cell', { name: /the key x is not known here/ }).waitFor();
    await press('Drop the changes');
  });

  it('tells whoever was slower', async () => {
    await press(/^Figures/, 'link');
    await fill('Page of the manual', 'sheet 1a');
    await page.keyboard.press('Enter');
    await page.getByText('Changed on this bench').waitFor();
    const { version, text, title } = await newest();
    await workshop.store.addEngineType({
      id,
      title,
      version: version + 1,
      text: text.replace(`version: ${version}`, `version: ${version + 1}`),
    });
    await press(`Save as version ${version + 1}`);
    await page.getByText(`version ${version + 1} has been put on the shelf meanwhile`).waitFor();
    await press('Drop the changes');
    expect((await newest()).version).toBe(version + 1);
  });

  it('begins a new engine type, with its stroke and first limit by form', async () => {
    await page.goto(`${workshop.address}/engine-types`);
    await fill('Title', 'Wherry 4 marine auxiliary');
    await fill(/^The manual/, 'manual 12, second edition');
    await fill('Cylinders', '4');
    await press('Begin it');
    await fill('New characteristic', 'end-float');
    await press('Add it');
    await hands.keys.choose(page.getByLabel('Kind of place'), 'thrust');
    await hands.keys.choose(page.getByLabel('Which way it wears'), 'larger');
    await fill('May go back, at most', '1/64 in (0.397 mm)');
    await page.keyboard.press('Enter');
    await press('The engine itself');
    await fill('Stroke', '4 1/2 in');
    await page.keyboard.press('Enter');
    await page.getByText('Changed on this bench: no errors').waitFor();
    await press('Save as version 2');
    await page.getByText('Saved as version 2').first().waitFor();
    const [made] = await workshop.store.engineTypeVersions('wherry-4-marine-auxiliary');
    const read = readEngineType(made?.text ?? '').engine;
    expect(read).toMatchObject({ cylinders: 4, entered: { by: 'Perpetua Sallow' }, stroke: 114.3 });
    expect(read?.characteristics.get('end-float')).toMatchObject({ at: 'thrust', wears: 'larger' });
    expect(read?.printedPairs).toHaveLength(1);
  });

  it('does not put a type over one that is on the shelf', async () => {
    await page.goto(`${workshop.address}/engine-types`);
    await choose(/^Or from a file/, file('same.yaml', engineText));
    await page.getByText(/an engine type quillfeather-3w is on the shelf already/).waitFor();
  });

  it('takes readings from a file on the Measure sheet, all or none', async () => {
    await page.goto(workshop.address);
    await press('J-1', 'link');
    await hands.turnTo('Measure');
    await hands.keys.press(page.locator('summary', { hasText: 'Enter readings from a file' }));
    const box = (name: string) => sheetBoxes(engine).find(({ cell }) => cell.characteristic === name)?.code;
    await choose(/^File of readings/, file('bad.csv', `box,reading\n${box('end-float')},0.2x\n`));
    await page.getByRole('cell', { name: /there is no unit x/ }).waitFor();
    expect(await page.getByRole('button', { name: /^Take these/ }).isDisabled()).toBe(true);
    const xlsx = readFileSync(new URL('../spreadsheet/workbook.xlsx', import.meta.url));
    await choose(/^File of readings/, {
      name: 'workbook.xlsx',
      mimeType: 'application/octet-stream',
      buffer: xlsx,
    });
    await page
      .getByRole('cell', { name: /holds a date/ })
      .first()
      .waitFor();
    await choose(
      /^File of readings/,
      file('good.csv', `box,reading\n${box('end-float')},0.213\n${box('head-flatness')},0.02\n`),
    );
    await press('Take these 2 readings');
    await expect
      .poll(
        async () => {
          const [job] = (await workshop.store.list()).filter(({ number }) => number === 'J-1');
          const events = await workshop.store.readFrom(job?.job ?? '', 0);
          return events.filter(
            ({ fact }) => fact.kind === 'reading taken' && ['0.213', '0.02'].includes(fact.typed.text),
          ).length;
        },
        { timeout: 15_000 },
      )
      .toBe(2);
  });

  it('prints the sheet of the job, with its boxes', async () => {
    await press('Measuring sheet to print', 'link');
    await page.getByRole('heading', { name: /Measuring sheet: Quillfeather/ }).waitFor();
    expect(await page.locator('.box').count()).toBe(sheetBoxes(engine).length);
    expect(await barriers(page)).toEqual([]);
  });

  for (const [size, viewport] of [
    ['1280 × 800', desk],
    ['768 × 1024', tablet],
  ] as const)
    for (const sheet of [
      '',
      `/${id}/versions`,
      `/${id}/form`,
      `/${id}/text`,
      `/${id}/limits`,
      `/${id}/check`,
    ])
      it(`has no barrier and fits the screen: /engine-types${sheet}, ${size}`, async () => {
        await page.setViewportSize(viewport);
        await page.goto(`${workshop.address}/engine-types${sheet}`);
        await page
          .getByText(sheet === '' ? 'Quillfeather' : 'Versions')
          .first()
          .waitFor();
        if (sheet.endsWith('form')) await page.getByLabel('Title').waitFor();
        expect(await flawsOf(page)).toEqual([]);
      });

  it('leaves nothing wrong on the console', () => {
    // The refusal to whoever was slower is an answer, which browsers log.
    expect(troubles.filter((trouble) => !/409/.test(trouble))).toEqual([]);
  });
});
