/** @module The register of instruments by keys alone: how each stands, a check noted, what it puts in question. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { registerId } from '../../src/register/event.ts';
import { registerNow } from '../../src/store/register-now.ts';
import { entry } from './bench-hands.ts';
import { type Keys, keysOf } from './by-keys.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { openSignedOn } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

/** On a machine that does much else, a page may take its time. */
const soon = <Value>(read: () => Value | Promise<Value>) => expect.poll(read, { timeout: 10_000 });

describe.skipIf(noBrowser)(`the register of instruments (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let keys: Keys;
  let troubles: string[];

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
    // What is due depends on the day: a Monday after the demo's jobs were begun.
    await page.clock.setFixedTime('2026-11-02T08:00:00Z');
    keys = keysOf(page);
    await page.goto(workshop.address);
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  const row = (name: string) => page.getByRole('row').filter({ has: page.getByRole('link', { name }) });
  const form = (name: string) => page.getByRole('form', { name });
  const toTheList = async () => {
    await keys.press(page.getByRole('link', { name: 'All instruments' }));
    await row('mic-50-75').waitFor();
  };

  it('is reached from the jobs, and says of each instrument how it stands', async () => {
    await keys.press(page.getByRole('link', { name: 'Instruments' }));
    await row('depth-0-100').waitFor();
    await soon(() => row('depth-0-100').textContent()).toContain('3 in question in J-1');
    expect(await row('depth-0-100').textContent()).toContain('was due for calibration by 2026-10-13');
    expect(await row('ring-80').textContent()).not.toContain('in question');
  });

  it('names the readings that were taken with the one whose certificate had run out', async () => {
    await keys.press(page.getByRole('link', { name: 'depth-0-100' }));
    const questions = page.getByRole('region', { name: 'In question: depth-0-100' });
    await questions.waitFor();
    expect(await questions.textContent()).toContain('fuel pump 1, depth from the pump pad');
    expect(await questions.getByRole('link', { name: 'J-1' }).getAttribute('href')).toContain('/measure');
    await toTheList();
  });

  it('takes a check, says at once whether it is good, and what a bad one puts in question', async () => {
    await keys.press(page.getByRole('link', { name: 'mic-50-75' }));
    const check = form('Note a check');
    await keys.choose(check.getByLabel('Held against', { exact: true }), 'something else');
    await keys.fill(check.getByLabel('What it was held against', { exact: true }), 'bar-50');
    await keys.fill(check.getByLabel('It showed'), '50.003');
    await keys.fill(check.getByLabel('Size of what it was held against'), '50.000');
    await soon(() => check.getByRole('status').textContent()).toBe(
      '0.003 mm off, allowed ± 0.004 mm: ✓ good',
    );
    await keys.fill(check.getByLabel('It showed'), '50,012');
    await soon(() => check.getByRole('status').textContent()).toBe(
      '0.012 mm off, allowed ± 0.004 mm: ✕ not good',
    );
    await keys.press(check.getByRole('button', { name: 'Note the check' }));
    const stands = page.getByRole('region', { name: 'How it stands' });
    await soon(() => stands.textContent()).toContain('was out of tolerance when it was last checked');
    const questions = page.getByRole('region', { name: 'In question: mic-50-75' });
    await soon(() => questions.textContent()).toContain('main bearing 4, main journal diameter');
    const events = await workshop.store.register.readFrom(registerId, 0);
    expect(events.at(-1)).toMatchObject({
      actor: 'Odo Ferrick',
      fact: {
        kind: 'instrument checked',
        against: 'bar-50',
        showed: { text: '50,012', unit: 'mm' },
        good: false,
      },
    });
  });

  it('strikes out a check that was written down wrongly, and keeps it in sight', async () => {
    await keys.press(page.locator('summary').filter({ hasText: 'Strike out' }).first());
    await keys.fill(page.getByLabel('Why it does not count'), 'another micrometer was in the hand');
    await keys.press(
      page.getByRole('form', { name: /^Strike out: / }).getByRole('button', { name: 'Strike out' }),
    );
    const history = page.getByRole('region', { name: 'History' });
    await soon(() => history.textContent()).toContain('struck out by Odo Ferrick: another micrometer');
    await soon(() => page.getByRole('region', { name: 'How it stands' }).textContent()).toContain(
      'Nothing speaks against it',
    );
    await toTheList();
  });

  it('enters an instrument with what is usual for its kind, and refuses what makes no sense in words', async () => {
    await keys.press(page.locator('summary').filter({ hasText: 'Enter an instrument' }));
    const enter = form('Enter an instrument');
    await keys.fill(enter.getByLabel('Its number on the bench'), 'mic-100-125');
    await keys.fill(enter.getByLabel('Range from'), '125');
    await keys.fill(enter.getByLabel('Range to'), '100');
    await keys.press(enter.getByRole('button', { name: /usual for its kind/ }));
    await keys.press(enter.getByRole('button', { name: 'Enter it in the register' }));
    await soon(() => enter.getByRole('alert').textContent()).toContain('its range ends before it begins');
    await keys.fill(enter.getByLabel('Range from'), '100');
    await keys.fill(enter.getByLabel('Range to'), '125');
    await keys.press(enter.getByRole('button', { name: 'Enter it in the register' }));
    await soon(() => row('mic-100-125').count()).toBe(1);
    expect(await row('mic-100-125').textContent()).toContain('was never checked');
    const entered = (await registerNow(workshop.store)).instruments.get('mic-100-125')?.instrument;
    expect(entered).toMatchObject({ kind: 'outside micrometer', turn: { text: '0.5', unit: 'mm' } });
  });

  it('is heard where a reading is taken: the overdue instrument is cautioned of, and read with all the same', async () => {
    await page.goto(`${workshop.address}/jobs/${demoJobs[0]}/measure`);
    await page.locator(entry).waitFor();
    await page.locator('[data-place="pump.1"]').first().focus();
    await keys.enter();
    await keys.press(page.locator('.cell-button').filter({ hasText: '82.31' }));
    await page
      .locator('.entry')
      .getByLabel(/depth from the pump pad/)
      .waitFor();
    await soon(() => page.locator('.entry .caution').textContent()).toContain(
      'depth-0-100 was due for calibration by 2026-10-13',
    );
    await page.locator(entry).focus();
    await keys.type('82.31');
    await keys.enter();
    await soon(() => page.locator('[data-verdict]').textContent()).toContain('82.31');
    await page.goto(`${workshop.address}/instruments`);
    await row('depth-0-100').waitFor();
  });

  it('lifts the question when the overdue instrument is calibrated and was found good', async () => {
    await keys.press(page.getByRole('link', { name: 'depth-0-100' }));
    await keys.press(page.locator('summary').filter({ hasText: 'Note a calibration' }));
    const calibrate = form('Note a calibration');
    await keys.fill(calibrate.getByLabel('Certificate'), 'C-31');
    await keys.fill(calibrate.getByLabel('Calibrated on'), '2026-11-02');
    await keys.fill(calibrate.getByLabel('Due on'), '2099-12-31');
    await keys.press(calibrate.getByRole('button', { name: 'Note the calibration' }));
    const stands = page.getByRole('region', { name: 'How it stands' });
    await soon(() => stands.textContent()).toContain('due 2099-12-31');
    await soon(() => page.getByRole('region', { name: /^In question/ }).count()).toBe(0);
    expect(troubles).toEqual([]);
  });

  it('keeps what was typed when the store does not answer, and counts it once when it does again', async () => {
    await toTheList();
    await keys.press(page.getByRole('link', { name: 'dial-0-1', exact: true }));
    const check = form('Note a check');
    await keys.fill(check.getByLabel('It showed'), '0.001');
    await workshop.stopServer();
    await keys.press(check.getByRole('button', { name: 'Note the check' }));
    await soon(() => check.getByRole('alert').textContent()).toContain('does not answer');
    expect(await check.getByLabel('It showed').inputValue()).toBe('0.001');
    const before = (await workshop.store.register.readFrom(registerId, 0)).length;
    await workshop.startServer();
    await keys.press(check.getByRole('button', { name: 'Note the check' }));
    await soon(async () => (await workshop.store.register.readFrom(registerId, 0)).length).toBe(before + 1);
    await soon(() => check.getByLabel('It showed').inputValue()).toBe('');
  });
});
