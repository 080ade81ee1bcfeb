/** @module What the app says back: doubts and their two ways out, demands that conflict, files that are wrong. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { instruments } from '../../demo/instruments.ts';
import { demoJobs } from '../../demo/workshop.ts';
import { settle } from '../../src/measure/settle.ts';
import { entry } from './bench-hands.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { engineText, openWorkshop, type Workshop } from './workshop.ts';

describe.skipIf(noBrowser)(`what the app says back (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  const [halfMeasured = '', awaitingDecision = ''] = demoJobs;

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  it('lets a reading in doubt be measured again, and then doubts it no more', async () => {
    await page.goto(`${workshop.address}/jobs/${halfMeasured}/measure`);
    const doubt = page.locator('[data-doubt]', { hasText: 'thimble' });
    await doubt.getByRole('button', { name: 'Measure again' }).click();
    const asked = await page.locator('.entry label').textContent();
    expect(asked).toContain('main bearing 3');
    await page.locator(entry).fill('54.978');
    await page.locator(entry).press('Enter');
    await doubt.waitFor({ state: 'detached' });
  });

  it('takes the word of whoever says why a reading stands, and not without it', async () => {
    const doubt = page.locator('[data-doubt]', { hasText: 'swapped' });
    await doubt.getByRole('button', { name: 'It stands' }).click();
    await expect.poll(() => doubt.getByRole('alert').textContent()).toContain('Not done');
    await doubt.getByLabel('It stands, because …').fill('labels were read out twice');
    await doubt.getByRole('button', { name: 'It stands' }).click();
    await doubt.waitFor({ state: 'detached' });
    await expect
      .poll(async () =>
        [...(await storedJob(workshop, halfMeasured)).doubtsAnswered.values()].map(({ why }) => why),
      )
      .toEqual(['labels were read out twice']);
  });

  it('says what would settle an unsure verdict, cheapest first', async () => {
    await page.goto(`${workshop.address}/jobs/${awaitingDecision}/measure`);
    await page.locator('[data-place="big-end.3"]').first().click();
    const settling = page.locator('[data-settling]');
    await settling.waitFor();
    const { sheet } = await storedJob(workshop, awaitingDecision);
    const told = settle(sheet, 'big-end-journal-diameter', 'big-end.3', instruments);
    expect(told.length).toBeGreaterThan(0);
    expect(await settling.getByRole('listitem').allTextContents()).toEqual(told.map(({ says }) => says));
  });

  it('says which demands do not go together, and plans anew when one is taken back', async () => {
    await page.goto(`${workshop.address}/jobs/${awaitingDecision}/decide`);
    await page.locator('[data-plan]').waitFor();
    await page.getByLabel('Days at most').fill('1');
    await page.getByRole('button', { name: 'Plan anew' }).click();
    const conflict = page.locator('[data-plan="conflict"]');
    await conflict.waitFor();
    expect(await conflict.locator('li').count()).toBeGreaterThan(0);
    await page.getByLabel('Days at most').fill('ten');
    await page.getByRole('button', { name: 'Plan anew' }).click();
    expect(await page.getByRole('form').textContent()).toContain('type a number');
    await page.getByLabel('Days at most').fill('');
    await page.getByRole('button', { name: 'Plan anew' }).click();
    await page.getByRole('button', { name: 'Choose this plan' }).waitFor();
  });

  it('shows what is wrong in an engine type file by line and column', async () => {
    await page.goto(`${workshop.address}/book-in`);
    await page.getByLabel('Engine type').selectOption('open a file …');
    const broken = engineText.replace('firing-order: [1, 3, 2]', 'firing-order: [1, 3, 3]');
    expect(broken).not.toBe(engineText);
    await page
      .getByLabel('Engine type file')
      .setInputFiles({ name: 'engine.yaml', mimeType: 'text/yaml', buffer: Buffer.from(broken) });
    const line = String(broken.split('\n').findIndex((text) => text.includes('[1, 3, 3]')) + 1);
    const row = page.getByRole('row', { name: new RegExp(`error ${line} `) });
    await expect.poll(() => row.count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Book in' }).click();
    expect(await page.getByRole('alert').textContent()).toContain('Not done');
    expect(troubles).toEqual([]);
  });
});
