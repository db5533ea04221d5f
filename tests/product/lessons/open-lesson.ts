import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'playwright-core';

/** A lesson opened in the browser, and everything that it should not have done so far. */
export interface OpenLesson {
  readonly page: Page;
  /** Errors of the page, of its console and of its runs, and requests that went outside. */
  readonly faults: () => Promise<readonly string[]>;
  /** Addresses that were asked for. */
  readonly requests: () => readonly string[];
}

/** Opens a page from the disk, the network off, with every request to anything but its folder blocked and kept. */
export async function openLesson(
  browser: Browser,
  folder: string,
  file: string,
  look: { readonly width: number; readonly dark?: boolean },
): Promise<OpenLesson> {
  const context = await browser.newContext({
    ...{ viewport: { width: look.width, height: 900 }, colorScheme: look.dark === true ? 'dark' : 'light' },
    offline: true,
  });
  // A busy machine takes the time it takes: what hangs is ended by the runner of the tests.
  context.setDefaultTimeout(0);
  const page = await context.newPage();
  const seen: string[] = [];
  const asked: string[] = [];
  page.on('pageerror', (error) => seen.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') seen.push(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    if (!request.url().startsWith('data:') && !request.url().startsWith('blob:')) asked.push(request.url());
  });
  const address = pathToFileURL(join(folder, file)).href;
  await page.goto(address);
  await page.waitForFunction("document.querySelector('main').textContent.trim().length > 0");
  const faults = async (): Promise<readonly string[]> => [
    ...seen,
    ...asked
      .filter((url) => !url.startsWith(pathToFileURL(`${folder}/`).href))
      .map((url) => `asked outside: ${url}`),
    ...(await page.locator('[data-failed]').allTextContents()).map((text) => `failed: ${text}`),
  ];
  return { page, faults, requests: () => asked };
}

/** Answers the prediction of the page and waits for what comes after it. */
export async function predict(page: Page): Promise<void> {
  const choice = page.locator('.predict input[type=radio]').first();
  if ((await choice.count()) > 0) await choice.check();
  await page.locator('.predict button').click();
  await page.waitForFunction("document.querySelector('.veil') === null");
}

/** Values printed on the page, in order. */
export async function printed(page: Page): Promise<readonly string[]> {
  return (await page.locator('output').allTextContents()).map((text) => text.trim());
}

/** Names of the sliders that change the system. */
export async function sliders(page: Page): Promise<readonly string[]> {
  return page
    .locator('[data-slider]:not(.predict *)')
    .evaluateAll((forms) => forms.map((form) => form.getAttribute('data-slider') ?? ''));
}

/**
 * Moves a slider to a share of its way, as a finger does, and waits until nothing on the page changes any more.
 * @returns ms from the input until the frame with the last change has been laid out and painted
 */
export async function slide(page: Page, name: string, share: number): Promise<number> {
  return page.evaluate(
    ([slider, way]) =>
      new Promise<number>((resolve, reject) => {
        const range = document.querySelector<HTMLInputElement>(
          `[data-slider="${slider}"]:not(.predict *) input[type=range]`,
        );
        const main = document.querySelector('main');
        if (range === null || main === null) throw new Error(`no slider ${slider}`);
        const tired = setTimeout(() => reject(new Error(`nothing changes with ${slider}`)), 300_000);
        const before = performance.now();
        let quiet: ReturnType<typeof setTimeout> | undefined;
        const watcher = new MutationObserver(() => {
          clearTimeout(quiet);
          requestAnimationFrame(() => {
            // A task after the frame: by then it is painted.
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => {
              const took = performance.now() - before;
              clearTimeout(quiet);
              quiet = setTimeout(() => {
                watcher.disconnect();
                clearTimeout(tired);
                resolve(took);
              }, 60);
            };
            port2.postMessage(0);
          });
        });
        watcher.observe(main, { childList: true, subtree: true });
        range.value = String(Number(range.min) + way * (Number(range.max) - Number(range.min)));
        range.dispatchEvent(new Event('input', { bubbles: true }));
      }),
    [name, share] as const,
  );
}
