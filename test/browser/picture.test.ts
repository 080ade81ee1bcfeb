/** @module Pictures at the bench: taken, shrunk, cleaned, shown, waiting while the server is away, in the record. */
import { zlibSync } from 'fflate';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { demoJobs } from '../../demo/workshop.ts';
import { fourBytes, joined, lettersOf } from '../../src/picture/bytes.ts';
import { exifMark, orientationAlone } from '../../src/picture/orientation.ts';
import { cleanPicture } from '../../src/picture/picture.ts';
import { pngChunk, pngFile } from '../../src/picture/png.ts';
import { drawn, drawnJpeg } from '../picture/drawn.ts';
import { noBrowser, openBrowser } from './chromium.ts';
import { barriers } from './flaws.ts';
import { openSignedOn, storedJob } from './signed-on.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

const secret = '52.1234N 4.5678E';

/** As a telephone gives it: held upright, with words about the place, wider than is kept. */
const large = (width: number, height: number): Buffer => {
  const row = Uint8Array.from({ length: width + 1 }, (_, x) => (x === 0 ? 0 : (x >> 3) % 256));
  const rows = joined(Array.from({ length: height }, () => row));
  return Buffer.from(
    pngFile([
      pngChunk('IHDR', joined([fourBytes(width), fourBytes(height), Uint8Array.of(8, 0, 0, 0, 0)])),
      pngChunk('tEXt', lettersOf(`Location\0${secret}`)),
      pngChunk('IDAT', zlibSync(rows)),
      pngChunk('IEND', new Uint8Array()),
    ]),
  );
};

/** Turned by a quarter, with the secret behind what says so. */
const turnedJpeg = (): Uint8Array => {
  const camera = joined([exifMark, orientationAlone(6), lettersOf(secret)]);
  const head = Uint8Array.of(0xff, 0xe1, 0, camera.length + 2);
  return joined([drawnJpeg.subarray(0, 2), head, camera, drawnJpeg.subarray(2)]);
};

const file = (buffer: Buffer, mimeType = 'image/png') => ({ name: 'found', mimeType, buffer });

