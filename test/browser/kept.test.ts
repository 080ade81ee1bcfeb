/** @module What is typed is never lost: the page loaded anew, the server taken away, the store saying no. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { entry } from './bench-hands.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

describe.skipIf(noBrowser)(`what is typed (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  const [jobId = ''] = demoJobs;

  const stored = () => storedJob(workshop, jobId);
  const readings = async (): Promise<number> => [...(await stored()).sheet.readings.values()].flat().length;
  const waiting = () => page.locator('[data-waiting]').getAttribute('data-waiting');
  const type = async (text: string) => {
    await page.locator(entry).fill(text);
    await page.locator(entry).press('Enter');
    await expect.poll(() => page.locator(entry).inputValue()).toBe('');
  };

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });
  beforeEach(async () => {
    await page?.context().close();
    ({ page } = await openSignedOn(browser, 'Wilmot Tansy'));
    await page.goto(`${workshop.address}/jobs/${jobId}/measure`);
    await page.locator(entry).waitFor();
  });

  it('is there again when the page is loaded anew', async () => {
    const before = await readings();
    await type('47.961');
    await type('47.958');
    await page.reload();
    await page.locator(entry).waitFor();
    await expect.poll(readings).toBe(before + 2);
    expect(await page.locator('[data-verdict]').textContent()).toContain('47.958');
    await expect.poll(waiting).toBe('0');
  });

  it('waits while the server is away, is counted, and is sent when it is back', async () => {
    const before = await readings();
    await workshop.stopServer();
    for (const text of ['47.955', '47.952', '47.960']) await type(text);
    await expect.poll(waiting).toBe('3');
    expect(await page.locator('.waiting').textContent()).toContain('not yet sent: 3');
    // Verdicts go on without the server.
    expect(await page.locator('[data-verdict]').textContent()).toContain('47.960');
    await workshop.startServer();
    await expect.poll(waiting, { timeout: 30_000 }).toBe('0');
    expect(await readings()).toBe(before + 3);
  });

  it('survives the page being closed while the server is away', async () => {
    const before = await readings();
    await workshop.stopServer();
    await type('47.949');
    await expect.poll(waiting).toBe('1');
    await page.close();
    await workshop.startServer();
    page = await page.context().newPage();
    // Any sheet will do: what waited is taken up, whatever job it was for.
    await page.goto(workshop.address);
    await expect.poll(readings, { timeout: 15_000 }).toBe(before + 1);
  });

  it('can be gone on with in a page loaded anew while the server is away', async () => {
    const before = await readings();
    // The app is kept once its worker stands behind the page.
    await page.evaluate(async () => (await navigator.serviceWorker.ready).active?.state);
    await page.reload();
    await page.locator(entry).waitFor();
    await expect
      .poll(() => page.evaluate(async () => (await (await caches.open('endfloat app')).keys()).length))
      .toBeGreaterThan(4);
    await workshop.stopServer();
    await type('47.953');
    await page.reload();
    await page.locator(entry).waitFor();
    await type('47.951');
    await expect.poll(waiting).toBe('2');
    await workshop.startServer();
    await expect.poll(waiting, { timeout: 30_000 }).toBe('0');
    expect(await readings()).toBe(before + 2);
  });

  it('is kept as it stands when it cannot be read, with what is wrong in words', async () => {
    const before = await readings();
    await page.locator(entry).fill('47,9x');
    await page.locator(entry).press('Enter');
    expect(await page.locator(entry).inputValue()).toBe('47,9x');
    expect(await page.locator('.entry .wrong').textContent()).not.toBe('');
    expect(await page.locator(entry).getAttribute('aria-invalid')).toBe('true');
    expect(await readings()).toBe(before);
  });

  it('joins what another bench has read meanwhile', async () => {
    const other = await openSignedOn(browser, 'Odo Ferrick', 'bench 1');
    await other.page.goto(`${workshop.address}/jobs/${jobId}/measure`);
    await other.page.locator(entry).waitFor();
    const before = await readings();
    await other.page.locator(entry).fill('47.962');
    await other.page.locator(entry).press('Enter');
    await expect.poll(readings).toBe(before + 1);
    await type('47.957');
    await expect.poll(readings).toBe(before + 2);
    const takers = [...(await stored()).takenBy.values()].slice(-2).map(({ by }) => by);
    expect(takers).toEqual(['Odo Ferrick', 'Wilmot Tansy']);
    await expect
      .poll(() => page.locator('.phases').textContent())
      .toBe(await other.page.locator('.phases').textContent());
    await other.page.context().close();
  });
});
