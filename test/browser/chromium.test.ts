/** @module The browser that the other browser tests count on: it starts, shows a page, and troubles are seen. */
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { noBrowser, openBrowser, openPage, tablet } from './chromium.ts';

describe.skipIf(noBrowser)(`the browser for the tests (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await openBrowser();
  });
  afterAll(() => browser?.close());

  it('shows a page in the size asked for', async () => {
    const { page, troubles } = await openPage(browser, { viewport: tablet });
    await page.setContent('<h1>Bench</h1>');
    expect(await page.locator('h1').textContent()).toBe('Bench');
    expect(await page.evaluate(() => [window.innerWidth, window.innerHeight])).toEqual([768, 1024]);
    expect(troubles).toEqual([]);
  });

  it('tells what goes wrong in a page', async () => {
    const { page, troubles } = await openPage(browser);
    await page.setContent('<script>console.error("said"); throw new Error("thrown");</script>');
    await expect.poll(() => troubles).toEqual(['console: said', 'uncaught: thrown']);
  });
});
