import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll } from 'vitest';
import { chromiumHere, openChromium } from '../../support/chromium.js';
import { root } from '../packages/packed.js';

/** A scenario that comes with the page, as text. */
export const shipped = (name: string): string =>
  readFileSync(join(root, 'packages/cli/scenarios', name), 'utf8');

/** The shipped glasshouse with ten days, for a run that is soon over. */
export const short = shipped('glasshouse.yaml').replace(/^days: .*$/m, 'days: 10');

/** Builds the page as `npm run page` does, into a folder of its own. */
async function buildPage(): Promise<string> {
  const outDir = mkdtempSync(join(tmpdir(), 'leat-page-'));
  await build({ configFile: join(root, 'packages/page/vite.config.ts'), build: { outDir } });
  return join(outDir, 'leat.html');
}

/** A page opened from the disk with the network off, and what went wrong in it. */
export interface OpenedPage {
  readonly page: Page;
  readonly wrong: readonly string[];
}

/** How a page is opened. */
interface Given {
  readonly width?: number;
  readonly fragment?: string;
  readonly dark?: boolean;
}

/**
 * The page and a browser for all tests of a file, where the browser is on this machine; both are gone after them. `open` opens
 * the page anew, from the disk.
 * @param offline off where a browser cannot be told to be: requests are wrong all the same
 */
export function pageForTests(
  here: boolean = chromiumHere,
  launch: () => Promise<Browser> = openChromium,
  { offline = true }: { readonly offline?: boolean } = {},
): { readonly file: () => string; readonly open: (given?: Given) => Promise<OpenedPage> } {
  let file = '';
  let browser: Browser | undefined;
  beforeAll(async () => {
    if (!here) return;
    file = await buildPage();
    browser = await launch();
  });
  afterAll(async () => {
    await browser?.close();
  });
  return {
    file: () => file,
    open(given = {}) {
      if (browser === undefined) throw new Error('no browser');
      return openPage(browser, file, offline, given);
    },
  };
}

/** Opens the page from the disk; every request for anything else, and every error, is wrong. */
async function openPage(browser: Browser, file: string, offline: boolean, given: Given): Promise<OpenedPage> {
  const context = await browser.newContext({
    ...{ offline, locale: 'en-GB', acceptDownloads: true },
    viewport: { width: given.width ?? 1280, height: 900 },
    ...(given.dark === true && { colorScheme: 'dark' }),
  });
  context.setDefaultTimeout(0);
  const page = await context.newPage();
  const wrong: string[] = [];
  page.on('pageerror', ({ message }) => wrong.push(message));
  page.on('console', (message) => {
    if (message.type() === 'error') wrong.push(message.text());
  });
  page.on('request', (request) => {
    if (!/^(?:file|blob|data):/.test(request.url())) wrong.push(`asks for ${request.url()}`);
  });
  await page.goto(`${pathToFileURL(file).href}${given.fragment ?? ''}`);
  return { page, wrong };
}

/** Puts a text into the editor in place of all that stands there. */
export async function typeSystem(page: Page, text: string): Promise<void> {
  await page.fill('.editor textarea', text);
}

/** Gives files to the page as its button does. */
export const giveFiles = (page: Page, files: Readonly<Record<string, string | Uint8Array>>): Promise<void> =>
  page.setInputFiles(
    '#files',
    Object.entries(files).map(([name, content]) => ({
      name,
      mimeType: 'application/octet-stream',
      buffer: Buffer.from(content),
    })),
  );

/** Runs the system and gives the verdict. */
export async function runSystem(page: Page): Promise<string> {
  await page.waitForSelector('#run:not([disabled])');
  await page.click('#run');
  await page.waitForSelector('#run:not([disabled])');
  return (await page.textContent('.short')) ?? '';
}

/** Text of the file that a button saves. */
export async function savedBy(page: Page, button: string): Promise<string> {
  const coming = page.waitForEvent('download');
  await page.click(button);
  return readFileSync(await (await coming).path(), 'utf8');
}
