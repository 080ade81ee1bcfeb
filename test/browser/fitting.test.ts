/** @module Loose parts measured on the Build sheet, one proposed for each place, all noted with one press. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { keysOf } from './by-keys.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { barriers, overflow } from './flaws.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const [, awaiting = ''] = demoJobs;

const parts = [
  ['A', '85.061'],
  ['B', '85.044'],
  ['C', '85.052'],
  ['D', '85.071'],
] as const;

describe.skipIf(noBrowser)(`parts from stock (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  const stock = () => page.locator('[data-fitting="pistons"]');

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
    await page.goto(`${workshop.address}/jobs/${awaiting}/build`);
    await stock().waitFor();
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  it('are measured one after another by keys alone', async () => {
    const keys = keysOf(page);
    await keys.press(stock().getByText(/^Loose parts measured/));
    for (const [at, [part, size]] of parts.entries()) {
      await keys.fill(stock().getByLabel('Name on the part'), part);
      await keys.fill(stock().getByLabel(/^Read: diameter at the skirt/), size);
      await keys.choose(stock().getByLabel('Read with'), 'mic-75-100');
      await keys.press(stock().getByRole('button', { name: 'Note the part' }));
      await expect.poll(() => stock().locator('[data-part]').count()).toBe(at + 1);
    }
  });

  it('are proposed for each place with the clearance drawn, and noted with one press', async () => {
    const keys = keysOf(page);
    const row = (place: string) => stock().locator(`[data-place-fit="${place}"]`);
    // source: by hand; rooms of 85.132, 85.157 and 85.146 mm less the middle of the clearance, 0.086 mm
    for (const [place, part] of [
      ['piston.1', 'B'],
      ['piston.2', 'D'],
      ['piston.3', 'A'],
    ] as const)
      expect(await row(place).locator('td').nth(1).textContent()).toBe(part);
    expect(await stock().locator('[data-fit] svg').count()).toBe(3);
    await keys.press(stock().getByRole('button', { name: 'These parts go in' }));
    await expect.poll(() => row('piston.2').locator('td').last().textContent()).toBe('D within');
    await page.locator('[data-waiting="0"]').waitFor();
    const job = await storedJob(workshop, awaiting);
    expect([...(job.assigned.get('pistons') ?? [])].map(([place, at]) => [place, ...at.parts])).toEqual([
      ['piston.1', 'B'],
      ['piston.2', 'D'],
      ['piston.3', 'A'],
    ]);
  });

  it('are set aside with the reason, and their place is served anew', async () => {
    const keys = keysOf(page);
    const loose = stock().locator('[data-part="B"]');
    await keys.press(loose.getByText('Set B aside'));
    await keys.fill(loose.getByLabel('Why B is not to be used'), 'dropped');
    await keys.press(loose.getByRole('button', { name: 'Set it aside' }));
    await expect.poll(() => stock().locator('[data-part]').count()).toBe(3);
    expect(await stock().locator('[data-place-fit="piston.1"] td').nth(1).textContent()).toBe('C');
  });

  it.each([768, 1280])(
    'stand on a screen %i wide with nothing beyond its edge and no barrier',
    async (width) => {
      await page.setViewportSize({ width, height: 900 });
      expect(await overflow(page)).toBe(0);
      expect(await barriers(page, '[data-fitting="pistons"]')).toEqual([]);
      expect(troubles).toEqual([]);
    },
  );
});
