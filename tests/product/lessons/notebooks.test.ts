import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, readdirSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { ensembleOf } from '@leat/core/analysis';
import { openScenarioText } from '@leat/core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired, openChromium } from '../../support/chromium.js';
import { full } from '../../support/length.js';
import { fitInNode, logInNode, numberInNode, ranInNode } from './node-numbers.js';
import { openLesson, predict, printed, slide, sliders } from './open-lesson.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const root = fileURLToPath(new URL('../../../', import.meta.url));
const out = '.reports/lessons';
const pictures = '.reports/notebooks';
const languages = ['en', 'es'] as const;
const lessonFiles = readdirSync(`${root}notebooks/lessons`)
  .filter((name) => /^\d\d-/.test(name))
  .map((name) => name.replace('.ts', '.html'));

let browser: Browser | undefined;

function stage(): Browser {
  if (browser === undefined) throw new Error('no browser');
  return browser;
}

const folderOf = (language: string): string => `${root}${out}/${language}`;

interface Findings {
  readonly violations: readonly { id: string; impact: string; nodes: readonly { html: string }[] }[];
  readonly passes: readonly unknown[];
}

/** Grave faults of accessibility. */
async function graveFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate<Findings>('axe.run(document, { preload: false })'); // Without what it would fetch of its own: style sheets of a file are refused.
  expect(found.passes.length).toBeGreaterThan(10);
  return found.violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes[0].html}`);
}

/** Numbers of the page that say of which run they are, beside the same numbers of a run in Node. */
async function besideNode(page: Page): Promise<readonly (readonly [string, string])[]> {
  const files = await page
    .locator('pre[data-system]')
    .evaluateAll((shown) =>
      shown.map((each) => [each.getAttribute('data-system') ?? '', each.textContent] as const),
    );
  const runs = new Map(files.map(([name, text]) => [name, ranInNode(text)]));
  const numbers = await page.locator('output[data-file]').evaluateAll((shown) =>
    shown.map((each) => {
      const of = (key: string): string => each.getAttribute(`data-${key}`) ?? '';
      return {
        ...{ text: each.textContent.trim().replace(',', '.'), decimals: Number(of('decimals')) },
        ...{ file: of('file'), statistic: of('statistic'), series: of('series') },
      };
    }),
  );
  return numbers.map(({ text, decimals, file, statistic, series }) => {
    const run = runs.get(file);
    const name = `${file}: ${statistic} ${series}`;
    if (run === undefined) throw new Error(`${name}: the page does not show that file`);
    return [
      `${name} = ${text}`,
      `${name} = ${numberInNode(run, statistic, series).toFixed(decimals)}`,
    ] as const;
  });
}

/** Moves every slider along its way: numbers follow, and those that say of which run they are say what Node says. */
async function holdSliders(page: Page): Promise<void> {
  const names = await sliders(page);
  expect(names.length).toBeGreaterThan(1);
  for (const name of names) {
    const before = await printed(page);
    for (const share of full ? [0.1, 0.5, 0.9] : [0.9]) await slide(page, name, share);
    await expect.poll(() => printed(page), { message: name, timeout: 300_000 }).not.toEqual(before);
  }
  const pairs = await besideNode(page);
  expect(pairs.length).toBeGreaterThan(0);
  expect(pairs.map(([shown]) => shown)).toEqual(pairs.map(([, reckoned]) => reckoned));
}

/** Holds the ensemble that lesson 10 has drawn against the same in Node. */
async function holdEnsemble(page: Page): Promise<void> {
  const feed = page.locator('[data-slider=feed] input[type=number]');
  await feed.fill('30');
  await expect.poll(() => page.locator('pre[data-system]').textContent()).toContain('ration: 30 g/d');
  const open = openScenarioText((await page.locator('pre[data-system]').textContent()) ?? '', {
    file: 'lesson.yaml',
  });
  const sampling = { method: 'latin-hypercube', members: 40, seed: 7 } as const;
  const { measures } = ensembleOf(open, sampling, { measures: ['highest nitrite@tank'], conditions: [] });
  const shown = (name: string): Promise<string | null> =>
    page.locator(`output[data-figure="${name}"]`).textContent();
  expect(await shown('lowest')).toBe(measures[0].lowest.toFixed(1));
  expect(await shown('highest')).toBe(measures[0].highest.toFixed(1));
}

/** Has lesson 11 fit its log, and holds what it found against the same in Node. */
async function holdFit(page: Page): Promise<void> {
  const log = logInNode(await page.locator('textarea').inputValue());
  const file = (await page.locator('pre[data-system]').textContent()) ?? '';
  await page.locator('.work button').click();
  await page.waitForFunction("document.querySelectorAll('.work table').length === 2");
  const found = fitInNode(file, log, [
    'fish.tilapia.ration=10..60 g/d',
    'start.biofilm=0.1..5 %',
    'climate.water-temperature=16..30 degC',
  ]);
  const cells = await page
    .locator('.work table')
    .first()
    .locator('tbody tr td:nth-child(2)')
    .allTextContents();
  expect(cells.map((text) => text.split(' ')[0])).toEqual(found.numbers.map(({ value }) => value.toFixed(2)));
}

/** Holds the page against a width: it does not scroll sideways. */
async function holdWidth(page: Page, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 900 });
  await expect.poll(() => page.evaluate('document.documentElement.scrollWidth')).toBe(width);
}

/** Words of one picture that lie over each other, by their boxes. */
async function overprinted(page: Page): Promise<readonly string[]> {
  return page.locator('svg.chart').evaluateAll((charts) =>
    charts.flatMap((chart) => {
      const words = [...chart.querySelectorAll('text')].filter((text) => text.textContent !== '');
      const boxes = words.map((text) => text.getBoundingClientRect());
      return boxes.flatMap((a, i) =>
        boxes.slice(i + 1).flatMap((b, j) => {
          const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
          const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
          const over = across > 2 && down > 5;
          return over ? [`${words[i].textContent} / ${words[i + 1 + j].textContent}`] : [];
        }),
      );
    }),
  );
}

describe('the browser of the lessons', () => {
  it(`is there where it must be${chromiumMissing}`, () => {
    expect(chromiumHere || !chromiumRequired).toBe(true);
  });
});

describe.skipIf(!chromiumHere)('lessons in Chromium, from the disk, without a network', () => {
  beforeAll(async () => {
    mkdirSync(pictures, { recursive: true });
    execFileSync('node', ['.tools/lessons.mjs', out, '--unchecked'], { cwd: root, stdio: 'pipe' });
    browser = await openChromium();
  });
  afterAll(async () => {
    await browser?.close();
    rmSync(`${root}${out}`, { recursive: true, force: true });
  });

  // Each page is opened once, and made narrow at its end; the full length opens it anew at each width and colour scheme.
  it.each(lessonFiles)(
    '%s is veiled, shows after a prediction, follows its sliders, says what Node says and fits a phone',
    async (file) => {
      const { page, faults } = await openLesson(stage(), folderOf('en'), file, { width: 1280 });
      expect(await page.locator('.veil').count()).toBe(1);
      expect(await page.locator('.chart, .verdict, pre, .shown *').count()).toBe(0);
      await predict(page);
      expect(await page.locator('.reply [data-right]').count()).toBe(1);
      if (file.startsWith('10')) await holdEnsemble(page);
      if (file.startsWith('11')) await holdFit(page);
      await holdSliders(page);
      await holdWidth(page, 1280);
      expect(await graveFaults(page)).toEqual([]);
      await holdWidth(page, 390);
      expect(await graveFaults(page)).toEqual([]);
      expect(await faults()).toEqual([]);
      await page.context().close();
    },
  );

  it.each(lessonFiles.flatMap((file) => languages.map((language) => [language, file] as const)))(
    '%s %s fits a phone, and none of its labels overprint',
    async (language, file) => {
      const { page, faults } = await openLesson(stage(), folderOf(language), file, {
        width: 390,
        dark: true,
      });
      await predict(page);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(390);
      expect(await overprinted(page)).toEqual([]);
      expect(await graveFaults(page)).toEqual([]);
      expect(await faults()).toEqual([]);
      await page.context().close();
    },
  );

  it.each(languages)(
    '%s: a single file asks for nothing but itself, predicts and reveals',
    async (language) => {
      const single = `${folderOf(language)}/single`;
      const { page, faults, requests } = await openLesson(stage(), single, '15-a-drought-summer.html', {
        width: 1280,
      });
      await predict(page);
      expect(await faults()).toEqual([]);
      expect(requests()).toHaveLength(1);
      await page.context().close();
    },
  );

  it('all lessons in one file are found by their links, and a file is saved from it', async () => {
    const { page, faults, requests } = await openLesson(stage(), `${folderOf('en')}/single`, 'all.html', {
      width: 1280,
    });
    expect(await page.locator('main a').count()).toBe(lessonFiles.length + 3);
    await page.locator('a[href="#07-drought"]').click();
    await page.waitForFunction("document.querySelector('.veil') !== null");
    await predict(page);
    await page.locator('details.file summary').click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('[data-save]').click(),
    ]);
    expect(download.suggestedFilename()).toBe('drought.yaml');
    expect(readFileSync(await download.path(), 'utf8')).toBe(
      await page.locator('pre[data-system]').textContent(),
    );
    expect(await faults()).toEqual([]);
    expect(requests().filter((url) => !url.includes('all.html'))).toEqual([]);
    await page.context().close();
  });

  it.each(languages)(
    '%s: worksheets hold no answer; the log of theirs is read by the command',
    async (language) => {
      const { page, faults } = await openLesson(stage(), folderOf(language), 'worksheets.html', {
        width: 1280,
      });
      await page.waitForFunction("document.querySelector('main').hasAttribute('data-done')");
      expect(await page.locator('.sheet').count()).toBe(lessonFiles.length + 1);
      expect(await page.locator('.chart, .verdict, .shown, pre').count()).toBe(0);
      const saved: string[] = [];
      for (const button of await page.locator('[data-save]').all()) {
        const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
        saved.push(await download.path());
      }
      const told = execFileSync('node', ['packages/cli/dist/main.js', 'log', saved[0], '--map', saved[1]], {
        cwd: root,
        encoding: 'utf8',
      });
      expect(told).toMatch(/no reading|0 reading/i);
      expect(await faults()).toEqual([]);
      await page.context().close();
    },
  );

  it('that does not fit a phone, or that cannot be read, is found', async () => {
    const { page } = await openLesson(stage(), folderOf('en'), 'index.html', { width: 390 });
    expect(await graveFaults(page)).toEqual([]);
    await page.evaluate(
      `document.querySelector('main').insertAdjacentHTML('beforeend', '<p style="width: 900px; color: #eee; background: #fff">faint</p>')`,
    );
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeGreaterThan(390);
    expect(await graveFaults(page)).toEqual([expect.stringMatching(/^color-contrast: /)]);
    await page.context().close();
  });

  it('a page from right to left fits as well', async () => {
    const { page } = await openLesson(stage(), folderOf('en'), '07-drought.html', { width: 390 });
    await page.evaluate("document.documentElement.dir = 'rtl'");
    await predict(page);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(390);
    await page.context().close();
  });

  it
    .runIf(full)
    .each(
      lessonFiles.flatMap((file) =>
        ([1280, 390] as const).flatMap((width) => [false, true].map((dark) => [file, width, dark] as const)),
      ),
    )('%s, %i px, dark: %s, is kept as a picture', async (file, width, dark) => {
    const { page, faults } = await openLesson(stage(), folderOf('en'), file, { width, dark });
    await predict(page);
    expect(await graveFaults(page)).toEqual([]);
    expect(await faults()).toEqual([]);
    const path = `${pictures}/${file.replace('.html', '')}-${width}${dark ? '-dark' : ''}.png`;
    await page.screenshot({ path, fullPage: true });
    await page.context().close();
  });
});
