/** @module The engine's map asked how a place is reached: by touch on the tablet, by keys, in a job that does not go so far. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { bookedToReach } from '../job/partial.ts';
import { keysOf } from './by-keys.ts';
import { touchOf } from './by-touch.ts';
import { desk, noBrowser, openBrowser, tablet } from './chromium.ts';
import { flawsOf } from './flaws.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const soon = <Value>(read: () => Value | Promise<Value>) => expect.poll(read, { timeout: 10_000 });

describe.skipIf(noBrowser)(`the way to a place (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  const place = (id: string) => page.locator(`.map-column [data-place="${id}"]`);
  const answer = () => page.locator('[data-place-asked]');
  const steps = () => answer().locator('.way > li');

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  it('is told by a tap: each step with how it stands, lit on the map, what is known there', async () => {
    ({ page, troubles } = await openSignedOn(browser, 'Odo Ferrick', 'bench 2', {
      viewport: tablet,
      hasTouch: true,
    }));
    const hands = touchOf(page);
    await page.goto(`${workshop.address}/jobs/${demoJobs[0]}/strip`);
    await page.locator('.three').waitFor();
    const size = await place('main.2').locator('rect').first().boundingBox();
    expect(Math.min(size?.width ?? 0, size?.height ?? 0)).toBeGreaterThanOrEqual(47.5);
    await place('main.2').locator('rect').first().tap();
    await answer().waitFor();
    await soon(() => answer().getByRole('heading', { level: 2 }).textContent()).toBe('main bearing 2');
    await soon(() =>
      answer()
        .getByRole('heading', { level: 2 })
        .evaluate((one) => one === document.activeElement),
    ).toBe(true);
    expect(await steps().count()).toBe(13);
    expect(await steps().last().getAttribute('data-step')).toBe('lift-crankshaft');
    expect(await answer().textContent()).toContain('main journal diameter');
    expect(await answer().textContent()).toContain('Belongs to');
    expect(await place('head.1').getAttribute('aria-label')).toMatch(/at step \d+/);
    expect(await place('valve.1').getAttribute('aria-label')).not.toContain('step');
    expect(await flawsOf(page)).toEqual([]);
    await hands.press(steps().last().getByRole('link'));
    await page.locator('article[data-operation="lift-crankshaft"]').waitFor();
    await page.getByText('On the way to main bearing 2').waitFor();
    expect(await place('head.1').getAttribute('aria-label')).toMatch(/at step \d+/);
    await hands.press(page.getByRole('button', { name: 'Put it away' }));
    await soon(() => place('head.1').getAttribute('aria-label')).not.toContain('step');
    expect(troubles).toEqual([]);
    await page.context().close();
  });

  it('is told by keys, and a job that does not go so far is had to go there', async () => {
    const told = bookedToReach(['pump.2'], 'J-91');
    const job = told.job().head.event?.job ?? '';
    await workshop.store.append(job, 0, told.events());
    ({ page, troubles } = await openSignedOn(browser, 'Odo Ferrick', 'bench 2', { viewport: desk }));
    const keys = keysOf(page);
    await page.goto(`${workshop.address}/jobs/${job}/strip`);
    await page.locator('.three').waitFor();
    await keys.reach(page.locator('.map-column [data-place][tabindex="0"]'));
    const at = () => page.evaluate(() => document.activeElement?.getAttribute('data-place'));
    const goTo = async (id: string) => {
      for (let moves = 0; (await at()) !== id && moves < 60; moves += 1)
        await page.keyboard.press('ArrowRight');
      await keys.enter();
    };
    await goTo('injector.1');
    await answer().getByText('This job does not go so far.').waitFor();
    await keys.press(answer().getByText('Have the job go so far', { exact: true }));
    await keys.fill(answer().getByLabel('Why it goes further'), 'the tip is blued');
    expect(await flawsOf(page)).toEqual([]);
    await keys.enter();
    await answer().locator('[data-beyond]').waitFor({ state: 'detached' });
    await page.locator('[data-waiting="0"]').waitFor();
    expect((await storedJob(workshop, job)).scopes.at(-1)?.reach).toEqual(['pump.2', 'injector.1']);
    await keys.press(answer().getByRole('button', { name: 'Back to the map' }));
    await answer().waitFor({ state: 'detached' });
    expect(await at()).toBe('injector.1');
    await goTo('pump.2');
    await keys.press(answer().getByRole('button', { name: /^Read it/ }));
    await page.locator('.entry').waitFor();
    await keys.press(page.getByRole('button', { name: 'What has to come off to reach it' }));
    await soon(() => answer().getByRole('heading', { level: 2 }).textContent()).toBe('fuel pump 2');
    expect(troubles).toEqual([]);
    await page.context().close();
  });
});
