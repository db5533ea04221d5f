import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { ensembleOf, openScenarioText } from '@leat/core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired, openChromium } from '../../support/chromium.js';
import { lessonFiles } from './lesson-cells.js';
import { serveLessons, type ServedLessons } from './lesson-pages.js';
import { fitInNode, logInNode, nitrogenInNode, numberInNode, ranInNode } from './node-numbers.js';
import { openLesson, predict, printed, slide, sliders } from './open-lesson.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const pictures = '.reports/notebooks';
const lessons = lessonFiles.filter((file) => /^(?:0[1-9]|1)/.test(file));
const times: Record<string, number[]> = {};

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
  }, 120_000);
  afterAll(async () => {
    await browser?.close();
    await served?.close();
    writeFileSync(`${pictures}/times.json`, `${JSON.stringify(times, null, 2)}\n`);
  });

  it.each(lessons)(
    '%s shows after a prediction, follows its sliders and says what Node says',
    async (file) => {
      const { browser, address } = stage();
      const { page, faults } = await openLesson(browser, address, file, { width: 1280 });
      await predict(page);
      if (file.startsWith('10'))
        await page.waitForFunction("document.querySelector('[role=status]').textContent === '40 of 40 runs'");
      const names = await sliders(page);
      expect(names.length).toBeGreaterThan(1);
      const took: number[] = [];
      for (const name of names) {
        const before = await printed(page);
        for (const share of [0.1, 0.5, 0.9]) took.push(await slide(page, name, share));
        await expect.poll(() => printed(page), { message: name }).not.toEqual(before);
      }
      times[file] = took.map((ms) => Math.round(ms));
      const fast = [...took].sort((a, b) => a - b)[Math.floor(took.length / 4)];
      expect(fast).toBeLessThan(100);
      const pairs = await besideNode(page);
      expect(pairs.length).toBeGreaterThan(0);
      expect(pairs.map(([shown]) => shown)).toEqual(pairs.map(([, reckoned]) => reckoned));
      expect(await faults()).toEqual([]);
      await page.screenshot({ path: `${pictures}/${file.replace('.html', '')}-1280.png`, fullPage: true });
      await page.context().close();
    },
  );

  it('says of gas, crops and solids what the balance in Node says', async () => {
    const { browser, address } = stage();
    const expected = [
      ['02', 'gas-now', (text: string) => nitrogenInNode(ranInNode(text), 'nitrogen gas').amount],
      ['03', 'crop-now', (text: string) => 100 * nitrogenInNode(ranInNode(text), 'harvested crop').share],
      ['12', 'gas-now', (text: string) => 100 * nitrogenInNode(ranInNode(text), 'nitrogen gas').share],
    ] as const;
    for (const [start, name, reckon] of expected) {
      const file = lessons.find((each) => each.startsWith(start)) ?? '';
      const { page } = await openLesson(browser, address, file, { width: 1280 });
      await slide(page, 'feed', 0.5);
      const value = reckon(await fileOn(page));
      expect(value).toBeGreaterThan(1);
      await expect.poll(() => figureOf(page, name), { message: file }).toBe(value.toFixed(1));
      await page.context().close();
    }
  });

  it('draws the same ensemble as Node', async () => {
    const { browser, address } = stage();
    const { page } = await openLesson(browser, address, lessons[9], { width: 1280 });
    await predict(page);
    await page.waitForFunction("document.querySelector('[role=status]').textContent === '40 of 40 runs'");
    const open = openScenarioText(await fileOn(page), { file: 'lesson.yaml' });
    const sampling = { method: 'latin-hypercube', members: 40, seed: 7 } as const;
    const { measures } = ensembleOf(open, sampling, { measures: ['highest nitrite@tank'], conditions: [] });
    expect(await figureOf(page, 'lowest')).toBe(measures[0].lowest.toFixed(1));
    expect(await figureOf(page, 'highest')).toBe(measures[0].highest.toFixed(1));
    await page.context().close();
  });

  it('fits the log of the page as Node does, and knows better with a thermometer', async () => {
    const { browser, address } = stage();
    const { page, faults } = await openLesson(browser, address, lessons[10], { width: 390 });
    await predict(page);
    const log = logInNode(await page.locator('textarea').inputValue());
    const file = await fileOn(page);
    await page.locator('.work button').click();
    await page.waitForFunction("document.querySelector('.work table') !== null", undefined, {
      timeout: 60_000,
    });
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
    expect(await graveFaults(page)).toEqual([]);
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(390);
    expect(await faults()).toEqual([]);
    await page.screenshot({ path: `${pictures}/11-fitted-390.png`, fullPage: true });
    await page.context().close();
  }, 180_000);

  it.each(lessonFiles)('%s has no grave fault of accessibility and fits a phone', async (file) => {
    const { browser, address } = stage();
    for (const [width, dark] of [
      [1280, true],
      [390, false],
    ] as const) {
      const { page, faults } = await openLesson(browser, address, file, { width, dark });
      await predict(page);
      expect(await graveFaults(page)).toEqual([]);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
      expect(await faults()).toEqual([]);
      await page.screenshot({
        path: `${pictures}/${file.replace('.html', '')}-${width}${dark ? '-dark' : ''}.png`,
        fullPage: true,
      });
      await page.context().close();
    }
  });
});
