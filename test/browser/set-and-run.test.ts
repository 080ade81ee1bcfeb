/** @module A built engine set, started, run in and handed over on a tablet's screen: once by keys alone, once by touch alone. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readEngineType } from '../../src/engine/read-engine-type.ts';
import { verifyRecord } from '../../src/record/verify.ts';
import { type Keys, keysOf } from './by-keys.ts';
import { touchOf } from './by-touch.ts';
import { noBrowser, openBrowser, tablet } from './chromium.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { buildSound, soundReadings } from './sound-engine.ts';
import { tightenAll } from './tighten-all.ts';
import { type WorkThrough, workThrough } from './work-through.ts';
import { engineText, openWorkshop, type Workshop } from './workshop.ts';

/** Of its run-in the first step, those that must come to be steady, and the cooling. */
const shortRunIn = engineText
  .replace(/ {4}- title: A quarter of the load\n[\s\S]*?(?= {4}- title: Three quarters of the load\n)/, '')
  .replaceAll('      minutes: 60\n', '      minutes: 30\n');
const { engine } = readEngineType(shortRunIn);
if (!engine) throw new Error('the engine type for this test has errors');
const steps = engine.runIn?.steps ?? [];

const bench = {
  fitter: 'Odo Ferrick',
  second: 'Perpetua Sallow',
  engine: engine.id,
  counts: {},
  readings: soundReadings(engine),
};

const pumps = ['pump.1', 'pump.2', 'pump.3'];

/** At its end; where it must be steady three times, ten minutes apart. */
const minutesRead = (at: number): readonly number[] =>
  steps[at]?.steady === undefined ? [steps[at]?.minutes ?? 0] : [10, 20, 30];

/** What the gauges show at a step, by how their titles begin; warm and steady. */
const shownAt = (at: number): Readonly<Record<string, string>> => ({
  speed: steps[at]?.speed.text ?? '',
  load: steps[at]?.load.text ?? '',
  'oil pressure': '3.1',
  'oil temperature': '80',
  'water out': '80',
  exhaust: '350',
  'crankcase pressure': '1',
});

