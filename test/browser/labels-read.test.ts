/**
 * @module Printed labels read by other readers than the writer's own, as they come from a label printer and after some
 * days on the bench. source: zbarimg (zbar-tools) and ZXing-C++ (zxing-wasm).
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { awaitingDecision } from '../../demo/jobs/awaiting-decision.ts';
import { type Tag, tagsOf } from '../../src/job/home/tag.ts';
import type { OpenJob } from '../../src/job/job.ts';
import { scannedText } from '../../src/record/labels/label.ts';
import { labelSizes } from '../../src/record/labels/label-size.ts';
import { labelsPage } from '../../src/record/labels/labels-page.ts';
import { lacking } from '../outside/program.ts';
import { noBrowser, openBrowser, openPage } from './chromium.ts';
import { type CodeReader, zbar, zxing } from './code-readers.ts';
import { type CodeBox, type Spoiling, spoiled } from './spoiled.ts';

const noZbar = lacking('zbarimg');
/** Of a label printer. */
const resolutions = [203.2, 300] as const;
const sizes = ['roll-62', 'roll-29', '70x37'] as const;

interface Printed {
  readonly tag: Tag;
  readonly picture: Uint8Array;
  readonly perMm: number;
  readonly box: CodeBox;
}

describe.skipIf(noBrowser)(`printed labels (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let browser: Browser;
  let job: OpenJob;
  let readers: readonly CodeReader[];
  let page: Page;
  const printed: Printed[] = [];
  const folder = mkdtempSync(join(tmpdir(), 'endfloat-labels-'));

  /** Every twelfth tag at each size and resolution, as Chromium draws the page that prints. */
  const print = async (dpi: number, name: string): Promise<void> => {
    const size = labelSizes.find((one) => one.name === name);
    if (!size) throw new Error(`no labels of ${name}`);
    const sheet = await openPage(browser, { deviceScaleFactor: dpi / 96 });
    const tags = tagsOf(job.sheet.engine).filter(
      ({ number }) => number % 12 === sizes.indexOf(size.name as 'roll-62'),
    );
    await sheet.page.setContent(labelsPage(job, { size, tags }));
    for (const tag of tags) {
      const label = sheet.page.locator(`[data-tag="${tag.id}"]`);
      const code = await label.locator('path').boundingBox();
      const all = await label.boundingBox();
      if (!code || !all) throw new Error('a label is not drawn');
      const margin = 12;
      const clip = {
        x: all.x - margin,
        y: all.y - margin,
        width: all.width + 2 * margin,
        height: all.height + 2 * margin,
      };
      printed.push({
        tag,
        picture: await sheet.page.screenshot({ clip, fullPage: true }),
        perMm: dpi / 25.4,
        box: {
          x: ((code.x - clip.x) * 25.4) / 96,
          y: ((code.y - clip.y) * 25.4) / 96,
          width: (code.width * 25.4) / 96,
          bareCorner: size.turned ? [0, 1] : [1, 1],
        },
      });
    }
    await sheet.page.close();
  };

  beforeAll(async () => {
    job = (await awaitingDecision()).job();
    readers = [zxing(), ...(noZbar === undefined ? [zbar(folder)] : [])];
    browser = await openBrowser();
    ({ page } = await openPage(browser));
    for (const dpi of resolutions) for (const size of sizes) await print(dpi, size);
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(folder, { recursive: true });
  });

  /** How many of the labels each reader reads right; none may be read wrong. */
  const readBy = async (how: Spoiling): Promise<Readonly<Record<string, number>>> => {
    const pictures = await Promise.all(
      printed.map(({ picture, perMm, box }, seed) => spoiled(page, picture, { perMm, box, seed, how })),
    );
    const rates: Record<string, number> = {};
    for (const reader of readers) {
      const texts = await reader.read(pictures);
      const wrong = texts.filter(
        (text, at) =>
          text !== undefined && text !== scannedText(job, printed[at]?.tag ?? ({ id: '' } as Tag)),
      );
      expect(wrong).toEqual([]);
      rates[reader.name] = texts.filter((text) => text !== undefined).length / printed.length;
    }
    const said = Object.entries(rates).map(([name, rate]) => `${name} ${(100 * rate).toFixed(0)} %`);
    console.info(
      `blur ${how.blur} mm, grain ${how.grain}, thumb over ${100 * how.thumb} %${how.offCorners ? ' off the corner marks' : ''}: ${said.join(', ')} of ${printed.length} labels`,
    );
    return rates;
  };
  const clean: Spoiling = { blur: 0, grain: 0, thumb: 0, offCorners: true };

  it.skipIf(noZbar)(`have both readers to be read by (needs zbarimg; ${noZbar ?? 'here'})`, () => {
    expect(readers).toHaveLength(2);
  });

  it('are all read by both as they come from the printer', async () => {
    for (const rate of Object.values(await readBy(clean))) expect(rate).toBe(1);
  });

  it('are all read by both when they are out of focus and grainy', async () => {
    for (const rate of Object.values(await readBy({ ...clean, blur: 0.15, grain: 20 }))) expect(rate).toBe(1);
  });

  // Level H makes good about 30 % of the code words; a thumb touches more of them than its share of the area.
  // zbar follows single rows of pixels without smoothing them: grain and a large thumb together break more of them than
  // it can do without. What it reads of those is said above the result, and is never wrong.
  it('are read under a thumb over a twentieth of the code by both, under one over a tenth by the better one', async () => {
    const small = await readBy({ ...clean, blur: 0.15, grain: 20, thumb: 0.05 });
    for (const rate of Object.values(small)) expect(rate).toBeGreaterThanOrEqual(0.9);
    const large = await readBy({ ...clean, blur: 0.15, grain: 20, thumb: 0.1 });
    expect([small['ZXing-C++'], large['ZXing-C++']]).toEqual([1, 1]);
  });

  it('are never read wrong, not even with a thumb on a corner mark', async () => {
    const rates = await readBy({ blur: 0.15, grain: 20, thumb: 0.1, offCorners: false });
    expect(Object.keys(rates)).toHaveLength(readers.length);
  });
});
