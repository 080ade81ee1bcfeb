/** @module A joint tightened at the bench with a foot switch that types Enter: bolt by bolt, stage by stage, nothing turned twice. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { keysOf } from './by-keys.ts';
import { noBrowser, openBrowser, tablet } from './chromium.ts';
import { flawsOf } from './flaws.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { bookSound, measureSound } from './sound-engine.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

describe.skipIf(noBrowser)(`a joint on the bench (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  let jobId = '';

  beforeAll(async () => {
    workshop = await openWorkshop();
    jobId = await bookSound(workshop.store, 'J-61');
    await measureSound(workshop.store, jobId);
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser, 'Odo Ferrick', 'bench 2', { viewport: tablet }));
    await page.goto(`${workshop.address}/jobs/${jobId}/build/fit-head`);
    await page.locator('button.tight').waitFor();
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  const states = (state: string) => page.locator(`.tightening [data-state="${state}"]`);

  it('says before the first bolt is pulled that dry threads are not what the figure holds for', async () => {
    const keys = keysOf(page);
    await keys.choose(page.getByLabel('Threads as they are'), 'threads dry');
    await keys.press(page.locator('button.tight'));
    await expect
      .poll(() => page.locator('.tightening .refused').textContent())
      .toContain('no sum converts it');
    expect(await states('done').count()).toBe(0);
    await keys.choose(page.getByLabel('Threads as they are'), 'threads oiled');
  });

  it('goes from bolt to bolt by Enter or Space alone, and keeps what is ticked when the page is lost', async () => {
    const keys = keysOf(page);
    await keys.reach(page.locator('button.tight'));
    for (const key of ['Enter', 'Space', 'Enter']) await page.keyboard.press(key);
    await expect.poll(() => states('done').count()).toBe(3);
    expect(await states('next').count()).toBe(1);
    expect(await flawsOf(page)).toEqual([]);
    await page.reload();
    await expect.poll(() => states('done').count()).toBe(3);
  });

  it('notes each stage with one press more, and goes on with the next', async () => {
    const keys = keysOf(page);
    await keys.reach(page.locator('button.tight'));
    for (const stage of [1, 2, 3]) {
      await page.locator(`[data-stage="${stage}"]`).waitFor();
      for (
        let left = await page.locator('.tightening [data-bolt]:not([data-state="done"])').count();
        left > 0;
        left -= 1
      )
        await page.keyboard.press('Enter');
      await expect.poll(() => page.locator('button.tight').textContent()).toBe(`Note stage ${stage} of 3`);
      await page.keyboard.press('Enter');
    }
    await expect.poll(() => page.locator('.tightening').textContent()).toContain('The joint is tight');
    await page.locator('[data-waiting="0"]').waitFor();
    const noted = [...(await storedJob(workshop, jobId)).tightened.values()].flat();
    expect(noted.map(({ stage, bolts }) => [stage, bolts.length])).toEqual([
      [0, 10],
      [1, 10],
      [2, 10],
    ]);
    expect(new Set(noted.map(({ bolts }) => bolts.join(' '))).size).toBe(1);
    expect(troubles).toEqual([]);
  });
});
