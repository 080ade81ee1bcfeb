/** @module An engine stripped from first screw to last and built again on a tablet's screen: once by keys alone, once by touch alone. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { type Keys, keysOf } from './by-keys.ts';
import { touchOf } from './by-touch.ts';
import { noBrowser, openBrowser, tablet } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { bookSound, measureSound, soundReadings } from './sound-engine.ts';
import { type WorkThrough, workThrough } from './work-through.ts';
import { engineText, openWorkshop, type Workshop } from './workshop.ts';

const { engine } = readEngineType(engineText);
if (!engine) throw new Error('the engine type for this test has errors');
const operations = [...engine.operations.values()];

const bench = {
  fitter: 'Odo Ferrick',
  second: 'Perpetua Sallow',
  engine: engine.id,
  counts: { 'plugs-out': '7', 'plugs-in': '7' },
  readings: soundReadings(engine),
};

const stripAndBuild = (how: string, handsFor: (page: Page) => Keys, context: BrowserContextOptions) =>
  describe.skipIf(noBrowser)(`stripped and built ${how} (needs Chromium; ${noBrowser ?? 'here'})`, () => {
    let workshop: Workshop;
    let browser: Browser;
    let page: Page;
    let troubles: string[];
    let jobId = '';
    let work: WorkThrough;
    const stored = () => storedJob(workshop, jobId);
    const allSent = () => page.locator('[data-waiting="0"]').waitFor();
    const turnTo = async (slug: string) => {
      await page.goto(`${workshop.address}/jobs/${jobId}/${slug}`);
      await page.locator('.three').waitFor();
    };

    beforeAll(async () => {
      workshop = await openWorkshop();
      jobId = await bookSound(workshop.store, 'J-60');
      browser = await openBrowser();
      ({ page, troubles } = await openSignedOn(browser, bench.fitter, 'bench 2', {
        viewport: tablet,
        ...context,
      }));
      work = workThrough(page, handsFor(page), bench);
    });
    afterAll(async () => {
      await browser?.close();
      await workshop?.close();
    });

    it('comes apart from first screw to last, out of order where a named person answers for it', async () => {
      await turnTo('strip');
      const strip = operations.filter(({ phase }) => phase === 'strip');
      for (const { name } of strip) {
        if (name === 'draw-injectors') {
          const head = await work.open('lift-head');
          // The order of work may be overruled, what is worth knowing as found may not.
          await work.answer(head);
          expect(await head.locator('.lacking').textContent()).toContain('the nozzle tips stand below');
          await work.overrule(head, 'Perpetua Sallow', 'the injectors are seized, and scrap');
        }
        if (name === 'open-shim-packs') {
          const packs = await work.open(name);
          await work.write(packs, 'pack pump.2', 'lost: it came off before the engine was here');
        }
        if (name !== 'lift-head' || !(await stored()).done.has(name)) await work.through(name);
      }
      await allSent();
      const { done, answers } = await stored();
      expect(strip.filter(({ name }) => !done.has(name))).toEqual([]);
      expect(done.get('lift-head')?.overruled).toMatchObject({ by: 'Perpetua Sallow' });
      expect(answers.get('open-shim-packs|pack|pump.2')?.says).toContain('lost');
    });

    it('goes together again, each part of it proved before it is hidden', async () => {
      await measureSound(workshop.store, jobId);
      await turnTo('build');
      for (const { name } of operations.filter(({ phase }) => phase === 'build')) {
        const sheet = await work.open(name);
        if (name === 'close-galleries') {
          await work.write(sheet, 'plugs-in', '6');
          expect(await sheet.locator('.lacking').textContent()).toContain('6 counted here, 7 at');
          await work.write(sheet, 'plugs-in', '7');
        }
        if (name === 'fit-pistons') {
          await work.scan(sheet, 'piston.2');
          expect(await sheet.getByRole('alert').allTextContents()).toContainEqual(
            expect.stringContaining('piston 1'),
          );
          expect(await sheet.locator('[data-home="piston.2"]').getAttribute('data-state')).not.toBe('home');
        }
        if (name === 'close-timing-case') {
          const held = sheet.locator('.lacking > li', { hasText: 'timing gear backlash' });
          // As found it says nothing of the gears as they are fitted.
          expect(await held.textContent()).toContain('read it again as it is built');
          await work.read(sheet, held, '0.50');
          expect(await held.textContent()).toContain('outside its limits');
          expect(await sheet.locator('.sign button.first').count()).toBe(0);
          await work.read(sheet, held, '0.12');
        }
        await work.through(name);
      }
      await allSent();
      expect((await stored()).done.size).toBe(
        operations.filter(({ phase }) => phase === 'strip' || phase === 'build').length,
      );
      expect(troubles).toEqual([]);
    });
  });

stripAndBuild('by keys alone', keysOf, {});
stripAndBuild('by touch alone', touchOf, { hasTouch: true });
