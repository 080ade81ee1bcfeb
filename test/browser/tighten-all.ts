/** @module What hands do on an operation's sheet to tighten its joints: the first bolt by bolt, the others by whole stages. */
import type { Locator } from 'playwright-core';
import type { Keys } from './by-keys.ts';

/** Tightens whatever the operation in hand leaves loose. */
export const tightenAll = async (sheet: Locator, keys: Keys): Promise<void> => {
  const part = sheet.locator('.tightening');
  const tight = part.locator('button.tight');
  const stage = part.locator('[data-stage]');
  const inHand = async () =>
    `${await part.locator('h4').allTextContents()} ${await stage.getAttribute('data-stage')}`;
  let first = true;
  while ((await tight.count()) > 0) {
    const bolts = part.getByLabel('Bolts are', { exact: true });
    if ((await bolts.count()) > 0) await keys.choose(bolts, 'new');
    const before = await inHand();
    const whole = part.locator('button.whole-stage');
    if (first || (await whole.count()) === 0) {
      while (!/^Note stage/.test((await tight.textContent()) ?? '')) {
        await keys.press(tight);
        const refused = await part.locator('.refused').allTextContents();
        if (refused.length > 0) throw new Error(`it is refused: ${refused}`);
      }
      await keys.press(tight);
    } else await keys.press(whole);
    first = false;
    for (let tries = 0; (await tight.count()) > 0 && (await inHand()) === before; tries += 1) {
      if (tries > 100)
        throw new Error(`it is not noted: ${before}: ${await part.locator('.refused').allTextContents()}`);
      await sheet.page().waitForTimeout(20);
    }
  }
};