describe.skipIf(noBrowser)(`a picture (needs Chromium; ${noBrowser ?? 'here'})`, () => {
  let workshop: Workshop;
  let browser: Browser;
  let page: Page;
  let troubles: string[];
  const [jobId = ''] = demoJobs;

  const stored = () => storedJob(workshop, jobId);
  const newest = async () => (await stored()).pictures.at(-1);
  const waiting = () => page.locator('[data-waiting]').getAttribute('data-waiting');
  const drawnWell = (name: RegExp) =>
    page.getByRole('img', { name }).evaluate((img) => (img as HTMLImageElement).naturalWidth);

  beforeAll(async () => {
    workshop = await openWorkshop({ demo: true });
    browser = await openBrowser();
  });
  afterAll(async () => {
    await browser?.close();
    await workshop?.close();
  });
  beforeEach(async () => {
    await page?.context().close();
    ({ page, troubles } = await openSignedOn(browser, 'Wilmot Tansy'));
    await page.goto(`${workshop.address}/jobs/${jobId}/strip`);
    await page.getByRole('region', { name: 'Findings' }).waitFor();
  });

  const operationPicture = async (operation: string, buffer: Buffer, mimeType?: string) => {
    const row = page.locator(`[data-operation="${operation}"]`);
    await row.getByText('Add a picture').first().click();
    await row.getByLabel(/^Picture from a file/).setInputFiles(file(buffer, mimeType));
    await row.getByRole('button', { name: 'Keep the picture' }).waitFor();
    return row;
  };

  it('goes with the finding being noted, shrunk, with nothing left of the place', async () => {
    const findings = page.getByRole('region', { name: 'Findings' });
    await findings.getByLabel('Part').selectOption('bores');
    await findings.getByLabel('Place').selectOption('bore.1');
    await findings.getByLabel('Finding', { exact: true }).selectOption('pitted');
    await findings.getByLabel('What you saw').fill('pits above the ring travel');
    await findings.getByLabel(/^Take a picture/).setInputFiles(file(large(2400, 1200)));
    await findings.getByRole('img', { name: 'Picture 1 of the finding' }).waitFor();
    await findings.getByRole('button', { name: 'Note the finding' }).click();
    await expect.poll(waiting).toBe('0');
    await expect.poll(async () => (await newest())?.picture.width).toBe(1600);
    const [job, kept] = [await stored(), await newest()];
    expect(kept).toMatchObject({
      picture: { mediaType: 'image/jpeg', height: 800 },
      of: { finding: job.findings.at(-1)?.id },
    });
    const bytes = Buffer.from((await workshop.store.picture(kept?.picture.hash ?? '')) ?? []);
    expect(bytes.length).toBe(kept?.picture.bytes);
    expect(bytes.length).toBeLessThan(600_000);
    expect(bytes.includes(secret) || bytes.includes('Exif')).toBe(false);
    await expect.poll(() => drawnWell(/bore 1.*pitted/i)).toBe(1600);
    expect(troubles).toEqual([]);
  });

  it('is drawn the right way up: what the camera said of it is honoured', async () => {
    const row = await operationPicture('lift-crankshaft', Buffer.from(turnedJpeg()), 'image/jpeg');
    await row.getByLabel('What it shows').fill('crankshaft in its blocks');
    await row.getByRole('button', { name: 'Keep the picture' }).press('Enter');
    await expect.poll(async () => (await newest())?.says).toBe('crankshaft in its blocks');
    expect((await newest())?.picture).toMatchObject({ width: 32, height: 48 });
    expect((await newest())?.of).toEqual({ operation: 'lift-crankshaft' });
  });

  it('waits with the page closed while the server is away, and is sent with what is said of it', async () => {
    await page.goto(`${workshop.address}/jobs/${jobId}/measure`);
    const here = page.getByRole('region', { name: 'Pictures of this place' });
    await here.getByText('Add a picture').first().click();
    await workshop.stopServer();
    await here.getByLabel(/^Take a picture/).setInputFiles(file(large(640, 480)));
    await here.getByLabel('What it shows').fill('before it was cleaned');
    await here.getByRole('button', { name: 'Keep the picture' }).click();
    await expect.poll(waiting).toBe('1');
    // Shown from this bench, though the store knows nothing of it.
    await expect.poll(() => drawnWell(/before it was cleaned/)).toBe(640);
    await page.close();
    await workshop.startServer();
    page = await page.context().newPage();
    await page.goto(workshop.address);
    await expect.poll(async () => (await newest())?.says, { timeout: 20_000 }).toBe('before it was cleaned');
    const { hash = '', bytes = 0 } = (await newest())?.picture ?? {};
    expect((await workshop.store.picture(hash))?.length).toBe(bytes);
  });

  it('that this bench has lost before the store had it is turned back in words, and never silently', async () => {
    const row = await operationPicture('lift-crankshaft', large(320, 200));
    await workshop.stopServer();
    await row.getByRole('button', { name: 'Keep the picture' }).click();
    await expect.poll(waiting).toBe('1');
    await page.evaluate(
      () =>
        new Promise((done) => {
          const request = indexedDB.open('endfloat pictures');
          request.onsuccess = () => {
            const transaction = request.result.transaction('waiting', 'readwrite');
            transaction.objectStore('waiting').clear();
            transaction.oncomplete = done;
          };
        }),
    );
    await workshop.startServer();
    const note = page.getByRole('alert', { name: 'Not taken by the store' });
    await note.waitFor({ timeout: 30_000 });
    expect(await note.textContent()).toContain('the picture itself has not arrived');
  });

  it('is seen large by keys alone, is struck out with why, and no barrier stands in the way', async () => {
    const small = page.getByRole('button', { name: /two scores|thrust side/ });
    await small.focus();
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog');
    await dialog.waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await dialog.waitFor({ state: 'detached' });
    await small.press('Enter');
    await dialog.getByText('It does not belong here').click();
    await dialog.getByRole('button', { name: 'Strike the picture out' }).click();
    expect(await dialog.getByRole('alert').textContent()).toContain('write why');
    await dialog.getByLabel('Why it does not count').fill('another bore');
    await dialog.getByRole('button', { name: 'Strike the picture out' }).click();
    await dialog.waitFor({ state: 'detached' });
    await expect.poll(async () => (await stored()).picturesStruckOut.length).toBe(1);
    expect(troubles).toEqual([]);
  });

  it('that is none is told so in words', async () => {
    const findings = page.getByRole('region', { name: 'Findings' });
    await findings.getByLabel(/^Picture from a file/).setInputFiles(file(Buffer.from('<svg/>')));
    await expect
      .poll(() => findings.getByRole('alert').first().textContent())
      .toContain('this browser cannot read the picture');
  });

  it('stands in the record of the finished job, on this bench as from the server', async () => {
    const [, , finished = ''] = demoJobs;
    await page.goto(`${workshop.address}/jobs/${finished}/hand-over`);
    const shown = page.frameLocator('iframe.record').locator('img[data-picture]');
    await expect.poll(() => shown.evaluate((img) => (img as HTMLImageElement).naturalWidth)).toBe(480);
    await page.goto(`${workshop.address}/jobs/${finished}/record`);
    await expect
      .poll(() => page.locator('img[data-picture]').evaluate((img) => (img as HTMLImageElement).naturalWidth))
      .toBe(480);
  });

  it.each(Object.entries({ ...drawn, 'turned.jpg': turnedJpeg() }))(
    'of the kind %s is drawn by the browser as before it was cleaned',
    async (_, found) => {
      const clean = cleanPicture(found, 'picture');
      if (clean.kind === 'refused') throw new Error(clean.refusal.what);
      // source: Chromium's own decoders
      const seen = (bytes: Uint8Array) =>
        page.evaluate(async (text) => {
          const blob = await (await fetch(`data:application/octet-stream;base64,${text}`)).blob();
          const bitmap = await createImageBitmap(blob);
          const canvas = document.createElement('canvas');
          [canvas.width, canvas.height] = [bitmap.width, bitmap.height];
          canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
          return canvas.toDataURL('image/png');
        }, Buffer.from(bytes).toString('base64'));
      await page.goto('about:blank');
      const before = await seen(found);
      expect(before.length).toBeGreaterThan(200);
      expect(await seen(clean.value.bytes)).toBe(before);
    },
  );
});
