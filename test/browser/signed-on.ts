/** @module A bench in the browser at which somebody has signed on, and the job as the store holds it. */
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { replay } from '../../src/job/evolve.ts';
import type { OpenJob } from '../../src/job/job.ts';
import { openPage } from './chromium.ts';
import type { Workshop } from './workshop.ts';

/** On a machine that does much else, a page may take its time, milliseconds. */
const patience = 10_000;

export const openSignedOn = async (
  browser: Browser,
  actor = 'Odo Ferrick',
  bench = 'bench 2',
  options: BrowserContextOptions = {},
): Promise<{ page: Page; troubles: string[] }> => {
  const opened = await openPage(browser, options);
  opened.page.setDefaultTimeout(patience);
  await opened.page
    .context()
    .addInitScript((who) => localStorage.setItem('endfloat who', JSON.stringify(who)), { actor, bench });
  return opened;
};

export const storedJob = async ({ store }: Workshop, id: string): Promise<OpenJob> => {
  const job = replay(await store.readFrom(id, 0));
  if (job.kind !== 'open') throw new Error('the job is not in the store');
  return job;
};
