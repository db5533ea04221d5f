import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired } from '../../support/chromium.js';
import { folderWith, leat } from '../../support/leat.js';
import { giveFiles, pageForTests, runSystem, savedBy, shipped, short, typeSystem } from './open-page.js';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

const tested = pageForTests();

interface Findings {
  readonly violations: readonly {
    readonly id: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
  readonly passes: readonly unknown[];
}

/** All that axe finds wrong. The policy of the page lets no other script in, so it is put in past it. */
async function faultsOf(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  const found = await page.evaluate<Findings>('axe.run(document, { preload: false })');
  expect(found.passes.length).toBeGreaterThan(10);
  return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
}

/** Whether the page is wider than its window. */
const isWider = (page: Page): Promise<boolean> =>
  page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);

describe.skipIf(!chromiumHere && !chromiumRequired)(`views of the page${chromiumMissing}`, () => {
  it('draws the system as it is typed, with actions that come later too', async () => {
    const { page, wrong } = await tested.open();
    await page.waitForSelector('figure.system svg', { state: 'attached' });
    await typeSystem(page, short.replaceAll('tank-1', 'carp-pond'));
    await page.waitForFunction(() =>
      (document.querySelector('figure.system')?.textContent ?? '').includes('carp-pond'),
    );
    expect(wrong).toEqual([]);
    await page.context().close();
  });

  it('says of a key what it means, with range and default, and completes one', async () => {
    const { page, wrong } = await tested.open();
    await page.waitForSelector('.pce-line .key');
    await typeSystem(page, `${short}\nfi`);
    await page.evaluate(() => {
      document.querySelector('.prism-code-editor')?.scrollTo(0, 0);
      document.querySelector('.editor')?.scrollIntoView({ block: 'start' });
    });
    const key = page.locator('.pce-line .key', { hasText: /^days$/ });
    const box = await key.boundingBox();
    if (box === null) throw new Error('the key is not in view');
    await page.mouse.move(box.x + 4, box.y + 4);
    await page.mouse.move(box.x + 6, box.y + 5);
    await page.waitForSelector('.pce-hover-tooltip .meaning');
    expect(await page.textContent('.pce-hover-tooltip')).toMatch(
      /^days: length of the run in days.*range: 0\.001 to 36525/,
    );
    await page.focus('.editor textarea');
    await page.keyboard.press('Control+End');
    await page.keyboard.press('Control+Space');
    await page.waitForSelector('.pce-ac-row[aria-selected]');
    expect(await page.textContent('.pce-ac-row[aria-selected]')).toContain('fish');
    await page.keyboard.press('Enter');
    expect(await page.inputValue('.editor textarea')).toMatch(/\nfish: $/);
    expect(wrong).toEqual([]);
    await page.context().close();
  });

  it('fits a system to a log that is dropped, as the command does to the byte, and looks ahead', async () => {
    const given = Object.fromEntries(
      ['backyard.yaml', 'backyard.csv', 'backyard.map'].map((name) => [name, shipped(name)]),
    );
    const folder = folderWith(given);
    const told = await leat(
      ['fit', 'backyard.yaml', '--log', 'backyard.csv', '--map', 'backyard.map', '--out', 'fit.json'],
      folder,
    );
    expect(told.code).toBe(0);
    const { page, wrong } = await tested.open();
    await giveFiles(page, given);
    await page.click('#ask-fit > summary');
    await page.click('#fit');
    await page.waitForSelector('#save-fit');
    expect(await savedBy(page, '#save-fit')).toBe(readFileSync(join(folder, 'fit.json'), 'utf8'));
    await page.click('#forecast');
    await page.waitForSelector('#ask-fit caption:has-text("From 20")');
    expect(await page.locator('#ask-fit tbody tr').count()).toBeGreaterThan(8);
    expect(wrong).toEqual([]);
    await page.context().close();
  });

  it('turns a number of a file that is included, and puts it into that file', async () => {
    const { page, wrong } = await tested.open();
    await giveFiles(page, { 'over.yaml': 'include: base.yaml\ntitle: Laid over\n', 'base.yaml': short });
    await runSystem(page);
    const option = page.locator('#number option[value="fish.growers.number"]');
    await option.waitFor({ state: 'attached' });
    expect(await option.textContent()).toContain('(base.yaml)');
    await page.selectOption('#number', 'fish.growers.number');
    await page.focus('#slider');
    await page.keyboard.press('End');
    await page.waitForSelector('.tried .pair');
    await page.click('#put-turned');
    await page.waitForSelector('.results .warn');
    expect(await runSystem(page)).toContain('Fish');
    expect(await page.inputValue('.editor textarea')).toBe('include: base.yaml\ntitle: Laid over\n');
    expect(await option.textContent()).toContain(': 60 ');
    expect(wrong).toEqual([]);
    await page.context().close();
  });

  it.each([
    [1280, false, 'en'],
    [390, false, 'es'],
    [1280, true, 'es'],
    [390, true, 'en'],
  ] as const)('has no fault of access and fits, %d px, dark: %s, %s', async (width, dark, language) => {
    const { page, wrong } = await tested.open({ width, dark });
    await page.selectOption('#language', language);
    await page.waitForSelector('figure.system svg', { state: 'attached' });
    await page.click('#form > summary');
    expect(await faultsOf(page)).toEqual([]);
    await page.click('#form > summary');
    await typeSystem(page, short);
    await runSystem(page);
    await page.evaluate(() => {
      for (const each of document.querySelectorAll('details')) each.open = true;
    });
    expect(await faultsOf(page)).toEqual([]);
    expect(await isWider(page)).toBe(false);
    await typeSystem(page, short.replace('days: 10', 'dayz: 10'));
    await page.waitForSelector('.faults li');
    expect(await faultsOf(page)).toEqual([]);
    expect(wrong).toEqual([]);
    await page.context().close();
  });
});
