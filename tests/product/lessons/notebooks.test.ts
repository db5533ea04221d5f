import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { ensembleOf, openScenarioText, type Run } from '@leat/core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired, openChromium } from '../../support/chromium.js';
import { full } from '../../support/length.js';
import { lessonFiles } from './lesson-cells.js';
import { serveLessons, type ServedLessons } from './lesson-pages.js';
import { fitInNode, logInNode, nitrogenInNode, numberInNode, ranInNode } from './node-numbers.js';
import { openLesson, predict, printed, slide, sliders } from './open-lesson.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
/** Only to end what hangs, ms. */
const timeout = 300_000;
const pictures = '.reports/notebooks';
const lessons = lessonFiles.filter((file) => /^(?:0[1-9]|1)/.test(file));

let browser: Browser | undefined;
let served: ServedLessons | undefined;

function stage(): { readonly browser: Browser; readonly address: string } {
  if (browser === undefined || served === undefined) throw new Error('no browser');
  return { browser, address: served.address };
}

interface Findings {
  readonly violations: readonly { id: string; impact: string; nodes: readonly { html: string }[] }[];
  readonly passes: readonly unknown[];
}

/** Grave faults of accessibility. */
async function graveFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate<Findings>('axe.run(document)');
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
      const name = `${of('file')}: ${of('statistic')} ${of('series')}`;
      return {
        name,
        text: each.textContent.trim(),
        decimals: Number(of('decimals')),
        file: of('file'),
        statistic: of('statistic'),
        series: of('series'),
      };
    }),
  );
  return numbers.map(({ name, text, decimals, file, statistic, series }) => {
    const run = runs.get(file);
    if (run === undefined) throw new Error(`${name}: the page does not show that file`);
    return [
      `${name} = ${text}`,
      `${name} = ${numberInNode(run, statistic, series).toFixed(decimals)}`,
    ] as const;
  });
}

const figureOf = async (page: Page, name: string): Promise<string> =>
  (await page.locator(`output[data-figure="${name}"]`).textContent())?.trim() ?? '';
const fileOn = async (page: Page): Promise<string> =>
  (await page.locator('pre[data-system]').textContent()) ?? '';

/** What one lesson claims of gas and crops: the figure, and the same of the balance in Node. */
const balances: Readonly<Record<string, readonly [string, (run: Run) => number]>> = {
  '02': ['gas-now', (run) => nitrogenInNode(run, 'nitrogen gas').amount],
  '03': ['crop-now', (run) => 100 * nitrogenInNode(run, 'harvested crop').share],
  '12': ['gas-now', (run) => 100 * nitrogenInNode(run, 'nitrogen gas').share],
};

/** Holds gas, crops and solids of a lesson against the balance in Node. */
async function holdBalance(page: Page, start: string): Promise<void> {
  const [name, reckon] = balances[start];
  await slide(page, 'feed', 0.5);
  const value = reckon(ranInNode(await fileOn(page)));
  expect(value).toBeGreaterThan(1);
  await expect.poll(() => figureOf(page, name), { message: name, timeout }).toBe(value.toFixed(1));
}

/** Holds the ensemble that lesson 10 has drawn against the same in Node. */
async function holdEnsemble(page: Page): Promise<void> {
  const open = openScenarioText(await fileOn(page), { file: 'lesson.yaml' });
  const sampling = { method: 'latin-hypercube', members: 40, seed: 7 } as const;
  const { measures } = ensembleOf(open, sampling, { measures: ['highest nitrite@tank'], conditions: [] });
  expect(await figureOf(page, 'lowest')).toBe(measures[0].lowest.toFixed(1));
  expect(await figureOf(page, 'highest')).toBe(measures[0].highest.toFixed(1));
}

/** Has lesson 11 fit its log, and holds what it found against the same in Node; with a thermometer it knows better. */
async function holdFit(page: Page): Promise<void> {
  const log = logInNode(await page.locator('textarea').inputValue());
  const file = await fileOn(page);
  await page.locator('.work button').click();
  await page.waitForFunction("document.querySelector('.work table') !== null");
  const free = ['fish.tilapia.ration=10..60 g/d', 'start.biofilm=0.1..5 %'];
  const blind = fitInNode(file, log, [...free, 'climate.water-temperature=16..30 degC']);
  const measured = fitInNode(
    file.replace(/water-temperature: [\d.]+ degC/, 'water-temperature: 22 degC'),
    log,
    free,
  );
  for (const [name, found] of [
    ['blind', blind],
    ['measured', measured],
  ] as const)
    for (const [i, { value, low, high }] of found.numbers.entries())
      expect([
        await figureOf(page, `${name}-${i}`),
        await figureOf(page, `${name}-${i}-low`),
        await figureOf(page, `${name}-${i}-high`),
      ]).toEqual([value, low, high].map((each) => each.toFixed(2)));
  expect(await figureOf(page, 'fit-entangled')).toBe(blind.entangled[0].correlation.toFixed(2));
  const biofilm = measured.numbers[1];
  expect(biofilm.low).toBeLessThan(0.4);
  expect(biofilm.high).toBeGreaterThan(0.4);
}

