/** @module From key press to verdict painted, in the browser, with 5,000 readings in the job; the goal is one frame. */
import type { Page } from 'playwright-core';
import { openBrowser } from '../test/browser/chromium.ts';
import { openSignedOn } from '../test/browser/signed-on.ts';
import { jobOfThousands } from '../test/browser/thousands.ts';
import { openWorkshop } from '../test/browser/workshop.ts';
import type { BenchRow } from './bench.ts';

export const name = 'keypress';

const readings = 5000;
const rounds = 40;
const warmUp = 5;
/** One frame at 60 a second. */
const frame = 1000 / 60;

interface Press {
  /** Until the verdict stands in the page, laid out. */
  readonly ready: number;
  /** Until the frame that shows it has been painted. */
  readonly painted: number;
}

/** Runs in the page: from every Enter, times the change of the verdict and the frame that shows it. */
const watchPresses = (): void => {
  const presses: Press[] = [];
  Object.assign(window, { presses });
  let pressed = 0;
  addEventListener('keydown', (event) => (pressed = event.key === 'Enter' ? event.timeStamp : 0), true);
  const changed = new MutationObserver(() => {
    if (pressed === 0) return;
    const from = pressed;
    pressed = 0;
    // Asking for a height lays the page out, as painting will.
    document.querySelector<HTMLElement>('[data-verdict]')?.getBoundingClientRect();
    const ready = performance.now() - from;
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => presses.push({ ready, painted: performance.now() - from });
      port2.postMessage(0);
    });
  });
  const verdict = document.querySelector('[data-verdict]');
  if (!verdict?.parentElement) throw new Error('no verdict is shown');
  changed.observe(verdict.parentElement, { subtree: true, childList: true, characterData: true });
};

const pressed = (page: Page): Promise<readonly Press[]> =>
  page.evaluate(() => (window as unknown as { readonly presses: readonly Press[] }).presses);

const at = (figures: readonly number[], share: number): number => {
  const sorted = figures.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
};

export const run = async (): Promise<readonly BenchRow[]> => {
  const workshop = await openWorkshop();
  const browser = await openBrowser();
  try {
    const { id, events } = jobOfThousands(readings);
    await workshop.store.append(id, 0, events);
    const { page } = await openSignedOn(browser, 'Ines Fallow');
    await page.goto(`${workshop.address}/jobs/${id}/measure`);
    await page.locator('.entry .big input').waitFor();
    await page.evaluate(watchPresses);
    for (let round = 0; round < rounds; round += 1) {
      // Sizes of the journals that stand first in the scheme; no two in turn are the same.
      await page.keyboard.insertText(`54.${950 + ((round * 7) % 30)}`);
      await page.waitForTimeout(250);
      await page.keyboard.press('Enter');
      await page.waitForFunction(
        (count) => (window as unknown as { readonly presses: readonly Press[] }).presses.length === count,
        round + 1,
      );
    }
    // The first presses warm the page up.
    const presses = (await pressed(page)).slice(warmUp);
    const row = (what: string, share: number, of: (press: Press) => number): BenchRow => ({
      what,
      against: 'one frame',
      unit: 'ms',
      ours: at(presses.map(of), share),
      other: frame,
      note: `${presses.length} presses`,
    });
    return [
      row('key press to verdict in the page, middle', 0.5, ({ ready }) => ready),
      row('key press to verdict in the page, 95 of 100', 0.95, ({ ready }) => ready),
      row('key press to verdict painted, middle', 0.5, ({ painted }) => painted),
      row('key press to verdict painted, 95 of 100', 0.95, ({ painted }) => painted),
    ];
  } finally {
    await browser.close();
    await workshop.close();
  }
};
