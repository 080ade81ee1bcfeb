/** @module A whole job in the browser by keys alone, from booking in to the printed record. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { checkChain } from '../../src/journal/chain.ts';
import { cellKey, type Reading } from '../../src/measure/reading.ts';
import { entryOrder } from '../../src/measure/scheme.ts';
import { entry, handsOf, inOrder } from './bench-hands.ts';
import { noBrowser, openBrowser, openPage } from './chromium.ts';
import { storedJob } from './signed-on.ts';
import { workThrough } from './work-through.ts';
import { openWorkshop, readingsOf, smallEngineText, type Workshop } from './workshop.ts';

const { engine } = readEngineType(smallEngineText);
if (!engine) throw new Error('the engine type for this test has errors');
const order = entryOrder(engine);
const found = readingsOf('readings/mudlark-found.csv', engine);
const built = readingsOf('readings/mudlark-built.csv', engine);

/** Read when the engine is together again. */
const whenSet = ['inlet-clearance', 'exhaust-clearance', 'spill-angle'];

const booking: readonly (readonly [string, string])[] = [
  ['Job number', 'J-41'],
  ['Owner', 'Orrell & Daughter, market garden'],
  ['Plate or serial number', 'M1-2086'],
  ['Hours run', '3900'],
  ['Complaint', 'down on power, blue smoke'],
  ['Hours wanted', '2500'],
];

/** Asked for before it is disturbed. */
const asFound = [
  ['pump.1', 'pump-pack-found'],
  ['thrust.1', 'end-float'],
] as const;

const shims = [
  ['0.10', '4'],
  ['0.15', '3'],
  ['0.20', '4'],
  ['0.30', '4'],
  ['0.50', '2'],
] as const;