/** Moves every slider along its way: numbers follow, and those that say of which run they are say what Node says. */
async function holdSliders(page: Page): Promise<void> {
  const names = await sliders(page);
  expect(names.length).toBeGreaterThan(1);
  for (const name of names) {
    const before = await printed(page);
    for (const share of full ? [0.1, 0.5, 0.9] : [0.9]) await slide(page, name, share);
    await expect.poll(() => printed(page), { message: name, timeout }).not.toEqual(before);
  }
  const pairs = await besideNode(page);
  expect(pairs.length).toBeGreaterThan(0);
  expect(pairs.map(([shown]) => shown)).toEqual(pairs.map(([, reckoned]) => reckoned));
}

/** Holds the page against a width: it does not scroll sideways. */
async function holdWidth(page: Page, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 900 });
  await expect.poll(() => page.evaluate('document.documentElement.scrollWidth'), { timeout }).toBe(width);
}

describe('the browser of the lessons', () => {
  it(`is there where it must be${chromiumMissing}`, () => {
    expect(chromiumHere || !chromiumRequired).toBe(true);
  });
});

describe.skipIf(!chromiumHere)('lessons in Chromium', () => {
  beforeAll(async () => {
    mkdirSync(pictures, { recursive: true });
    served = await serveLessons();
    browser = await openChromium();
  });
  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  // Each page is opened once, and made narrow at its end; the full length opens it anew at each width and colour scheme.
  it.each(lessons)(
    '%s shows after a prediction, follows its sliders, says what Node says and fits a phone',
    async (file) => {
      const { browser, address } = stage();
      const start = file.slice(0, 2);
      const { page, faults } = await openLesson(browser, address, file, { width: 1280 });
      await predict(page);
      if (start === '10') {
        await page.waitForFunction("document.querySelector('[role=status]').textContent === '40 of 40 runs'");
        await holdEnsemble(page);
      }
      if (start === '11') await holdFit(page);
      if (start in balances) await holdBalance(page, start);
      await holdSliders(page);
      await holdWidth(page, 1280);
      await holdWidth(page, 390);
      expect(await graveFaults(page)).toEqual([]);
      expect(await faults()).toEqual([]);
      await page.context().close();
    },
  );

  it.each(lessonFiles.filter((file) => !lessons.includes(file)))(
    '%s has no grave fault of accessibility and fits a phone',
    async (file) => {
      const { browser, address } = stage();
      const { page, faults } = await openLesson(browser, address, file, { width: 1280, dark: true });
      await holdWidth(page, 1280);
      await holdWidth(page, 390);
      expect(await graveFaults(page)).toEqual([]);
      expect(await faults()).toEqual([]);
      await page.context().close();
    },
  );

  it('that does not fit a phone, or that cannot be read, is found', async () => {
    const { browser, address } = stage();
    const { page } = await openLesson(browser, address, lessonFiles[0], { width: 390 });
    await page.evaluate(
      `document.querySelector('main').insertAdjacentHTML('beforeend', '<p style="width: 900px; color: #eee; background: #fff">faint</p>')`,
    );
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeGreaterThan(390);
    expect(await graveFaults(page)).toEqual([expect.stringMatching(/^color-contrast: /)]);
    await page.context().close();
  });

  it.runIf(full).each(
    lessonFiles.flatMap((file) =>
      (
        [
          [1280, false],
          [1280, true],
          [390, false],
          [390, true],
        ] as const
      ).map(([width, dark]) => [file, width, dark] as const),
    ),
  )(
    '%s, %i px, dark: %s, has no grave fault and fits, and is kept as a picture',
    async (file, width, dark) => {
      const { browser, address } = stage();
      const { page, faults } = await openLesson(browser, address, file, { width, dark });
      await predict(page);
      expect(await graveFaults(page)).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
      expect(await faults()).toEqual([]);
      const path = `${pictures}/${file.replace('.html', '')}-${width}${dark ? '-dark' : ''}.png`;
      await page.screenshot({ path, fullPage: true });
      await page.context().close();
    },
  );
});
