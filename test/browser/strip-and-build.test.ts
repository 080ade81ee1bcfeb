/** @module An engine stripped from first screw to last and built again on a tablet's screen: once by keys alone, once by touch alone. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { keysOf } from './by-keys.ts';
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

describe.skipIf(noBrowser)(`an engine on a tablet (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  describe.each([
    ['by keys alone', keysOf, {}],
    ['by touch alone', touchOf, { hasTouch: true }],
  ] as const)('is stripped and built %s', (_, handsFor, context) => {
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

    it('comes apart from first screw to last', async () => {
      await turnTo('strip');
      for (const { name } of operations.filter(({ phase }) => phase === 'strip')) await work.through(name);
      await allSent();
      const { done } = await stored();
      expect(operations.filter(({ phase, name }) => phase === 'strip' && !done.has(name))).toEqual([]);
    });

    it('goes together again, each part of it proved before it is hidden', async () => {
      await measureSound(workshop.store, jobId);
      await turnTo('build');
      for (const { name } of operations.filter(({ phase }) => phase === 'build')) await work.through(name);
      await allSent();
      expect((await stored()).done.size).toBe(
        operations.filter(({ phase }) => phase === 'strip' || phase === 'build').length,
      );
      expect(troubles).toEqual([]);
    });
  });
});
