/** @module An engine that comes back, in the browser: proposed by its plate, its former sizes beside what is read now. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { leftBy } from '../../src/job/left-by.ts';
import { entry } from './bench-hands.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const soon = <Value>(read: () => Value | Promise<Value>) => expect.poll(read, { timeout: 10_000 });

describe.skipIf(noBrowser)(`an engine that comes back (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  it('is known by its plate, and brings the sizes that it went with', async () => {
    const before = await storedJob(workshop, demoJobs[2] ?? '');
    const { title } = before.sheet.engine;
    await page.goto(`${workshop.address}/book-in`);
    const types = page.getByLabel('Engine type');
    await soon(() => types.locator('option').filter({ hasText: title }).count()).toBe(1);
    const value = await types.locator('option').filter({ hasText: title }).getAttribute('value');
    await types.selectOption(value ?? '');
    for (const [label, text] of [
      ['Job number', 'J-80'],
      ['Owner', before.booked.owner],
      ['Plate or serial number', before.booked.plate.toLowerCase()],
      ['Hours run', String(Number(before.booked.hoursRun.text) + 4000)],
      ['Complaint', 'tired'],
    ] as const)
      await page.getByLabel(label, { exact: true }).fill(text);
    const choice = page.getByLabel('This engine was here before');
    await choice.waitFor();
    expect(await choice.locator('option').first().textContent()).toContain(
      `bring the sizes of ${before.booked.number}, handed over`,
    );
    await page.getByRole('button', { name: 'Book in' }).click();
    await page.waitForURL(/\/strip$/);
    const id = new URL(page.url()).pathname.split('/')[2] ?? '';
    await soon(async () => (await workshop.store.readFrom(id, 0)).length).toBe(2);
    expect((await storedJob(workshop, id)).sheet.former).toEqual(leftBy(before));
  });

  it('shows the former size where it is read, and the wear by the thousand hours beside the reading', async () => {
    const id = new URL(page.url()).pathname.split('/')[2] ?? '';
    await page.goto(`${workshop.address}/jobs/${id}/measure`);
    await page.locator(entry).waitFor();
    const hint = page.locator('.entry .hint').first();
    const [, left = ''] = /left at (\d+\.\d+) mm/.exec((await hint.textContent()) ?? '') ?? [];
    expect(Number(left)).toBeGreaterThan(0);
    await page.locator(entry).fill(left);
    await page.locator(entry).press('Enter');
    await soon(() => page.locator('[data-former]').textContent()).toMatch(
      /left it at \d+\.\d+ mm.*; worn since -?\d\.\d+ mm, -?\d\.\d+ mm by 1,000 h\./,
    );
    await page.goto(`${workshop.address}/jobs/${id}/book-in`);
    await soon(() => page.getByRole('region', { name: 'Former overhaul' }).textContent()).toContain(
      'It brings its sizes of',
    );
    expect(troubles).toEqual([]);
  });
});
