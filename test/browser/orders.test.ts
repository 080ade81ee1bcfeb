/** @module Orders in the browser by keys alone: placed, the machine shop told, received, measured; one fails and is planned anew. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decided } from '../../demo/jobs/finished.ts';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { orderedLines } from '../../src/job/order/standing.ts';
import type { Reading } from '../../src/measure/reading.ts';
import { highsSolver } from '../../src/solver/highs.ts';
import { handsOf } from './bench-hands.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, readingsOf, smallEngineText, type Workshop } from './workshop.ts';

const { engine } = readEngineType(smallEngineText);
if (!engine) throw new Error('the engine type for this test has errors');
const built = [...readingsOf('readings/mudlark-built.csv', engine).values()];

/** The barrel bored too wide: within its wear limit, and not as ordered. */
const boredWide = (reading: Reading): Reading =>
  reading.cell.characteristic === 'bore-diameter'
    ? { ...reading, typed: { ...reading.typed, text: '78.529' } }
    : reading;

describe.skipIf(noBrowser)(`orders by keyboard (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  let jobId = '';
  const hands = () => handsOf(page, engine);
  const stored = () => storedJob(workshop, jobId);
  const allSent = () => page.locator('[data-waiting="0"]').waitFor();
  const turnTo = async (sheet: string) => {
    await hands().keys.press(
      page.getByRole('navigation', { name: 'Sheets of deciding' }).getByRole('link', { name: sheet }),
    );
    await page.locator('.three').waitFor();
  };
  const button = (name: string) => page.getByRole('button', { name, exact: true });

  beforeAll(async () => {
    workshop = await openWorkshop();
    const job = await decided(await highsSolver());
    jobId = job.id;
    for (const { picture, bytes } of job.pictures()) await workshop.store.putPicture(picture.hash, bytes);
    await workshop.store.append(jobId, 0, job.events());
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
    await page.goto(`${workshop.address}/jobs/${jobId}/decide`);
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  it('are placed supplier by supplier', async () => {
    const { keys } = hands();
    await turnTo('Orders');
    for (let left = 3; left > 0; left -= 1) {
      await expect.poll(() => button('The order is placed').count()).toBe(left);
      await keys.press(button('The order is placed').first());
    }
    await expect.poll(() => page.locator('[data-order]').count()).toBe(3);
    await allSent();
    const { orders } = await stored();
    expect([...orders.keys()]).toEqual(['J-3/1', 'J-3/2', 'J-3/3']);
    expect([...orders.values()].map(({ supplier }) => supplier)).toEqual([
      'Tump Lane Engine Parts',
      "Pellow's Boring Mill",
      'Sprayhope Fuel Injection',
    ]);
  });

  it('tell the machine shop each place from measured to finished, and print', async () => {
    const { keys } = hands();
    await turnTo('Machine shop');
    // source: 78.500 / 25.4 = 3.090551…, 78.520 / 25.4 = 3.091338…, rounded inwards by hand
    await expect.poll(() => page.locator('main').textContent()).toContain('3.0906 in to 3.0913 in');
    await keys.press(page.locator('summary').first());
    const frame = page.frameLocator('iframe.record');
    expect(await frame.locator('body').textContent()).toContain('Machine shop’s instruction');
    await frame.locator('body').evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', 'yes');
    });
    await keys.press(button('Print it'));
    await expect.poll(() => frame.locator('body').getAttribute('data-printed')).toBe('yes');
  });

  it('are counted in', async () => {
    const { keys } = hands();
    await turnTo('Receiving');
    for (let left = 3; left > 0; left -= 1) {
      await expect.poll(() => button('Take the delivery in').count()).toBe(left);
      await keys.press(button('Take the delivery in').first());
    }
    await expect.poll(() => button('Take the delivery in').count()).toBe(0);
    await expect.poll(() => page.locator('[data-standing="taken in"]').count()).toBe(10);
    await keys.fill(page.getByLabel('Certificate number'), 'PBM 914');
    await keys.choose(page.getByLabel('Crack test by pressure showed'), 'no');
    await keys.press(button('Note the certificate'));
    await expect.poll(() => page.getByLabel('Certificate number').count()).toBe(0);
  });

  it('are measured one figure at a time, by the limits of what was ordered', async () => {
    const { keys, readCells } = hands();
    const order = ['big-end-shell-bore', 'piston-diameter', 'ring-gap', 'bore-diameter'];
    const readings = order.flatMap((name) => built.filter(({ cell }) => cell.characteristic === name));
    await keys.reach(page.locator('.entry .big input'));
    await readCells(readings.map(boredWide));
    const verdict = page.getByRole('region', { name: 'Verdict of the last reading' });
    await expect.poll(() => verdict.getAttribute('data-verdict')).toBe('outside');
    expect(await verdict.textContent()).toContain('sure that it is as ordered');
    await allSent();
    const standings = orderedLines(await stored()).map(({ line, standing }) => [
      line.component,
      standing.kind,
    ]);
    expect(standings.filter(([, kind]) => kind !== 'taken in')).toEqual([['bores', 'failed']]);
    await page.locator('[data-failed="1"]').waitFor();
    expect(await page.locator('[data-standing="failed"]').textContent()).toMatch(
      /not as ordered: barrel bore at cylinder barrel is 78\.5\d\d mm ± .*, ordered 78\.500 mm to 78\.520 mm/,
    );
  });

  it('go back into the plan where they fail', async () => {
    const { keys } = hands();
    await keys.press(page.getByRole('link', { name: 'Plan again' }));
    await page.locator('[data-plan]').waitFor({ timeout: 30_000 });
    await keys.press(page.getByRole('button', { name: 'Choose this plan' }));
    await allSent();
    const { plan, agreed } = await stored();
    expect(agreed).toBeUndefined();
    expect(plan?.choices.find(({ slot }) => slot === 'bores')?.option).toBe(
      'bores:replace:standard:Tump Lane Engine Parts',
    );
    await turnTo('Orders');
    await expect.poll(() => page.locator('main').textContent()).toContain('cylinder barrel: new, standard');
    expect(await button('The order is placed').isDisabled()).toBe(true);
  });

  it('leave nothing on the console', () => {
    expect(troubles).toEqual([]);
  });
});
