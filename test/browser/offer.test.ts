/** @module An offer in the browser: two plans put into it, its link opened by the owner without a script, and what asks again. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import type { OpenJob } from '../../src/job/job.ts';
import { registerNow } from '../../src/store/register-now.ts';
import { type Keys, keysOf } from './by-keys.ts';
import { noBrowser, openBrowser, openPage, tablet } from './chromium.ts';
import { flawsOf } from './flaws.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const jobId = demoJobs[1] ?? '';
/** The bench asks for what is new every ten seconds. */
const patience = { timeout: 25_000 };

describe.skipIf(noBrowser)(`an offer (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let owner: Page;
  let keys: Keys;
  let troubles: string[];
  let link = '';

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser));
    // The owner's browser runs no script at all.
    ({ page: owner } = await openPage(browser, { javaScriptEnabled: false, viewport: tablet }));
    keys = keysOf(page);
    await page.goto(workshop.address);
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  const stored = (): Promise<OpenJob> => storedJob(workshop, jobId);
  const button = (name: string | RegExp) => page.getByRole('button', { name });
  const region = (name: string) => page.getByRole('region', { name, exact: true });
  const linkShown = async (): Promise<string> =>
    /http\S+/.exec((await page.locator('[data-link]').textContent()) ?? '')?.[0] ?? '';

  it('says what the workshop says of itself', async () => {
    await keys.press(page.getByRole('link', { name: 'Workshop', exact: true }));
    const form = page.getByRole('form', { name: 'The workshop' });
    await expect.poll(() => form.getByLabel('Tax 1').inputValue()).toBe('sales tax');
    await keys.fill(form.getByLabel('Rate in % 1'), '119');
    await keys.press(form.getByRole('button', { name: 'Keep this' }));
    await expect.poll(() => form.getByRole('alert').textContent()).toContain('119 % is no rate of tax');
    await keys.fill(form.getByLabel('Rate in % 1'), '8.875');
    await keys.press(form.getByRole('button', { name: 'Put in a tax' }));
    await keys.fill(form.getByLabel('Tax 2'), 'quay due');
    await keys.fill(form.getByLabel('Rate in % 2'), '1,5');
    await keys.press(form.getByRole('button', { name: 'Keep this' }));
    await expect
      .poll(async () => (await registerNow(workshop.store)).workshop?.taxes)
      .toEqual([
        { name: 'sales tax', rate: { text: '8.875', unit: '%' } },
        { name: 'quay due', rate: { text: '1,5', unit: '%' } },
      ]);
    expect(await flawsOf(page)).toEqual([]);
  });

  it('is made of two plans, by keys', async () => {
    await page.goto(`${workshop.address}/jobs/${jobId}/decide`);
    await keys.press(button('Put this plan into the offer'));
    await expect.poll(() => page.locator('[data-drafted]').count()).toBe(1);
    // The same plan is not offered twice.
    expect(await button('Put this plan into the offer').count()).toBe(0);
    await keys.fill(page.getByLabel('Days at most'), '6');
    await keys.enter();
    await keys.press(button('Put this plan into the offer'));
    await keys.fill(page.getByLabel('Plan B is called'), 'ready soonest');
    await keys.fill(page.getByLabel('Hours of labour, plan A'), '16');
    await keys.fill(page.getByLabel('Hours of labour, plan B'), '18.5');
    expect(await flawsOf(page)).toEqual([]);
    await keys.press(button('Make the offer'));
    await page.locator('[data-offer="open"]').waitFor();
    await expect.poll(async () => (await stored()).offers.length).toBe(1);
    const [offer] = (await stored()).offers;
    expect(offer?.plans.map(({ name, title, days }) => [name, title, days])).toMatchObject([
      ['A', 'as wanted', expect.any(Number)],
      ['B', 'ready soonest', 6],
    ]);
    // source: worked by hand: 16 h × 42.00 and 18.5 h × 42.00, beside 180.00 and 95.00
    expect(offer?.plans.map(({ labour }) => labour.reduce((sum, { cents }) => sum + cents, 0))).toEqual([
      18_000 + 9500 + 67_200,
      18_000 + 9500 + 77_700,
    ]);
    expect(await page.locator('.three').textContent()).toContain('have the owner answer offer 1');
    link = await linkShown();
    expect(link).toBe(`${workshop.address}/offer/${jobId}/${offer?.token}`);
    expect(await flawsOf(page)).toEqual([]);
  });

  it('prints', async () => {
    await keys.press(page.locator('summary').filter({ hasText: 'Read or print offer 1' }));
    const paper = page.frameLocator('iframe[title^="Offer 1"]');
    await expect.poll(() => paper.locator('h1').textContent()).toContain('Offer 1 for job J-2');
    expect(await paper.locator('form').count()).toBe(0);
    await owner.goto(`${workshop.address}/jobs/${jobId}/offers/1`);
    const pdf = await owner.pdf({ format: 'A4' });
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('is read and accepted at its link, without a script', async () => {
    await owner.goto(link);
    expect(await owner.locator('h1').textContent()).toContain('Offer 1 for job J-2');
    expect(await owner.getByRole('row').filter({ hasText: 'sales tax 8.875 %' }).count()).toBe(1);
    await owner.getByLabel(/Plan B: ready soonest/).check();
    await owner.getByLabel(/Your name/).fill('Bettany Sallowby');
    await owner.getByRole('button', { name: 'I accept and order this work' }).click();
    await owner.getByRole('status').waitFor();
    expect(await owner.getByRole('status').textContent()).toContain('plan B accepted');
    expect(await owner.getByRole('button').count()).toBe(0);
    expect((await stored()).agreed).toMatchObject({
      name: 'Bettany Sallowby',
      offer: { number: 1, plan: 'B', by: 'link' },
    });
  });

  it('is seen accepted in the job', async () => {
    await expect
      .poll(() => page.locator('[data-agreed="yes"]').textContent(), patience)
      .toContain('Bettany Sallowby agreed, at the link of the offer, to plan B of offer 1');
    expect(await region('Chosen plan').textContent()).toContain('6 days');
    expect(await page.locator('.three').textContent()).toContain('place the order with');
    expect(await region('Offer 1').textContent()).toContain('B: ready soonest ✓ accepted');
    expect(await flawsOf(page)).toEqual([]);
  });

  it('asks again once the shop chooses another plan, and the link says so', async () => {
    await keys.fill(page.getByLabel('Days at most'), '');
    await keys.enter();
    await page.locator('[data-plan]').waitFor();
    await keys.press(button('Choose this plan'));
    await page.locator('[data-agreed="before"]').waitFor();
    expect(await page.locator('[data-agreed="before"]').textContent()).toContain('Ask again.');
    expect(await page.locator('[data-agreed="yes"]').count()).toBe(0);
    await expect.poll(async () => (await stored()).agreedBefore.length).toBe(1);
    expect((await stored()).agreed).toBeUndefined();
    await owner.goto(link);
    expect(await owner.getByRole('status').textContent()).toContain('the shop has chosen a plan anew');
    expect(await owner.getByRole('button').count()).toBe(0);
    expect(troubles).toEqual([]);
  });

  it('is made and answered by touch on a tablet', async () => {
    const touch = await browser.newContext({ viewport: tablet, hasTouch: true, locale: 'en-GB' });
    await touch.addInitScript(() =>
      localStorage.setItem('endfloat who', JSON.stringify({ actor: 'Odo Ferrick', bench: 'bench 2' })),
    );
    const hand = await touch.newPage();
    hand.setDefaultTimeout(15_000);
    await hand.goto(`${workshop.address}/jobs/${jobId}/decide`);
    const tap = (name: string) => hand.getByRole('button', { name, exact: true }).tap();
    await tap('Put this plan into the offer');
    await hand.getByLabel('Days at most').fill('6');
    await tap('Plan anew');
    await tap('Put this plan into the offer');
    await expect.poll(() => hand.locator('[data-drafted]').count()).toBe(2);
    await tap('Make the offer');
    await hand.locator('[data-offer="open"]').waitFor();
    expect(await flawsOf(hand)).toEqual([]);
    await hand.getByLabel('Plan accepted').selectOption('A');
    await hand.getByLabel('How', { exact: true }).fill('by telephone');
    await tap('The owner accepts');
    await expect
      .poll(() => hand.locator('[data-agreed="yes"]').textContent())
      .toContain('by telephone, to plan A of offer 2 (noted by Odo Ferrick');
    await expect
      .poll(async () => (await stored()).agreed?.offer)
      .toEqual({ number: 2, plan: 'A', by: 'note' });
    await touch.close();
  });
});
