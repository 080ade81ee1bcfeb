/** @module Parts find home in the browser: scanned by a scanner that types, by the camera, from a picture; a wrong part stopped. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { keysOf } from './by-keys.ts';
import { noBrowser, openBrowser, tablet } from './chromium.ts';
import { filmOf } from './fake-camera.ts';
import { barriers } from './flaws.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const [, awaiting = ''] = demoJobs;

describe.skipIf(noBrowser)(`parts find home (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-camera-'));
  const sheet = () => page.getByRole('region', { name: 'Parts find home' });
  const refusal = () => page.locator('.refused');
  const stored = () => storedJob(workshop, awaiting);
  /** As a scanner does: the text and its Enter, wherever the keys are. */
  const scan = async (text: string) => {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  };

  beforeAll(async () => {
    const film = join(folder, 'tag.y4m');
    writeFileSync(film, filmOf('J-2/PISTON.3'));
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser([
      '--use-fake-ui-for-media-stream',
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${film}`,
    ]);
    ({ page, troubles } = await openSignedOn(browser, 'Odo Ferrick', 'bench 2', { viewport: tablet }));
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
    rmSync(folder, { recursive: true });
  });

  it('a scan on the Strip sheet shows where the part belongs, and presses no button', async () => {
    await page.goto(`${workshop.address}/jobs/${awaiting}/strip`);
    await page.locator('.three').waitFor();
    await scan('J-2/VALVE.5');
    await page.locator('[data-tag="valve.5"]').waitFor();
    expect(await page.locator('[data-tag="valve.5"] .facts').textContent()).toContain('cylinder 3, 1 of 2');
    expect(await page.locator('[data-tag="valve.5"] [data-here="yes"]').count()).toBe(1);
    await scan('J-3/VALVE.5');
    await expect.poll(() => refusal().textContent()).toContain('this tag is of job J-3, and this is job J-2');
    expect(await barriers(page)).toEqual([]);
  });

  it('the camera reads a tag', async () => {
    await keysOf(page).press(page.getByRole('button', { name: 'Scan with the camera' }));
    await page.locator('[data-tag="piston.3"]').waitFor();
    expect(await page.locator('video').count()).toBe(0);
  });

  it('a picture of a tag is read too, and one without a code says so', async () => {
    await page.goto(`${workshop.address}/jobs/${awaiting}/strip/labels`);
    const label = page.frameLocator('iframe.record').locator('[data-tag="pump.2"]');
    await keysOf(page).press(page.getByText(/^Labels for job J-2, as it prints/));
    const picture = await label.screenshot();
    await page.goto(`${workshop.address}/jobs/${awaiting}/strip/tags`);
    const file = page.getByLabel('A picture of the tag');
    await file.setInputFiles({ name: 'tag.png', mimeType: 'image/png', buffer: picture });
    await page.locator('[data-tag="pump.2"]').waitFor();
    const empty = await page.locator('.three').screenshot();
    await file.setInputFiles({ name: 'bench.png', mimeType: 'image/png', buffer: empty });
    await page.getByText('No code can be read in bench.png').waitFor();
  });

  it('a wrong part at a wrong place is stopped with the right one named, and the right one confirmed', async () => {
    await page.goto(`${workshop.address}/jobs/${awaiting}/build/fit-pistons`);
    await sheet().waitFor();
    expect(await sheet().locator('[data-here]').getAttribute('data-home')).toBe('piston.1');
    await scan('J-2/PISTON.3');
    await expect
      .poll(() => refusal().first().textContent())
      .toContain('piston 3 does not belong at piston 1');
    expect(await refusal().first().textContent()).toContain(
      'take it to cylinder 3; cylinder 1 takes piston 1',
    );
    expect((await stored()).homing).toEqual([]);
    await scan('J-2/PISTON.1');
    await sheet().locator('[data-home="piston.1"][data-state="home"]').waitFor();
    // At another place by choice, its part by the number on the bag.
    const keys = keysOf(page);
    const third = sheet().locator('[data-home="piston.3"]');
    await keys.press(third.getByRole('button'));
    await keys.fill(
      sheet().getByLabel('Tag', { exact: true }),
      (await third.getAttribute('data-number')) ?? '',
    );
    await keys.enter();
    await sheet().locator('[data-home="piston.3"][data-state="home"]').waitFor();
    await page.locator('[data-waiting="0"]').waitFor();
    expect((await stored()).homing).toMatchObject([
      { part: 'piston.1', place: 'piston.1', operation: 'fit-pistons' },
      { part: 'piston.3', place: 'piston.3' },
    ]);
    expect(await barriers(page)).toEqual([]);
  });

  it('parts that were mixed up wait for a named person', async () => {
    const keys = keysOf(page);
    await page.goto(`${workshop.address}/jobs/${awaiting}/strip/tags`);
    await keys.press(page.getByText('A part is lost, its tag is gone, or parts are mixed up'));
    await keys.fill(page.getByLabel('Which tags'), 'valve.1, valve.2');
    await keys.choose(page.getByLabel('What happened'), 'mixed up');
    await keys.fill(page.getByLabel('What is known of it'), 'fell off the rack together');
    await keys.press(page.getByRole('button', { name: 'Note it' }));
    const first = page.locator('[data-strayed="valve.1"]');
    await first.waitFor();
    await keys.choose(first.getByLabel('Where valve 1 goes'), 'cylinder 1, 2 of 2');
    await keys.fill(first.getByLabel('Who decides'), 'Perpetua Sallow');
    await keys.fill(first.getByLabel('By what it was told'), 'seat widths differ');
    await keys.press(first.getByRole('button', { name: /^Decided/ }));
    await first.waitFor({ state: 'detached' });
    expect(troubles).toEqual([]);
  });
});

describe.skipIf(noBrowser)(`a tablet without a camera (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  it('says so, and what to do instead', async () => {
    const workshop = await openWorkshop({ demo: true });
    const browser = await openBrowser();
    try {
      const { page } = await openSignedOn(browser);
      await page.goto(`${workshop.address}/jobs/${awaiting}/strip/tags`);
      await page.getByRole('button', { name: 'Scan with the camera' }).click();
      await page
        .getByRole('alert')
        .getByText(/Choose a picture of the tag|type the number/)
        .waitFor();
    } finally {
      await browser.close();
      await workshop.close();
    }
  });
});
