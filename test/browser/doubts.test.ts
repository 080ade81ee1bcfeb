/** @module A doubt at the bench: what it says, the scale drawn twice to hold against the instrument, and its two ways out. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { desk, noBrowser, openBrowser, tablet } from './chromium.ts';
import { barriers } from './flaws.ts';
import { openSignedOn } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

describe.skipIf(noBrowser)(`doubts on the sheet (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
    await page.goto(`${workshop.address}/jobs/${demoJobs[0]}/measure`);
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  const turn = () => page.locator('[data-doubt="thimble turn"]');

  it('show a turn of the thimble as it would look for both figures: one half-millimetre line apart', async () => {
    await turn().waitFor();
    const [typed, likely] = await turn()
      .locator('svg > g')
      .evaluateAll((scales) =>
        scales.map((scale) => ({
          lines: scale.querySelectorAll('[data-sleeve]').length,
          thimble: [...scale.querySelectorAll('[data-thimble]')].map((line) =>
            line.getAttribute('data-thimble'),
          ),
          words: scale.textContent ?? '',
        })),
      );
    // The demo's reading: 55.478 mm where 54.978 mm was meant.
    expect(typed?.words).toContain('as typed: 55.478 mm');
    expect(likely?.words).toContain('as suspected: 54.978 mm');
    expect(typed?.words).toContain('half-millimetre line not showing');
    expect(likely?.words).toContain('half-millimetre line showing');
    expect(typed?.thimble).toEqual(likely?.thimble);
    expect(typed?.lines).toBeGreaterThan(0);
  });

  it.each([
    ['1280 × 800', desk],
    ['768 × 1024', tablet],
  ])('keep within the sheet and put no barrier up, %s', async (_size, viewport) => {
    await page.setViewportSize(viewport);
    expect(await barriers(page, '#doubts')).toEqual([]);
    const wider = await turn()
      .locator('svg')
      .evaluate((svg) => svg.getBoundingClientRect().right - document.documentElement.clientWidth);
    expect(wider).toBeLessThanOrEqual(0);
  });

  it('go when the fitter says why the reading stands', async () => {
    await turn().getByLabel('It stands, because …').fill('measured twice, the journal was built up');
    await turn().getByRole('button').last().click();
    await turn().waitFor({ state: 'detached' });
    expect(troubles).toEqual([]);
  });
});
