/** @module Hands on the glass and nothing else: a tap to reach and to press, the tablet's own keyboard to write. */
import type { Locator, Page } from 'playwright-core';
import type { Keys } from './by-keys.ts';

export const touchOf = (page: Page): Keys => ({
  reach: (control) => control.tap(),
  press: (control) => control.tap(),
  fill: async (field: Locator, text: string) => {
    await field.tap();
    await field.selectText();
    // As a keyboard on the glass writes: text without keys going down and up.
    await page.keyboard.insertText(text);
  },
  choose: async (list, words) => {
    const wanted = list.locator('option', { hasText: words }).first();
    // The list that the platform opens is none of the page's: the choice is what the page sees of it.
    await list.selectOption({ label: (await wanted.textContent()) ?? words });
  },
  type: (text) => page.keyboard.insertText(text),
  enter: () => page.keyboard.press('Enter'),
});