describe.skipIf(noBrowser)(`a whole job by keyboard (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  let jobId = '';
  const hands = () => handsOf(page, engine);
  const stored = () => storedJob(workshop, jobId);
  /** Place by place, characteristic by characteristic. */
  const readEach = async (readings: readonly Reading[]) => {
    const { keys, goTo, readCells } = hands();
    for (const group of Map.groupBy(
      readings,
      ({ cell }) => `${cell.place} ${cell.characteristic}`,
    ).values()) {
      const cell = group[0]?.cell;
      if (!cell) continue;
      await goTo(cell.place);
      const name = [engine.characteristics.get(cell.characteristic)?.title, cell.plane, cell.axis]
        .filter((part) => part !== '')
        .join(', ');
      await keys.press(page.getByRole('button', { name: `${name}:` }));
      await readCells(group);
    }
  };
  const allSent = () => page.locator('[data-waiting="0"]').waitFor();

  beforeAll(async () => {
    workshop = await openWorkshop();
    browser = await openBrowser();
    ({ page, troubles } = await openPage(browser));
    page.setDefaultTimeout(8000);
    await page.goto(workshop.address);
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  it('is booked in', async () => {
    const { keys, signOn } = hands();
    await signOn('Odo Ferrick');
    await keys.press(page.getByRole('link', { name: 'Book in an engine' }));
    await keys.choose(page.getByLabel('Engine type'), engine.title.slice(0, 7));
    for (const [label, text] of booking) await keys.fill(page.getByLabel(label, { exact: true }), text);
    await keys.enter();
    await page.waitForURL(/\/jobs\/[^/]+\/strip$/);
    jobId = page.url().split('/').at(-2) ?? '';
    await allSent();
    expect((await stored()).booked.owner).toBe('Orrell & Daughter, market garden');
  });

  it('is stripped, with the shim pack written down before it is disturbed', async () => {
    const { keys, signAll, goTo, readCells, turnTo } = hands();
    await signAll();
    expect(await page.locator('[data-operation="open-shim-pack"]').getAttribute('data-standing')).toBe(
      'held',
    );
    for (const [place, characteristic] of asFound) {
      await goTo(place);
      await readCells(inOrder(order, found).filter(({ cell }) => cell.characteristic === characteristic));
    }
    await turnTo('Strip');
    await signAll();
    expect(await page.locator('[data-standing="held"], [data-standing="open"]').count()).toBe(0);
    await keys.choose(page.getByLabel('Part', { exact: true }), 'big end shell');
    await keys.choose(page.getByLabel('Finding', { exact: true }), 'worn');
    await keys.choose(page.getByLabel('May it go back', { exact: true }), 'may not');
    await keys.fill(page.getByLabel('What you saw, where, how deep'), 'worn to the bronze');
    await keys.press(page.getByRole('button', { name: 'Note the finding' }));
    await allSent();
    expect((await stored()).findings).toMatchObject([{ component: 'big-end-shells', mayGoBack: false }]);
  });

  it('is measured cell by cell, each verdict at once', async () => {
    const { goTo, readCells } = hands();
    await goTo('main.1');
    const left = inOrder(order, found).filter(({ cell }) =>
      asFound.every(([, characteristic]) => cell.characteristic !== characteristic),
    );
    await readCells(left.slice(0, 1));
    const [first] = left;
    const verdict = page.getByRole('region', { name: 'Verdict of the last reading' });
    await expect.poll(() => verdict.textContent()).toContain(first?.typed.text);
    expect(await verdict.getAttribute('data-verdict')).toBe('within');
    // What is heard says the same as what is seen.
    expect(await page.locator('[role="status"].heard-only').textContent()).toContain('within');
    await readCells(left.slice(1));
    await allSent();
    const later = order.filter(({ characteristic }) => whenSet.includes(characteristic));
    expect((await stored()).sheet.readings.size).toBe(order.length - later.length);
  });

  it('is decided by the plan solved here, and the owner agrees', async () => {
    const { keys, turnTo } = hands();
    await turnTo('Decide');
    await page.locator('[data-plan]').waitFor({ timeout: 30_000 });
    await keys.press(page.getByRole('button', { name: 'Choose this plan' }));
    await keys.fill(page.getByLabel('How', { exact: true }), 'by telephone, read back');
    await keys.enter();
    await page.locator('[data-agreed]').waitFor();
    await allSent();
    const { plan, agreed } = await stored();
    expect(agreed?.how).toBe('by telephone, read back');
    expect(plan?.choices.find(({ slot }) => slot === 'bores')?.says).toContain('machine to 0.50');
  });

  it('is measured again where it was machined, by the limits of the new size', async () => {
    const { keys, turnTo } = hands();
    await turnTo('Strip');
    for (const component of ['bores', 'pistons', 'rings']) {
      const title = engine.components.get(component)?.title ?? component;
      await keys.choose(page.getByLabel(title, { exact: true }), '0.50');
    }
    const again = inOrder(order, built).filter(({ cell }) => !whenSet.includes(cell.characteristic));
    await readEach(again);
    await allSent();
    const { sheet } = await stored();
    for (const reading of again)
      expect(sheet.readings.get(cellKey(reading.cell))?.at(-1)?.typed).toEqual(reading.typed);
  });

  it('is built, its shims counted and its pack fitted', async () => {
    const { keys, turnTo, signAll } = hands();
    await turnTo('Build');
    for (const [thickness, count] of shims)
      await keys.fill(page.getByLabel(`${thickness} mm`, { exact: true }), count);
    await keys.enter();
    await keys.press(page.getByRole('button', { name: /^This pack is fitted/ }));
    await expect.poll(() => page.locator('[data-pump="pump.1"]').textContent()).toContain('within tolerance');
    await signAll();
    // The valves go back used: each is confirmed at its own seat before they are signed.
    await workThrough(page, keys, {
      fitter: '',
      second: '',
      engine: engine.id,
      counts: {},
      readings: new Map(),
    }).through('fit-valves');
    await turnTo('Build');
    await signAll();
    expect(await page.locator('[data-standing="held"], [data-standing="open"]').allTextContents()).toEqual(
      [],
    );
    await allSent();
    expect((await stored()).packs.size).toBe(1);
  });

  it('is set and run', async () => {
    const { keys, turnTo, signAll } = hands();
    await readEach(inOrder(order, built).filter(({ cell }) => whenSet.includes(cell.characteristic)));
    await turnTo('Run');
    await signAll();
    const button = (name: string) => page.getByRole('button', { name });
    /** Speed, load, oil pressure and temperature, water, exhaust: each typed where Enter leads. */
    const read = async (minute: string, figures: readonly string[]) => {
      await keys.fill(page.getByLabel('Minute of the step', { exact: true }), minute);
      await keys.reach(page.locator(entry));
      for (const figure of figures) {
        await keys.type(figure);
        await keys.enter();
      }
      await keys.press(button('Note this reading'));
    };
    const begin = async () => {
      const seconds = page.getByLabel('Seconds from the start until oil pressure showed');
      if ((await seconds.count()) > 0) await keys.fill(seconds, '6');
      await keys.press(button('It runs so: begin the step'));
      await page.locator(entry).waitFor();
    };
    await begin();
    await read('10', ['600', '0', '3.1', '40', '55', '130']);
    await begin();
    await read('10', ['1500', '100', '0.9', '78', '82', '400']);
    await page.locator('.alarm[data-stop="true"]').waitFor();
    await keys.fill(page.getByLabel('What was found', { exact: true }), 'relief valve stuck');
    await keys.fill(page.getByLabel('What was done about it', { exact: true }), 'seat cleaned');
    await keys.press(button('Note the fault'));
    await begin();
    for (const minute of ['15', '30', '45']) await read(minute, ['1500', '100', '3.1', '78', '82', '400']);
    await expect
      .poll(() => page.locator('[data-run-step]').evaluateAll((all) => all.map((one) => one.dataset.runStep)))
      .toEqual(['passed', 'passed']);
    await signAll();
    await allSent();
    const { running } = await stored();
    expect(running.filter(({ kind }) => kind === 'run reading taken')).toHaveLength(5);
  });

  it('is handed over with its record, which prints', async () => {
    const { keys, turnTo } = hands();
    await turnTo('Hand over');
    await keys.fill(page.getByLabel('Handed over to', { exact: true }), 'Tamsin Orrell');
    await keys.enter();
    await allSent();
    await expect.poll(async () => (await stored()).handedOver?.to).toBe('Tamsin Orrell');
    const record = page.frameLocator('iframe.record');
    expect(await record.locator('h1').textContent()).toContain('J-41');
    const events = await workshop.store.readFrom(jobId, 0);
    expect(checkChain(events)).toEqual({ kind: 'answer', value: undefined });
    expect(await record.locator('.hash').textContent()).toBe(events.at(-1)?.hash);
    await page.goto(`${workshop.address}/jobs/${jobId}/record`);
    const paper = await page.pdf({ format: 'A4' });
    expect(paper.subarray(0, 5).toString()).toBe('%PDF-');
    expect(paper.length).toBeGreaterThan(20_000);
    expect(troubles).toEqual([]);
  });
});
