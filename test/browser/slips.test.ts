/** @module The slips looked for, by keys alone: one set for the shop, taken by a job at booking in, brought to another. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { registerNow } from '../../src/store/register-now.ts';
import { type Keys, keysOf } from './by-keys.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const soon = <Value>(read: () => Value | Promise<Value>) => expect.poll(read, { timeout: 10_000 });

describe.skipIf(noBrowser)(`the slips looked for (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let keys: Keys;
  let troubles: string[];

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
    keys = keysOf(page);
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  const row = () =>
    page.getByRole('row').filter({ has: page.getByRole('rowheader', { name: 'thimble turn' }) });

  it('are reached from the instruments, and one is set with a reason', async () => {
    await page.goto(`${workshop.address}/instruments`);
    await keys.press(page.getByRole('link', { name: 'Slips looked for' }));
    await row().waitFor();
    expect(await row().textContent()).toContain('once in 67 readings');
    await keys.press(page.locator('summary').filter({ hasText: 'Change thimble turn' }));
    const form = page.getByRole('form', { name: 'How often: thimble turn' });
    await keys.fill(form.getByLabel('Once in so many readings'), '2');
    await keys.fill(form.getByLabel('Why'), 'an apprentice');
    await keys.press(form.getByRole('button', { name: 'Set it' }));
    await soon(() => form.getByRole('alert').textContent()).toContain('give a number from 4 to 1000000');
    await keys.fill(form.getByLabel('Once in so many readings'), '20');
    await keys.press(form.getByRole('button', { name: 'Set it' }));
    await soon(() => row().textContent()).toContain('once in 20 readings: an apprentice');
    expect((await registerNow(workshop.store)).slipChances).toMatchObject([
      { by: 'Odo Ferrick', fact: { slip: 'thimble turn', onceIn: 20 } },
    ]);
  });

  it('are brought to a job that was booked in before', async () => {
    const [job = ''] = demoJobs;
    await page.goto(`${workshop.address}/jobs/${job}/book-in`);
    const part = page.getByRole('region', { name: 'Slips looked for' });
    await soon(() => part.textContent()).toContain(
      'By now the workshop has thimble turn once in 20 readings.',
    );
    await keys.press(part.getByRole('button', { name: 'Bring the workshop’s to this job' }));
    await soon(() => part.textContent()).toContain(
      'thimble turn: once in 20 readings, usually once in 67 readings',
    );
    await soon(async () => (await storedJob(workshop, job)).slipChances).toEqual([
      { slip: 'thimble turn', onceIn: 20 },
    ]);
    expect(troubles).toEqual([]);
  });

  it('go with an engine that is booked in', async () => {
    await page.goto(`${workshop.address}/book-in`);
    await page.getByLabel('Engine type').selectOption({ index: 1 });
    for (const [label, text] of [
      ['Job number', 'J-70'],
      ['Owner', 'Tilling Pumps'],
      ['Hours run', '3000'],
      ['Complaint', 'knocks'],
    ] as const)
      await page.getByLabel(label, { exact: true }).fill(text);
    await page.getByRole('button', { name: 'Book in' }).click();
    await page.waitForURL(/\/strip$/);
    const id = new URL(page.url()).pathname.split('/')[2] ?? '';
    await soon(async () => (await workshop.store.readFrom(id, 0)).length).toBe(2);
    expect((await storedJob(workshop, id)).slipChances).toEqual([{ slip: 'thimble turn', onceIn: 20 }]);
    expect(troubles).toEqual([]);
  });
});
