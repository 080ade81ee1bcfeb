/** @module The full measuring sheet of a six-cylinder engine, by somebody new, by keys alone: every verdict is seen. */
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bareFigure, shownIn } from '../../src/engine/shown-in.ts';
import { cellTitle } from '../../src/job/cell-title.ts';
import { replay } from '../../src/job/evolve.ts';
import { judgeAll, judgeCell } from '../../src/measure/judge.ts';
import { type Cell, cellKey } from '../../src/measure/reading.ts';
import { entryOrder } from '../../src/measure/scheme.ts';
import { brambleholt, brambleholtText } from '../engines/demo-engines.ts';
import { entry, handsOf } from './bench-hands.ts';
import { noBrowser, openBrowser, openPage } from './chromium.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const engine = brambleholt();
const order = entryOrder(engine);

/** A run of chances from a fixed seed, so that a figure that fails fails again (mulberry32). */
const chancesFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
};

/** What a worn engine shows: from the limits as made on towards the wear limit, now and then past it. */
const readingsFrom = (seed: number): ReadonlyMap<string, string> => {
  const chance = chancesFrom(seed);
  return new Map(
    order.map((cell) => {
      const of = engine.characteristics.get(cell.characteristic);
      const { new: made, goesBack } = of?.limits ?? { new: {}, goesBack: {} };
      const from = of?.wears === 'smaller' ? made.greatest : made.least;
      const to = of?.wears === 'smaller' ? goesBack.least : goesBack.greatest;
      const start = from ?? to ?? 0;
      const size = start + ((to ?? start + 0.01) - start) * 1.06 * chance();
      return [cellKey(cell), bareFigure(size, shownIn(of))] as const;
    }),
  );
};

const typedIn = readingsFrom(20_261_125);
const textOf = (cell: Cell): string => typedIn.get(cellKey(cell)) ?? '';

/** The verdict of the reading just taken, once the page shows it; it must lie where eyes see it. */
const verdictShown = async (page: Page, title: string): Promise<string> => {
  const seen = await page.waitForFunction((of) => {
    const region = document.querySelector<HTMLElement>('[data-verdict]');
    if (!region?.textContent?.startsWith(`${of}: `)) return undefined;
    const at = region.querySelector('.verdict')?.getBoundingClientRect();
    const inSight = at !== undefined && at.height > 0 && at.top >= 0 && at.bottom <= innerHeight;
    return { verdict: region.dataset.verdict ?? '', inSight };
  }, title);
  const { verdict, inSight } = (await seen.jsonValue()) ?? { verdict: '', inSight: false };
  return inSight ? verdict : `${verdict}, out of sight`;
};

describe.skipIf(noBrowser)(
  `a full measuring sheet by keyboard (needs Chromium; ${noBrowser ?? 'here'})`,
  () => {
    let workshop: Workshop;
    let browser: Browser;
    let page: Page;
    let troubles: string[];

    beforeAll(async () => {
      workshop = await openWorkshop();
      const { id, title, version } = engine;
      await workshop.store.putEngineType({ id, title, version, text: brambleholtText });
      browser = await openBrowser();
      ({ page, troubles } = await openPage(browser));
      page.setDefaultTimeout(8000);
      await page.goto(workshop.address);
    });
    afterAll(async () => {
      await browser?.close();
      await workshop?.close();
    });

    it('of six cylinders is entered, each verdict at once, and no reading is lost', async () => {
      const { keys, signOn, turnTo } = handsOf(page, engine);
      await signOn('Wilmot Tansy');
      await keys.press(page.getByRole('link', { name: 'Book in an engine' }));
      await keys.choose(page.getByLabel('Engine type'), engine.title.slice(0, 9));
      for (const [label, text] of [
        ['Job number', 'J-66'],
        ['Owner', 'Ferrers Bridge Pumping Board'],
        ['Plate or serial number', 'B6-0417'],
        ['Hours run', '11200'],
      ] as const)
        await keys.fill(page.getByLabel(label, { exact: true }), text);
      await keys.enter();
      await page.waitForURL(/\/jobs\/[^/]+\/strip$/);
      const jobId = page.url().split('/').at(-2) ?? '';
      await turnTo('Measure');
      await keys.reach(page.locator(entry));

      const shown: string[] = [];
      for (const cell of order) {
        await keys.type(textOf(cell));
        await keys.enter();
        shown.push(await verdictShown(page, cellTitle(engine, cell)));
      }
      await page.locator('[data-waiting="0"]').waitFor();
      const job = replay(await workshop.store.readFrom(jobId, 0));
      if (job.kind !== 'open') throw new Error('the job is not in the store');
      const { sheet } = job;
      expect(order.map((cell) => sheet.readings.get(cellKey(cell))?.map(({ typed }) => typed.text))).toEqual(
        order.map((cell) => [textOf(cell)]),
      );
      expect(shown).toEqual(order.map((cell) => judgeCell(sheet, cell).verdict));
      expect(new Set(shown)).toEqual(new Set(['within', 'outside', 'unsure']));

      // Every verdict of the whole sheet stands in the record, derived ones among them.
      await turnTo('Hand over');
      const record = page.frameLocator('iframe.record');
      const judged = judgeAll(sheet).filter(
        ({ limits, value }) => limits !== undefined || value !== undefined,
      );
      expect(judged.filter(({ verdict }) => verdict === 'not yet known')).toEqual([]);
      const rows = record.locator('section[id="verdicts as found"] tbody tr');
      await rows.first().waitFor();
      expect(await rows.count()).toBe(judged.length);
      expect(troubles).toEqual([]);
      // Well under a minute on a machine of its own.
    }, 240_000);

    it('takes a finding with its crack test and its hardness too, and writes them down', async () => {
      const { keys, turnTo } = handsOf(page, engine);
      await turnTo('Strip');
      await keys.choose(page.getByLabel('Part', { exact: true }), 'crankshaft');
      await keys.choose(page.getByLabel('Finding', { exact: true }), 'blued');
      await keys.press(page.getByText('How bad it is; crack test; hardness'));
      await keys.choose(page.getByLabel('How bad', { exact: true }), 'severe');
      await keys.choose(page.getByLabel('Crack test', { exact: true }), 'magnetic particles: a');
      await keys.fill(page.getByLabel('Hardness', { exact: true }), '44 HRC');
      await keys.fill(page.getByLabel('What you saw, where, how deep'), 'crack from the third oil hole');
      await keys.press(page.getByRole('button', { name: 'Note the finding' }));
      await page.locator('[data-waiting="0"]').waitFor();
      const findings = page.getByRole('region', { name: 'Findings' });
      const said =
        'blued, severe; crack test by magnetic particles: a crack; hardness 44 HRC, may not go back';
      await expect.poll(() => findings.textContent()).toContain(said);
      expect(troubles).toEqual([]);
    });
  },
);
