/** @module One bore at another size, in the browser: noted at its place, and its limits shown where it is read. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { entry } from './bench-hands.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { bookSound } from './sound-engine.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const soon = <Value>(read: () => Value | Promise<Value>) => expect.poll(read, { timeout: 10_000 });

describe.skipIf(noBrowser)(`one bore at another size (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  let id: string;

  beforeAll(async () => {
    workshop = await openWorkshop();
    id = await bookSound(workshop.store, 'J-61');
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  /** At the edge of the place on the map: the piston is drawn within its bore. */
  const limitsShownAt = async (place: string) => {
    await page
      .locator(`[data-place="${place}"]`)
      .first()
      .click({ position: { x: 4, y: 4 } });
    await page.locator(entry).waitFor();
    return (await page.locator('.entry').textContent()) ?? '';
  };

  // source: invented, the demonstration engine's sheet 3
  it('is noted at its place, and bore and piston there are read against the limits of that size', async () => {
    await page.goto(`${workshop.address}/jobs/${id}/strip`);
    await page.getByText('Place by place: cylinder bores in the block').click();
    await page.getByLabel('cylinder bore 2: cylinder bores in the block').selectOption('0.50');
    await soon(async () => [...(await storedJob(workshop, id)).sheet.sizesFound]).toEqual([
      ['bores@bore.2', '0.50'],
    ]);
    await soon(() => page.getByRole('region', { name: 'Sizes found' }).textContent()).toContain(
      'are to be of one size, and stand at two: bore.2 at 0.50',
    );
    await page.goto(`${workshop.address}/jobs/${id}/measure`);
    await page.locator(entry).waitFor();
    await soon(() => limitsShownAt('bore.2')).toContain('may go back 85.500 to 85.650');
    await soon(() => limitsShownAt('piston.2')).toContain('may go back 85.360 to 85.435');
    await soon(() => limitsShownAt('bore.1')).toContain('may go back 85.000 to 85.150');
    await soon(() => limitsShownAt('piston.3')).toContain('may go back 84.860 to 84.935');
    expect(troubles).toEqual([]);
  });
});