const setAndRun = (how: string, handsFor: (page: Page) => Keys, context: BrowserContextOptions) =>
  describe.skipIf(noBrowser)(`set and run ${how} (needs Chromium; ${noBrowser ?? 'here'})`, () => {
    let workshop: Workshop;
    let browser: Browser;
    let page: Page;
    let troubles: string[];
    let jobId = '';
    let keys: Keys;
    let work: WorkThrough;
    const stored = () => storedJob(workshop, jobId);
    const allSent = () => page.locator('[data-waiting="0"]').waitFor();
    const button = (name: string | RegExp) => page.getByRole('button', { name });
    const turnTo = async (phase: string) => {
      await keys.press(page.getByRole('navigation').getByRole('link', { name: phase }));
      await page.locator('.three').waitFor();
    };
    const entry = () => page.locator('.entry .big');
    const asked = async () => (await entry().locator('label').textContent()) ?? '';
    /** Types what the entry asks for. */
    const read = async (text: string) => {
      await keys.reach(entry().locator('input'));
      await keys.type(text);
      await keys.enter();
    };
    const beginStep = async () => {
      const seconds = page.getByLabel('Seconds from the start until oil pressure showed');
      if ((await seconds.count()) > 0) await keys.fill(seconds, '6');
      await keys.press(button('It runs so: begin the step'));
      await entry().waitFor();
    };
    /** Reads every gauge that must be read, at a minute of a step; some of them may show something else. */
    const readGauges = async (at: number, minute: number, other: Readonly<Record<string, string>> = {}) => {
      await keys.fill(page.getByLabel('Minute of the step', { exact: true }), String(minute));
      const shown = { ...shownAt(at), ...other };
      while (!/may stay empty|note the reading/.test((await entry().textContent()) ?? '')) {
        const title = await asked();
        const gauge = Object.keys(shown).find((name) => title.startsWith(name));
        await read(shown[gauge ?? ''] ?? '');
        await expect.poll(asked).not.toBe(title);
      }
      await keys.press(button('Note this reading'));
    };
    const runStep = async (at: number) => {
      await beginStep();
      for (const minute of minutesRead(at)) await readGauges(at, minute);
      await page.locator(`[data-run-step="passed"]:nth-child(${at + 1})`).waitFor();
    };

    beforeAll(async () => {
      workshop = await openWorkshop();
      jobId = await buildSound(workshop.store, 'J-61', shortRunIn);
      browser = await openBrowser();
      ({ page, troubles } = await openSignedOn(browser, bench.fitter, 'bench 2', {
        viewport: tablet,
        ...context,
      }));
      keys = handsFor(page);
      work = workThrough(page, keys, bench);
      await page.goto(`${workshop.address}/jobs/${jobId}/run`);
      await page.locator('.three').waitFor();
    });
    afterAll(async () => {
      await browser?.close();
      await workshop?.close();
    });

    it('has its valves set, one that was too wide put right', async () => {
      await work.through('find-top-dead-centre');
      const sheet = await work.open('set-valve-clearances');
      const proved = () => sheet.locator('[data-valve][data-verdict="within"]').count();
      await read('0.45');
      await sheet.getByText('Turn the adjuster to close it').waitFor();
      expect(await sheet.locator('.sign button.first').count()).toBe(0);
      for (let valve = await proved(); valve < 6; valve += 1) {
        await read(bench.readings.get(await asked()) ?? '');
        await expect.poll(proved).toBe(valve + 1);
      }
      await work.sign(sheet);
    });

    it('has its pumps on their packs, and the one that spills early on a thicker one', async () => {
      const fitting = await work.open('fit-pumps');
      await work.prove(fitting);
      for (const thickness of ['0.10', '0.15', '0.20', '0.25', '0.30', '0.50'])
        await keys.fill(page.getByLabel(`${thickness} mm`, { exact: true }), '6');
      await keys.press(button('Note the count'));
      for (const place of pumps) await keys.press(page.locator(`[data-pump="${place}"] button.first`));
      await work.through('fit-pumps');
      const check = await work.open('check-spill');
      const verdict = (place: string) =>
        check.locator(`[data-check="${place}"]`).getAttribute('data-verdict');
      for (const [at, spill] of ['24.1', '26.2', '23.9'].entries()) {
        await read(spill);
        await expect.poll(() => verdict(pumps[at] ?? '')).toBe(spill === '26.2' ? 'outside' : 'within');
      }
      expect(await check.locator('.sign button.first').count()).toBe(0);
      const early = check.locator('[data-check="pump.2"]');
      await keys.press(early.getByRole('button', { name: /^Fit the pack that puts it right/ }));
      await read('24.2');
      await expect.poll(() => verdict('pump.2')).toBe('within');
      await work.sign(check);
      await allSent();
      const job = await stored();
      expect(job.packsTried.get('pump.2')?.[0]?.checks[0]?.typed.text).toBe('26.2');
    });

    it('does not start before the gate is proved', async () => {
      for (const name of ['prove-stop', 'balance-pumps', 'fit-injectors', 'fit-manifolds', 'prime-oil'])
        await work.through(name);
      const gate = await work.open('first-start');
      expect(await gate.locator('.lacking').textContent()).toContain('The stop control is proven');
      expect(await gate.locator('.sign button.first').count()).toBe(0);
      // Nobody answers for a first start that is not proved.
      expect(await gate.getByText('Go on all the same', { exact: true }).count()).toBe(0);
      await work.through('first-start');
      await allSent();
      const { done, answers } = await stored();
      expect(done.has('first-start')).toBe(true);
      expect(answers.get('first-start|clear|')?.by).toBe(bench.second);
    });

    it('is run in step by step, begun again after an alarm whose fault is put right', async () => {
      await turnTo('Run');
      await beginStep();
      await readGauges(0, 15, { 'oil pressure': '0.8' });
      await page.locator('.alarm[data-stop="true"]').waitFor();
      expect(await button('It runs so: begin the step').count()).toBe(0);
      await keys.fill(page.getByLabel('What was found', { exact: true }), 'relief valve stuck');
      await keys.fill(page.getByLabel('What was done about it', { exact: true }), 'seat cleaned');
      await keys.press(button('Note the fault'));
      for (const at of [0, 1]) await runStep(at);
      await work.through('run-in');
      await allSent();
      const { running } = await stored();
      expect(running.filter(({ kind }) => kind === 'run step begun')).toHaveLength(3);
    });

    it('has its head pulled down again and its valves read anew, then is proved at full load', async () => {
      const again = await work.open('tighten-head-again');
      await tightenAll(again, keys);
      // What was read before the head came down further says nothing of the valves now.
      expect(await again.locator('.lacking').textContent()).toContain('is not yet known');
      await work.prove(again);
      await work.sign(again);
      await work.through('set-governor');
      await turnTo('Run');
      for (const at of [2, 3]) await runStep(at);
      await work.through('full-load');
      await allSent();
      const { done } = await stored();
      expect([...engine.operations.keys()].filter((name) => !done.has(name))).toEqual([]);
    });

    it('is handed over with a record that verifies', async () => {
      await turnTo('Hand over');
      await keys.fill(page.getByLabel('Handed over to', { exact: true }), 'Long Withy Growers');
      await keys.press(button('Hand over'));
      await allSent();
      await expect.poll(async () => (await stored()).handedOver?.to).toBe('Long Withy Growers');
      const record = await page.locator('iframe.record').getAttribute('srcdoc');
      expect(verifyRecord(record ?? '')).toMatchObject({ kind: 'verified' });
      expect(record).toContain('relief valve stuck');
      expect(record).toContain('by its depth, and right by the second check');
      expect(troubles).toEqual([]);
    });
  });

setAndRun('by keys alone', keysOf, {});
setAndRun('by touch alone', touchOf, { hasTouch: true });
