/** @module Works operations one after another on their sheets: answers what each asks, and signs it. */
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { typedInto } from '../../demo/typed-sums.ts';
import type { Keys } from './by-keys.ts';
import { tightenAll } from './tighten-all.ts';

export interface WorkThrough {
  /** One operation from wherever hands are: opened, all that it asks answered, signed. */
  readonly through: (operation: string) => Promise<void>;
  /** Opens an operation from the list of its phase. */
  readonly open: (operation: string) => Promise<Locator>;
  /** Answers all that the operation in hand asks, as it should be. */
  readonly answer: (sheet: Locator) => Promise<void>;
  /** Reckons all that the operation in hand must have reckoned, and writes it into the journal. */
  readonly reckon: (sheet: Locator) => Promise<void>;
  /** Answers one ask, named with its place: in words, or by a number where it is counted. */
  readonly write: (sheet: Locator, ask: string, text: string) => Promise<void>;
  /** Goes where a line of what is lacking leads, reads a figure there, and comes back. */
  readonly read: (sheet: Locator, line: Locator, text: string) => Promise<void>;
  /** Reads all that the operation in hand needs read, each where its line leads. */
  readonly prove: (sheet: Locator) => Promise<void>;
  /** Types the number of a part's tag at the place in hand. */
  readonly scan: (sheet: Locator, part: string) => Promise<void>;
  /** Goes on though the order of work lacks something, in the name of whoever answers for it. */
  readonly overrule: (sheet: Locator, by: string, why: string) => Promise<void>;
  /** Signs the operation in hand, which must be open. */
  readonly sign: (sheet: Locator) => Promise<void>;
  /** Another person at the same bench. */
  readonly change: (name: string) => Promise<void>;
}

export interface Bench {
  readonly fitter: string;
  readonly second: string;
  /** Name of the engine type, of which the demo knows what is typed into its sums. */
  readonly engine: string;
  /** What is counted, by the name of the ask. */
  readonly counts: Readonly<Record<string, string>>;
  /** What is read in a cell, by its title. */
  readonly readings: ReadonlyMap<string, string>;
}

