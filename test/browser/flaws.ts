/** @module What a sheet may not have: a barrier that axe finds, more width than the screen, a target smaller than a glove. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** Gloved fingers: CSS pixels. */
const reach = 48;

/** Controls that are lower than a gloved finger is wide; words within a line and the skip link are no targets. */
const tooSmall = (page: Page): Promise<readonly string[]> =>
  page.evaluate((least) => {
    const controls = document.querySelectorAll<HTMLElement>(
      'button, a.button, .phases a, select, input:not([type="file"]), textarea, summary',
    );
    return [...controls]
      .filter((control) => control.checkVisibility() && control.getBoundingClientRect().height < least - 0.5)
      .map((control) => control.outerHTML.slice(0, 120));
  }, reach);

export const overflow = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** The record in its frame is a document of its own with thousands of cells: it is looked at by itself. */
const record = 'iframe.record';

/**
 * What stands between the page and whoever reads it by ear or by keys; empty where nothing does.
 *
 * Everything is of one origin, so that axe needs no second page to bring frames together (legacy mode), and what passed
 * is not asked for: a quarter of the time for the same rules.
 * @param within  the part of the page that is looked at; without, all of it but the record in its frame
 */
export const barriers = async (page: Page, within?: string): Promise<readonly string[]> => {
  const axe = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'] });
  const { violations } = await (within === undefined ? axe.exclude(record) : axe.include(within)).analyze();
  return violations.map(
    ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
  );
};

/** Takes the rows of long tables away after the first so many, which are like them. */
export const withShortTables = (page: Page): Promise<void> =>
  page.evaluate((most) => {
    for (const body of document.querySelectorAll('tbody'))
      for (const row of [...body.rows].slice(most)) row.remove();
  }, 5);

/** Everything that is wrong with the page as it stands; empty where nothing is. */
export const flawsOf = async (page: Page): Promise<readonly string[]> => {
  const wider = await overflow(page);
  return [
    ...(await barriers(page)),
    ...(wider > 0 ? [`wider than the screen by ${wider} px`] : []),
    ...(await tooSmall(page)).map((control) => `smaller than a glove: ${control}`),
  ];
};
