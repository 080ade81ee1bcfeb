/** @module Works operations one after another on their sheets: answers what each asks, and signs it. */
import type { Locator, Page } from 'playwright-core';
import type { Keys } from './by-keys.ts';

export interface WorkThrough {
  /** Opens an operation from the list of its phase. */
  readonly open: (operation: string) => Promise<Locator>;
  /** Answers all that the operation in hand asks, as it should be. */
  readonly answer: (sheet: Locator) => Promise<void>;
  /** Signs the operation in hand, which must be open. */
  readonly sign: (sheet: Locator) => Promise<void>;
  /** Another person at the same bench. */
  readonly change: (name: string) => Promise<void>;
}

export interface Bench {
  readonly fitter: string;
  readonly second: string;
  /** What is counted, by the name of the ask. */
  readonly counts: Readonly<Record<string, string>>;
}

export const workThrough = (page: Page, keys: Keys, bench: Bench): WorkThrough => {
  const change = async (name: string) => {
    await keys.press(page.getByRole('button', { name: /^fitter \(change\)/ }));
    await keys.fill(page.getByLabel('Your name'), name);
    await keys.press(page.locator('form button[type="submit"]').first());
    await page.locator('.three').waitFor();
  };
  const answerOne = async (asked: Locator) => {
    const name = ((await asked.getAttribute('data-ask')) ?? '').split(' ')[0] ?? '';
    const second = (await asked.locator('h4').textContent())?.includes('(second person)') === true;
    const key = await asked.getAttribute('data-ask');
    const here = page.locator(`[data-ask="${key}"]`);
    if (second) await change(bench.second);
    const count = here.getByLabel('How many');
    if ((await count.count()) > 0) await keys.fill(count, bench.counts[name] ?? '1');
    else await keys.fill(here.getByLabel('In words'), `as found, ${name}`);
    await keys.press(here.locator('button.first'));
    await page.locator(`[data-ask="${key}"][data-answered="true"]`).waitFor();
    if (second) await change(bench.fitter);
  };
  return {
    change,
    open: async (operation) => {
      const row = page.locator(`.steps > [data-operation="${operation}"]`);
      await keys.press(row.getByRole('link').first());
      const sheet = page.locator(`article[data-operation="${operation}"]`);
      await sheet.waitFor();
      return sheet;
    },
    answer: async (sheet) => {
      const left = sheet.locator('[data-ask][data-answered="no"]');
      while ((await left.count()) > 0) await answerOne(left.first());
    },
    sign: async (sheet) => {
      const operation = await sheet.getAttribute('data-operation');
      await keys.press(sheet.locator('.sign button.first'));
      await page.locator(`article[data-operation="${operation}"]`).waitFor({ state: 'detached' });
    },
  };
};
