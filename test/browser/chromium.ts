/** @module A browser for the tests: the machine's own Chromium, a fresh profile each time. */
import { existsSync } from 'node:fs';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';

const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Where the browser is; the test command says by `CHROMIUM_PATH`, a single test run by hand looks itself. */
const chromiumPath: string | undefined = process.env.CHROMIUM_PATH || places.find((path) => existsSync(path));

/** Why the browser tests are skipped, or undefined when there is a browser. */
export const noBrowser: string | undefined =
  chromiumPath === undefined
    ? 'no Chromium on this machine: apt-get install chromium, or set CHROMIUM_PATH to one'
    : undefined;

const launchFlags = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-dev-shm-usage',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

/** Starts the browser, with a new profile folder that goes when it is closed. */
export const openBrowser = (more: readonly string[] = []): Promise<Browser> => {
  if (chromiumPath === undefined) throw new Error(noBrowser);
  return chromium.launch({ executablePath: chromiumPath, headless: true, args: [...launchFlags, ...more] });
};

/** The screens that the app is made for. */
export const desk = { width: 1280, height: 800 };
export const tablet = { width: 768, height: 1024 };

/**
 * A page of its own (nothing shared with other pages), and what went wrong in it: uncaught errors and errors
 * on the console. A test ends by expecting `troubles` to be empty.
 */
export const openPage = async (
  browser: Browser,
  options: BrowserContextOptions = {},
): Promise<{ page: Page; troubles: string[] }> => {
  const context = await browser.newContext({
    viewport: desk,
    locale: 'en-GB',
    timezoneId: 'UTC',
    ...options,
  });
  const page = await context.newPage();
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(`uncaught: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(`console: ${message.text()}`);
  });
  return { page, troubles };
};
