/** @module A part of an engine overhauled on a tablet's screen to the hand-over: one pump by touch alone, the head by keys alone. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Operation } from '../../src/engine/engine-type.ts';
import { operationsIn } from '../../src/job/scope.ts';
import { toMeasure } from '../../src/job/to-measure.ts';
import { verifyRecord } from '../../src/record/verify.ts';
import { bookedToReach } from '../job/partial.ts';
import { type Keys, keysOf } from './by-keys.ts';
import { touchOf } from './by-touch.ts';
import { noBrowser, openBrowser, tablet } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { soundReadings } from './sound-engine.ts';
import { tightenAll } from './tighten-all.ts';
import { type WorkThrough, workThrough } from './work-through.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const owner = 'W. Heron';

const partJob = (
  what: string,
  reach: readonly string[],
  shut: string,
  handsFor: (page: Page) => Keys,
  context: BrowserContextOptions,
) =>
  describe.skipIf(noBrowser)(`${what} (needs Chromium; ${noBrowser ?? 'here'})`, () => {
    let workshop: Workshop;
    let browser: Browser;
    let page: Page;
    let troubles: string[];
    let jobId = '';
    let keys: Keys;
    let work: WorkThrough;
    let readings: ReadonlyMap<string, string>;
    const stored = () => storedJob(workshop, jobId);
    const allSent = () => page.locator('[data-waiting="0"]').waitFor();
    const button = (name: string | RegExp) => page.getByRole('button', { name });
    const turnTo = async (phase: string) => {
      await keys.press(page.getByRole('navigation').getByRole('link', { name: phase }));
      await page.locator('.three').waitFor();
    };
    const left = async (phases: readonly Operation['phase'][]) => {
      await allSent();
      const job = await stored();
      return operationsIn(job).filter(({ name, phase }) => phases.includes(phase) && !job.done.has(name));
    };
    /** Packs from the box under the pumps that were lifted. */
    const fitPacks = async (sheet: Awaited<ReturnType<WorkThrough['open']>>) => {
      for (const thickness of ['0.10', '0.20', '0.30', '0.50'])
        await keys.fill(page.getByLabel(`${thickness} mm`, { exact: true }), '6');
      await keys.press(button('Note the count'));
      const packs = sheet.locator('[data-pump] button.first');
      for (let waiting = await packs.count(); waiting > 0; waiting -= 1) {
        await keys.press(packs.first());
        await allSent();
      }
    };
    const workOffAll = async (phases: readonly Operation['phase'][]) => {
      for (const operation of await left(phases)) {
        const { name, readAgain } = operation;
        const sheet = await work.open(name);
        if (readAgain) await tightenAll(sheet, keys);
        await work.prove(sheet);
        if ((await sheet.locator('[data-pump]').count()) > 0) await fitPacks(sheet);
        await work.through(name);
      }
    };

    beforeAll(async () => {
      workshop = await openWorkshop();
      const told = bookedToReach(reach);
      jobId = told.id;
      readings = soundReadings(told.job().sheet.engine);
      await workshop.store.append(jobId, 0, told.events());
      browser = await openBrowser();
      ({ page, troubles } = await openSignedOn(browser, 'Odo Ferrick', 'bench 2', {
        viewport: tablet,
        ...context,
      }));
      keys = handsFor(page);
      work = workThrough(page, keys, {
        fitter: 'Odo Ferrick',
        second: 'Perpetua Sallow',
        engine: told.job().sheet.engine.id,
        counts: {},
        readings,
      });
      await page.goto(`${workshop.address}/jobs/${jobId}/strip`);
      await page.locator('.three').waitFor();
    });
    afterAll(async () => {
      await browser?.close();
      await workshop?.close();
    });

    it('comes apart as far as it goes', async () => {
      await workOffAll(['strip']);
      expect(await left(['strip'])).toEqual([]);
    });

    it('is asked only for what was opened, decided and agreed', async () => {
      await turnTo('Measure');
      const entry = page.locator('.entry .big');
      const unread = async () => toMeasure(await stored()).left.length;
      for (let cells = await unread(); cells > 0; cells -= 1) {
        const title = (await entry.locator('label').textContent()) ?? '';
        expect(title).not.toContain(shut);
        await keys.reach(entry.locator('input'));
        await keys.type(readings.get(title) ?? '');
        await keys.enter();
        await expect.poll(unread).toBe(cells - 1);
      }
      await turnTo('Decide');
      await page.locator('[data-plan]').waitFor({ timeout: 30_000 });
      await keys.press(button('Choose this plan'));
      await keys.fill(page.getByLabel('How', { exact: true }), 'by telephone');
      await keys.enter();
      await page.locator('[data-agreed]').waitFor();
    });

    it('goes together, is set and started', async () => {
      await turnTo('Build');
      await workOffAll(['build']);
      await turnTo('Run');
      await workOffAll(['set', 'run']);
      expect(await left(['strip', 'build', 'set', 'run'])).toEqual([]);
    });

    it('is handed over with a record that verifies and says what was not opened', async () => {
      await turnTo('Run');
      for (const [label, text] of [
        ['Speed', '1500'],
        ['Load', '50'],
        ['Minutes', '30'],
      ] as const)
        await keys.fill(page.getByLabel(label, { exact: true }), text);
      await keys.press(button('Log this step'));
      await turnTo('Hand over');
      await keys.fill(page.getByLabel('Handed over to', { exact: true }), owner);
      await keys.press(button('Hand over'));
      await expect.poll(async () => (await stored()).handedOver?.to).toBe(owner);
      const record = (await page.locator('iframe.record').getAttribute('srcdoc')) ?? '';
      expect(verifyRecord(record)).toMatchObject({ kind: 'verified' });
      expect(record).toMatch(/not opened, not measured and not judged/i);
      expect(troubles).toEqual([]);
    });
  });

partJob('one pump by touch alone', ['pump.2'], 'main journal', touchOf, { hasTouch: true });
partJob('the head by keys alone', ['head'], 'main journal', keysOf, {});
