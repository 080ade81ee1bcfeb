/** @module A job that reaches one pump, in the browser: booked in so, timed at an operation, widened, and on the board. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { noBrowser, openBrowser } from './chromium.ts';
import { flawsOf } from './flaws.ts';
import { openSignedOn } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const soon = <Value>(read: () => Value | Promise<Value>) => expect.poll(read, { timeout: 10_000 });

describe.skipIf(noBrowser)(`a job of one pump (needs Chromium; ${noBrowser ?? 'here'})`, () => {
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

  it('is booked in to go no further, and widened when something is found', async () => {
    await page.goto(`${workshop.address}/book-in`);
    const types = page.getByLabel('Engine type');
    const option = types.locator('option').filter({ hasText: 'Quillfeather' });
    await soon(() => option.count()).toBe(1);
    await types.selectOption((await option.getAttribute('value')) ?? '');
    for (const [label, text] of [
      ['Job number', 'J-90'],
      ['Owner', 'Sedgeford Pumping Station'],
      ['Hours run', '3100'],
      ['Complaint', 'misses on the second cylinder'],
    ] as const)
      await page.getByLabel(label, { exact: true }).fill(text);
    await page.getByText('Not the whole engine').click();
    await page.getByRole('button', { name: 'fuel pump 2' }).click();
    await soon(() => page.getByText(/^\d+ of \d+ operations; 1 of/).count()).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Book in' }).click();
    await soon(() => page.locator('[data-operation]').count()).toBe(5);
    await page.getByText('In another order').click();
    await page.getByLabel('Order of work').selectOption('side by side');
    await page.getByRole('img', { name: /^Who does what when/ }).waitFor();
    expect(await page.getByText('All is done after').textContent()).toContain(
      'no way of sharing it is quicker',
    );
    await page.getByLabel('Order of work').selectOption('fewest changes');
    await page.getByText('The engine is turned').waitFor();
    await page.goto(page.url().replace('/strip', '/book-in'));
    await page.getByText('It reaches').waitFor();
    expect(await page.getByText('Not opened:').textContent()).toContain('cylinder head');
    await page.getByText('Go further, or not so far').click();
    await page
      .getByRole('group', { name: 'What is reached' })
      .getByRole('button', { name: 'cylinder head' })
      .click();
    await page.getByLabel('Why').fill('a nut at the head is loose');
    expect(await flawsOf(page)).toEqual([]);
    await page.getByRole('button', { name: 'Set how far it goes' }).click();
    await soon(() => page.getByText('It reaches').textContent()).toContain('fuel pump 2, cylinder head');
  });

  it('has its time counted at the operation, and stands on the board with what it does next', async () => {
    await page.goto(`${page.url().replace(/\/book-in.*/, '')}/strip/isolate-and-drain`);
    await page.getByRole('button', { name: 'Begin: time runs' }).click();
    await page.getByText('Runs:').waitFor();
    await page.getByLabel('What interrupts it').fill('the coolant is still hot');
    await page.getByRole('button', { name: 'Stop', exact: true }).click();
    await page.getByText('the coolant is still hot').waitFor();
    expect(await flawsOf(page)).toEqual([]);
    await page.goto(workshop.address);
    const row = page.getByRole('row').filter({ hasText: 'J-90' });
    await soon(() => row.getByRole('link', { name: 'Isolate battery' }).count()).toBe(1);
    expect(await row.textContent()).toContain('only fuel pump 2, cylinder head');
    expect(await flawsOf(page)).toEqual([]);
    await row.getByRole('link', { name: 'Isolate battery' }).click();
    await page.locator('[data-operation="isolate-and-drain"]').waitFor();
    expect(troubles).toEqual([]);
  });
});
