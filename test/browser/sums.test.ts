/** @module The sums of an operation on its sheet: given, typed, drawn, written into the journal, and on to the next. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keysOf } from './by-keys.ts';
import { noBrowser, openBrowser, tablet } from './chromium.ts';
import { flawsOf } from './flaws.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { bookSound, measureSound } from './sound-engine.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

describe.skipIf(noBrowser)(`sums on the bench (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  let jobId = '';
  const sum = (name: string) => page.locator(`[data-sum="${name}"]`);
  const noted = async (): Promise<readonly string[]> => {
    await page.locator('[data-waiting="0"]').waitFor();
    return [...(await storedJob(workshop, jobId)).sums.keys()];
  };

  beforeAll(async () => {
    workshop = await openWorkshop();
    jobId = await bookSound(workshop.store, 'J-60');
    await measureSound(workshop.store, jobId);
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser, 'Odo Ferrick', 'bench 2', { viewport: tablet }));
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  it('are written down at one press where the engine gives all that they take', async () => {
    const keys = keysOf(page);
    await page.goto(`${workshop.address}/jobs/${jobId}/build/lay-crankshaft`);
    const first = sum('clearance main.1');
    await first.locator('.sum-picture').waitFor();
    expect(await first.locator('table').first().textContent()).toMatch(
      /shaft54\.9\d\d ± 0\.\d+ mmmain bearing 1, main journal diameter, least of 4, read with mic-50-75/,
    );
    expect(await first.locator('[data-kept="within"]').textContent()).toContain('to be 0.040 mm to 0.140 mm');
    expect(await flawsOf(page)).toEqual([]);
    await keys.press(page.getByRole('button', { name: 'Write down the 4 that need nothing typed' }));
    await sum('clearance main.4').and(page.locator('[data-standing="noted"]')).waitFor();
    expect(await noted()).toHaveLength(4);
  });

  it('ask for what is not given, draw it at once, and lead to the next by keys alone', async () => {
    const keys = keysOf(page);
    await page.goto(`${workshop.address}/jobs/${jobId}/build/fit-head`);
    const gasket = sum('gasket');
    const standOut = gasket.getByLabel(/^piston above the block face/);
    await keys.fill(standOut, '0.44, 0.47; 0.45; 0.42, 0.45 mm');
    await gasket.locator('.sum-picture').waitFor();
    expect(await gasket.locator('[data-kept]').allTextContents()).toEqual([
      expect.stringMatching(/^✓ cylinder 1: bump 0\.7\d+ ± 0\.\d+ mm, to be 0\.60 mm to 0\.90 mm: within$/),
      expect.stringContaining('cylinder 2'),
      expect.stringContaining('cylinder 3'),
    ]);
    await keys.enter();
    await keys.type('grade 2');
    await keys.enter();
    await keys.enter();
    await keys.enter();
    // The next sum takes the gasket and the stand-out from this one, and the keys with them.
    const bump = sum('bump');
    await bump.locator('.sum-picture').waitFor();
    expect(await bump.locator('table').first().textContent()).toContain(
      'thickness of “grade of head gasket”',
    );
    await expect.poll(() => bump.evaluate((one) => one.contains(document.activeElement))).toBe(true);
    for (let stops = 0; stops < 3; stops += 1) await keys.enter();
    await bump.and(page.locator('[data-standing="noted"]')).waitFor();
    expect(await noted()).toEqual(expect.arrayContaining(['fit-head|gasket|', 'fit-head|bump|']));
    const { sums } = await storedJob(workshop, jobId);
    expect(sums.get('fit-head|gasket|')).toMatchObject({ fitted: 'grade 2', by: 'Odo Ferrick' });
    expect(troubles).toEqual([]);
  });
});