export const workThrough = (page: Page, keys: Keys, bench: Bench): WorkThrough => {
  const sheetOf = (operation: string) => page.locator(`article[data-operation="${operation}"]`);
  const change = async (name: string) => {
    await keys.press(page.getByRole('button', { name: /^fitter \(change\)/ }));
    await keys.fill(page.getByLabel('Your name'), name);
    await keys.press(page.locator('form button[type="submit"]').first());
    await page.locator('.three').waitFor();
  };
  const write = async (sheet: Locator, ask: string, text: string) => {
    const asked = sheet.locator(`[data-ask="${ask}"]`);
    const before = await asked.textContent();
    const count = asked.getByLabel('How many');
    await keys.fill((await count.count()) > 0 ? count : asked.getByLabel('In words'), text);
    await keys.press(asked.locator('button.first'));
    await expect.poll(() => asked.textContent()).not.toBe(before);
  };
  const answerOne = async (sheet: Locator, ask: string) => {
    const name = ask.split(' ')[0] ?? '';
    const asked = sheet.locator(`[data-ask="${ask}"]`);
    const second = (await asked.locator('h4').textContent())?.includes('(second person)') === true;
    const counted = (await asked.getByLabel('How many').count()) > 0;
    if (second) await change(bench.second);
    await write(sheet, ask, counted ? (bench.counts[name] ?? '1') : `as found, ${name}`);
    if (second) await change(bench.fitter);
  };
  const open = async (operation: string) => {
    if ((await sheetOf(operation).count()) === 0) {
      const list = page.getByRole('link', { name: /^All \d+$/ });
      if ((await list.count()) > 0) await keys.press(list);
      await keys.press(page.locator(`.steps > [data-operation="${operation}"]`).getByRole('link').first());
      await sheetOf(operation).waitFor();
    }
    return sheetOf(operation);
  };
  const answer = async (sheet: Locator) => {
    const left = sheet.locator('[data-ask][data-answered="no"]');
    while ((await left.count()) > 0)
      await answerOne(sheet, (await left.first().getAttribute('data-ask')) ?? '');
  };
  const entered = async (line: Locator, text: (title: string) => string) => {
    await keys.press(line.getByRole('button'));
    const entry = page.locator('.entry .big');
    await entry.locator('input').waitFor();
    const title = (await entry.locator('label').textContent()) ?? '';
    await keys.fill(entry.locator('input'), text(title));
    await keys.press(page.locator('.entry button.first'));
    await keys.press(page.locator('[data-back]'));
  };
  const read = async (sheet: Locator, line: Locator, text: string) => {
    await entered(line, () => text);
    await sheet.waitFor();
  };
  /** Reads what is lacking, until nothing is lacking that can be read. */
  const prove = async (sheet: Locator) => {
    const wanted = sheet.locator('.lacking > li').filter({ hasText: ': read ' });
    while ((await wanted.count()) > 0) {
      await entered(wanted.first(), (title) => bench.readings.get(title) ?? '');
      await sheet.waitFor();
    }
  };
  const reckon = async (sheet: Locator) => {
    const operation = (await sheet.getAttribute('data-operation')) ?? '';
    const left = sheet.locator('[data-sum][data-needed="yes"]:not([data-standing="noted"])');
    for (let before = await left.count(); before > 0; before = await left.count()) {
      const all = sheet.locator('.write-all');
      const open = left.and(page.locator('[data-open="yes"]'));
      if ((await all.count()) > 0) await keys.press(all);
      else {
        const typed = typedInto(
          bench.engine,
          operation,
          (await open.getAttribute('data-sum'))?.split(' ')[0] ?? '',
        );
        for (const [key, text] of Object.entries(typed))
          await keys.fill(open.locator(`[name="${key}"]`), text);
        await open.locator('[data-kept]').first().waitFor();
        await keys.press(open.locator('.opened button.first'));
      }
      await expect.poll(() => left.count()).toBeLessThan(before);
    }
  };
  /** Each part at its own place, its tag typed by its number. */
  const confirmHomes = async (sheet: Locator) => {
    const here = sheet.locator('.homes > [data-here]');
    while ((await here.count()) > 0) {
      const part = (await here.getAttribute('data-home')) ?? '';
      await keys.fill(
        sheet.getByLabel('Tag', { exact: true }),
        (await here.getAttribute('data-number')) ?? '',
      );
      await keys.press(sheet.getByRole('button', { name: 'It goes in here' }));
      await sheet.locator(`[data-home="${part}"][data-state="home"]`).waitFor();
    }
  };
  const scan = async (sheet: Locator, part: string) => {
    const number = await sheet.locator(`.homes > [data-home="${part}"]`).getAttribute('data-number');
    await keys.fill(sheet.getByLabel('Tag', { exact: true }), number ?? '');
    await keys.press(sheet.getByRole('button', { name: 'It goes in here' }));
  };
  const overrule = async (sheet: Locator, by: string, why: string) => {
    const operation = (await sheet.getAttribute('data-operation')) ?? '';
    await keys.press(sheet.getByText('Go on all the same', { exact: true }));
    await keys.fill(sheet.getByLabel('Who answers for it'), by);
    await keys.fill(sheet.getByLabel('Why', { exact: true }), why);
    await keys.press(sheet.getByRole('button', { name: 'Sign though it lacks this' }));
    await sheetOf(operation).waitFor({ state: 'detached' });
  };
  const sign = async (sheet: Locator) => {
    const operation = (await sheet.getAttribute('data-operation')) ?? '';
    await keys.press(sheet.locator('.sign button.first'));
    await sheetOf(operation).waitFor({ state: 'detached' });
  };
  return {
    change,
    open,
    answer,
    reckon,
    write,
    read,
    prove,
    scan,
    overrule,
    sign,
    through: async (operation) => {
      const sheet = await open(operation);
      await confirmHomes(sheet);
      await prove(sheet);
      await answer(sheet);
      await reckon(sheet);
      await tightenAll(sheet, keys);
      await sign(sheet);
    },
  };
};
