/** @module Pumps and valves set at their operations: a pump off by its second spill gets the pack that puts it right; valves one after another. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { awaitingDecisionId } from '../../demo/jobs/awaiting-decision.ts';
import { keysOf } from './by-keys.ts';
import { noBrowser, openBrowser, tablet } from './chromium.ts';
import { flawsOf } from './flaws.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

describe.skipIf(noBrowser)(`pumps and valves set (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  const open = async (operation: string) => {
    await page.goto(`${workshop.address}/jobs/${awaitingDecisionId}/run/${operation}`);
    await page.locator(`article[data-operation="${operation}"]`).waitFor();
  };
  /** What stands in the entry is typed and taken; the entry then asks for the next. */
  const read = async (label: RegExp, text: string) => {
    const input = page.locator('.entry .big input');
    await page.locator('.entry .big label').filter({ hasText: label }).waitFor();
    await input.fill(text);
    await input.press('Enter');
  };

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
    ({ page, troubles } = await openSignedOn(browser, 'Odo Ferrick', 'bench 2', { viewport: tablet }));
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });

  it('fits the packs chosen at the operation that fits the pumps', async () => {
    await open('fit-pumps');
    const keys = keysOf(page);
    for (const place of ['pump.1', 'pump.2', 'pump.3'])
      await keys.press(page.locator(`[data-pump="${place}"] button.first`));
    await page.locator('[data-waiting="0"]').waitFor();
    expect((await storedJob(workshop, awaitingDecisionId)).packs.size).toBe(3);
    expect(await flawsOf(page)).toEqual([]);
  });

  it('reads the second spill pump by pump, and puts right the one that is off', async () => {
    await open('check-spill');
    await read(/fuel pump 1/, '24.1');
    await read(/fuel pump 2/, '27.4');
    await read(/fuel pump 3/, '23.9');
    const off = page.locator('[data-check="pump.2"]');
    await off.locator('xpath=self::*[@data-verdict="outside"]').waitFor();
    expect(await off.textContent()).toContain('3.40° early');
    expect(await flawsOf(page)).toEqual([]);
    await keysOf(page).press(
      off.getByRole('button', { name: /^Fit the pack that puts it right: fuel pump 2/ }),
    );
    await read(/fuel pump 2/, '24.2');
    await page.locator('[data-check="pump.2"][data-verdict="within"]').waitFor();
    await page.locator('[data-waiting="0"]').waitFor();
    const job = await storedJob(workshop, awaitingDecisionId);
    expect(job.packsTried.get('pump.2')?.[0]?.checks[0]?.typed.text).toBe('27.4');
  });

  it('leads from valve to valve, and says which way the adjuster goes', async () => {
    await open('set-valve-clearances');
    await read(/inlet/, '0.45');
    await page.getByText('Turn the adjuster to close it').waitFor();
    expect(await flawsOf(page)).toEqual([]);
    const next = page.locator('[data-valve]').filter({ hasText: 'Next: ' });
    const before = await next.getAttribute('data-valve');
    await read(/inlet/, '0.30');
    await expect.poll(() => next.getAttribute('data-valve')).not.toBe(before);
    expect(troubles).toEqual([]);
  });
});
