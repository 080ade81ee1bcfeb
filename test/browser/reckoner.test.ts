/** @module The reckoner: a sum found, filled by keys, answered as it is typed, refused in words, kept in its address. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { reckonings } from '../../src/reckon/list.ts';
import { type Keys, keysOf } from './by-keys.ts';
import { desk, noBrowser, openBrowser, tablet } from './chromium.ts';
import { openSignedOn } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const soon = <Value>(read: () => Value | Promise<Value>) => expect.poll(read, { timeout: 10_000 });

describe.skipIf(noBrowser)(`the reckoner (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let keys: Keys;
  let troubles: string[];

  beforeAll(async () => {
    workshop = await openWorkshop();
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
    keys = keysOf(page);
    await page.goto(workshop.address);
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  const answer = () => page.getByRole('region', { name: 'Answer' });

  it('is reached from the jobs, and finds a sum by a word of what it gives', async () => {
    await keys.press(page.getByRole('link', { name: 'Reckoner' }));
    await keys.fill(page.getByLabel('Find a sum'), 'dead centre travel');
    await soon(() => page.getByRole('row').count()).toBe(3);
    await keys.press(page.getByRole('link', { name: 'piston-travel' }));
    await page.getByRole('heading', { name: /Piston travel below/ }).waitFor();
  });

  it('answers as soon as it can, with a picture that is drawn to what was typed', async () => {
    await keys.fill(page.getByLabel('stroke: twice'), '80mm');
    await soon(() => answer().textContent()).toContain('needs rod, angle too');
    await keys.fill(page.getByLabel('connecting rod'), '120 mm');
    await keys.fill(page.getByLabel('crank angle from top'), '20deg');
    // recomputed from the slider-crank triangle: 3.195 mm
    await soon(() =>
      answer()
        .getByRole('row', { name: /^travel/ })
        .textContent(),
    ).toContain('3.19');
    const picture = answer().getByRole('img', { name: 'The piston at this crank angle' });
    const before = await picture.innerHTML();
    await keys.fill(page.getByLabel('crank angle from top'), '60deg');
    await soon(() => picture.innerHTML()).not.toBe(before);
  });

  it('names the unit that is wanted where another kind was typed, under the field itself', async () => {
    await keys.fill(page.getByLabel('connecting rod'), '120 kPa');
    await soon(() => page.getByText('kPa', { exact: false }).first().isVisible()).toBe(true);
    const field = page.locator('.field').filter({ has: page.getByLabel('connecting rod') });
    await soon(() => field.textContent()).toContain('mm');
    expect(await page.getByLabel('connecting rod').getAttribute('aria-invalid')).toBe('true');
    await keys.fill(page.getByLabel('connecting rod'), '120 mm');
    await soon(() => page.getByLabel('connecting rod').getAttribute('aria-invalid')).not.toBe('true');
  });

  it('keeps what was typed in its address, so that the sum can be sent and opened again', async () => {
    const kept = page.url();
    expect(kept).toContain('stroke=80mm');
    await page.goto(`${workshop.address}/reckoner`);
    await page.goto(kept);
    await soon(() => page.getByLabel('connecting rod').inputValue()).toBe('120 mm');
    await answer().getByRole('img').waitFor();
  });

  it.each(reckonings.map(({ name }) => name))(
    '%s shows its example with a picture, on a desk and on a tablet',
    async (name) => {
      await page.setViewportSize(desk);
      await page.goto(`${workshop.address}/reckoner/${name}`);
      await page.getByRole('button', { name: 'Fill in an example' }).click();
      await answer().getByRole('img').first().waitFor();
      expect(await answer().getByRole('row').count()).toBeGreaterThan(0);
      await page.setViewportSize(tablet);
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(overflow).toBeLessThanOrEqual(0);
    },
  );

  it('threw nothing at the page', () => {
    expect(troubles).toEqual([]);
  });
});
