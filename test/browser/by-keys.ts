/** @module Hands that have a keyboard and nothing else: Tab to reach, keys to type, Enter to do. */
import type { Locator, Page } from 'playwright-core';

/** More stops than any sheet has. */
const mostStops = 600;

export interface Keys {
  /** Presses Tab, or Shift and Tab, until the control has the focus. */
  readonly reach: (control: Locator) => Promise<void>;
  readonly press: (control: Locator) => Promise<void>;
  /** Replaces what stands in a field. */
  readonly fill: (field: Locator, text: string) => Promise<void>;
  /** Chooses in a list by typing the beginning of the words. */
  readonly choose: (list: Locator, words: string) => Promise<void>;
  readonly type: (text: string) => Promise<void>;
  readonly enter: () => Promise<void>;
}

const focused = (control: Locator): Promise<boolean> =>
  control.evaluate((element) => element === document.activeElement);

/** Whether a control stands before what has the focus: hands then go back, not all the way round. */
const isBehind = (control: Locator): Promise<boolean> =>
  control.evaluate((element) => {
    const at = document.activeElement;
    return (
      at !== null &&
      at !== document.body &&
      (at.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_PRECEDING) !== 0
    );
  });

export const keysOf = (page: Page): Keys => {
  const { keyboard } = page;
  const reach = async (control: Locator) => {
    await control.waitFor();
    const way = (await isBehind(control)) ? 'Shift+Tab' : 'Tab';
    for (let stops = 0; stops < mostStops; stops += 1) {
      if (await focused(control)) return;
      await keyboard.press(way);
    }
    throw new Error(`Tab never reaches ${control}`);
  };
  return {
    reach,
    press: async (control) => {
      await reach(control);
      await keyboard.press('Enter');
    },
    fill: async (field, text) => {
      await reach(field);
      await keyboard.press('Control+A');
      await keyboard.press('Delete');
      await keyboard.type(text);
    },
    choose: async (list, words) => {
      await reach(list);
      await keyboard.type(words);
    },
    type: (text) => keyboard.type(text),
    enter: () => keyboard.press('Enter'),
  };
};
