/** @module Every sheet of the app at both sizes: no barrier that axe finds, nothing wider than the screen, big targets. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { desk, noBrowser, openBrowser, openPage, tablet } from './chromium.ts';
import { flawsOf, withShortTables } from './flaws.ts';
import { openSignedOn } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const phases = ['book-in', 'strip', 'measure', 'decide', 'build', 'run', 'hand-over'];
/** What each of the demo's jobs shows that the others do not; the second one shows every sheet. */
const stories = [
  ['half measured', ['strip', 'measure', 'build']],
  ['awaiting a decision', phases],
  [
    'finished',
    ['measure', 'decide', 'decide/orders', 'decide/machine-shop', 'decide/receiving', 'run', 'hand-over'],
  ],
] as const;

describe.skipIf(noBrowser)(`every sheet (needs Chromium; ${noBrowser ?? 'here'})`, () => {
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

  const unfold = async () => {
    for (const summary of await page.locator('summary').all()) await summary.click();
  };
  const looksRight = async () => expect(await flawsOf(page)).toEqual([]);

  for (const [size, viewport] of [
    ['1280 × 800', desk],
    ['768 × 1024', tablet],
  ] as const) {
    it(`jobs and booking in, ${size}`, async () => {
      await page.setViewportSize(viewport);
      await page.goto(workshop.address);
      await page.getByRole('link', { name: 'J-1' }).waitFor();
      await looksRight();
      await page.goto(`${workshop.address}/book-in`);
      await page.getByLabel('Engine type').waitFor();
      await looksRight();
    });

    it(`the slips looked for, with a form unfolded, ${size}`, async () => {
      await page.setViewportSize(viewport);
      await page.goto(`${workshop.address}/slips`);
      await page.locator('summary').filter({ hasText: 'Change thimble turn' }).click();
      await page.getByRole('form', { name: 'How often: thimble turn' }).waitFor();
      await looksRight();
    });

    it(`the register of instruments and one with everything unfolded, ${size}`, async () => {
      await page.setViewportSize(viewport);
      await page.goto(`${workshop.address}/instruments`);
      await page.getByRole('link', { name: 'depth-0-100' }).waitFor();
      await unfold();
      await looksRight();
      await page.goto(`${workshop.address}/instruments/depth-0-100`);
      await page.getByRole('region', { name: 'In question: depth-0-100' }).waitFor();
      await unfold();
      await looksRight();
    });

    for (const [at, [story, sheets]] of stories.entries()) {
      if (viewport === tablet && story !== 'awaiting a decision') continue;
      for (const phase of sheets)
        it(`${phase} of a job ${story}, ${size}`, async () => {
          await page.setViewportSize(viewport);
          await page.goto(`${workshop.address}/jobs/${demoJobs[at]}/${phase}`);
          await page.locator('.three').waitFor();
          if (phase === 'decide') await page.locator('[data-plan]').waitFor();
          // What is folded away is looked at too, and on the tablet the sheet as it opens.
          if (viewport === desk && story === 'awaiting a decision') await unfold();
          await looksRight();
        });
    }
  }

  for (const [at, story] of [
    [1, 'awaiting a decision'],
    [2, 'finished'],
  ] as const)
    it(`the record by itself of a job ${story}`, async () => {
      await page.setViewportSize(desk);
      await page.goto(`${workshop.address}/jobs/${demoJobs[at]}/record`);
      await page.locator('h1').waitFor();
      await withShortTables(page);
      await looksRight();
    });

  it('asks who is at the bench before anything else', async () => {
    const stranger = await openPage(browser);
    await stranger.page.goto(workshop.address);
    await stranger.page.getByLabel('Your name').waitFor();
    expect(await flawsOf(stranger.page)).toEqual([]);
    await stranger.page.context().close();
  });

  it('names what looks wrong in the half measured job: a thimble turn and two swapped shim packs', async () => {
    await page.goto(`${workshop.address}/jobs/${demoJobs[0]}/measure`);
    const doubts = page.getByRole('region', { name: 'Doubts' });
    await expect.poll(() => doubts.textContent()).toContain('thimble');
    expect(await doubts.textContent()).toContain('swapped');
  });

  it('says of an address that is nothing that it is nothing', async () => {
    await page.goto(`${workshop.address}/jobs/no-such-job/measure`);
    await expect.poll(() => page.locator('main').textContent()).toContain('no such job');
    await page.goto(`${workshop.address}/nowhere`);
    await expect.poll(() => page.locator('main').textContent()).toContain('Nothing stands');
    expect(troubles).toEqual([]);
  });
});
