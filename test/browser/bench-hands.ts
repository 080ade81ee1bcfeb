/** @module What hands do on the app's sheets, by keys alone: sign operations, go to a place, read a row of cells. */
import type { Page } from 'playwright-core';
import type { EngineType } from '../../src/engine/engine-type.ts';
import { cellTitle } from '../../src/job/cell-title.ts';
import { type Cell, cellKey, type Reading } from '../../src/measure/reading.ts';
import { type Keys, keysOf } from './by-keys.ts';
import { tightenAll } from './tighten-all.ts';

export interface Hands {
  readonly keys: Keys;
  readonly signOn: (name: string) => Promise<void>;
  readonly turnTo: (phase: string) => Promise<void>;
  /** Signs every operation that is open, those that this opens, and those whose joints it tightens; tells how many. */
  readonly signAll: () => Promise<number>;
  /** Goes to a place by the engine's map: Tab to the map, arrows along it, Enter. */
  readonly goTo: (place: string) => Promise<void>;
  /** Types readings cell by cell, as the entry asks for them. */
  readonly readCells: (readings: readonly Reading[]) => Promise<void>;
}

export const entry = '.entry .big input';

export const handsOf = (page: Page, engine: EngineType): Hands => {
  const keys = keysOf(page);
  const button = (name: string | RegExp) => page.getByRole('button', { name });
  return {
    keys,
    signOn: async (name) => {
      await keys.fill(page.getByLabel('Your name'), name);
      await keys.enter();
      await page.getByRole('heading', { level: 1 }).waitFor();
    },
    turnTo: async (phase) => {
      await keys.press(page.getByRole('navigation').getByRole('link', { name: phase }));
      await page.locator('.three').waitFor();
    },
    signAll: async () => {
      let signed = 0;
      // Those that lack nothing but that their joints be tightened.
      const loose = page.locator('.steps > li[data-standing="held"]').filter({
        has: page.locator('.what ul > li:first-child', { hasText: 'is not noted' }),
      });
      const sign = button(/^Sign as done/);
      while ((await sign.count()) + (await loose.count()) > 0) {
        if ((await sign.count()) === 0) {
          await keys.press(loose.first().getByRole('link').first());
          const sheet = page.locator('article[data-operation]');
          await sheet.waitFor();
          await tightenAll(sheet, keys);
          await keys.press(page.getByRole('link', { name: /^All \d+$/ }));
          await page.locator('.steps > li[data-operation]').first().waitFor();
          continue;
        }
        const left = await page.locator('[data-standing="done"]').count();
        await keys.press(sign.first());
        await page.waitForFunction(
          (before) => document.querySelectorAll('[data-standing="done"]').length > before,
          left,
        );
        signed += 1;
      }
      return signed;
    },
    goTo: async (place) => {
      await keys.reach(page.locator('[data-place][tabindex="0"]'));
      const at = () => page.evaluate(() => document.activeElement?.getAttribute('data-place'));
      for (let steps = 0; (await at()) !== place; steps += 1) {
        if (steps > 200) throw new Error(`the arrows never reach ${place}`);
        await page.keyboard.press('ArrowRight');
      }
      await keys.enter();
      // On the measuring sheet a place is read; on every other it is told what is known there, and read from there.
      const read = page.locator('[data-place-asked]').getByRole('button', { name: /^Read it/ });
      await page.locator(entry).or(read).first().waitFor();
      if ((await read.count()) > 0) await keys.press(read);
      await page.locator(entry).waitFor();
    },
    readCells: async (readings) => {
      for (const { cell, typed } of readings) {
        await page.locator('.entry').getByLabel(cellTitle(engine, cell), { exact: true }).waitFor();
        await keys.type(typed.text);
        await keys.enter();
      }
    },
  };
};

/** Readings in the order of some cells. */
export const inOrder = (cells: readonly Cell[], readings: ReadonlyMap<string, Reading>): readonly Reading[] =>
  cells.flatMap((cell) => readings.get(cellKey(cell)) ?? []);
