// How long a reader waits for the page, on this machine and with the thread of the page throttled four times; run by hand:
//   npm run page && node tests/bench/page-times.mjs
// Medians of three openings from the disk, ms. Workers, which run the model, are not throttled by a browser.
/* global document -- what is given to the page runs there */
import { performance } from 'node:perf_hooks';
import { pathToFileURL, fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const file = pathToFileURL(fileURLToPath(new URL('../../.page/leat.html', import.meta.url))).href;
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const times = 3;

const median = (values) => [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)];

async function timed(work) {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

async function opened(browser, rate) {
  const page = await browser.newPage({ locale: 'en-GB' });
  const session = await page.context().newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate });
  const found = {};
  const start = performance.now();
  await page.goto(file, { waitUntil: 'commit' });
  await page.waitForSelector('.editor textarea');
  found['text to be typed in'] = performance.now() - start;
  await page.waitForSelector('figure.system svg', { state: 'attached' });
  found['system drawn'] = performance.now() - start;
  found['first paint'] = await page.evaluate(
    () => globalThis.performance.getEntriesByName('first-contentful-paint')[0].startTime,
  );
  found['first run, 180 days'] = await timed(async () => {
    await page.click('#run');
    await page.waitForSelector('.short li');
  });
  await page.waitForTimeout(2000); // The folded sections are made.
  await page.selectOption('#number', 'fish.growers.number');
  await page.focus('#slider');
  found['slider, first run'] = await timed(async () => {
    await page.keyboard.press('End');
    await page.waitForSelector('.tried .pair');
  });
  const before = await page.textContent('.tried');
  found['slider, next run'] = await timed(async () => {
    await page.keyboard.press('Home');
    await page.waitForFunction((text) => document.querySelector('.tried')?.textContent !== text, before);
  });
  await page.close();
  return found;
}

const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] });
const table = {};
for (const rate of [1, 4]) {
  const all = [];
  for (let i = 0; i < times; i++) all.push(await opened(browser, rate));
  for (const name of Object.keys(all[0]))
    (table[name] ??= {})[rate === 1 ? 'as it is' : 'throttled 4 times'] = Math.round(
      median(all.map((each) => each[name])),
    );
}
await browser.close();
console.table(table);
