import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired } from '../../support/chromium.js';
import { folderWith, leat } from '../../support/leat.js';
import { xlsx } from '../../support/xlsx.js';
import { giveFiles, pageForTests, runSystem, savedBy, shipped, short } from './open-page.js';

const tested = pageForTests();

/** A text on one line, as the page has it. */
const joined = (text: string): string => text.replaceAll(/\s+/g, ' ');

async function ask(page: Page, name: string): Promise<string> {
  await page.click(`#${name}`);
  await page.waitForSelector(`#ask-${name} .answer`);
  return (await page.textContent(`#ask-${name} .answer`)) ?? '';
}

describe.skipIf(!chromiumHere && !chromiumRequired)(`questions of the page${chromiumMissing}`, () => {
  it('answers why in the sentence of the command', async () => {
    const folder = folderWith({ 'short.yaml': short });
    const { out } = await leat(
      ['why', 'short.yaml', '--of', 'nitrate@tank-1', '--from', '0d', '--to', '10d'],
      folder,
    );
    const { page, wrong } = await tested.open();
    await giveFiles(page, { 'short.yaml': short });
    await runSystem(page);
    await page.click('#ask-why > summary');
    await page.selectOption('#why-of', 'nitrate@tank-1');
    expect(joined(out)).toContain(await ask(page, 'why'));
    expect(wrong).toEqual([]);
    await page.context().close();
  });

  it('finds what to change, as the command does, and opens it as a system', async () => {
    const salty = short.replace(
      /^dosing:\n/m,
      'dosing:\n  - { into: sump, product: sodium-chloride, mass: 20 kg, at: 4 d }\n',
    );
    const folder = folderWith({ 'salty.yaml': salty });
    const { out } = await leat(['advise', 'salty.yaml'], folder);
    const [, first] = /^1\. (.*)$/m.exec(out) ?? [];
    expect(first).toBeTruthy();
    const { page, wrong } = await tested.open();
    await giveFiles(page, { 'salty.yaml': salty });
    await runSystem(page);
    await page.click('#ask-advise > summary');
    await ask(page, 'advise');
    expect(await page.textContent('#ask-advise li strong')).toContain(first);
    await page.click('#ask-advise li button');
    expect(await page.inputValue('.editor textarea')).toContain('include: "salty.yaml"');
    expect(await runSystem(page)).toContain('Fish');
    expect(wrong).toEqual([]);
    await page.context().close();
  });

  it('plans as the command does, week by week, and opens the plan as a system', async () => {
    const folder = folderWith({ 'short.yaml': short });
    const { out } = await leat(['plan', 'short.yaml'], folder);
    const { page, wrong } = await tested.open();
    await giveFiles(page, { 'short.yaml': short });
    await runSystem(page);
    await page.click('#ask-plan > summary');
    expect(joined(out)).toContain(await ask(page, 'plan'));
    const tables = await page.locator('#ask-plan caption').allTextContents();
    for (const title of tables) expect(out).toContain(title);
    expect(tables).toEqual(expect.arrayContaining([expect.stringContaining('feed, g a day')]));
    await page.click('#open-plan');
    expect(await runSystem(page)).toContain('Fish');
    expect(wrong).toEqual([]);
    await page.context().close();
  });

  it('reads a log that is a spreadsheet, and fits to it as the command does', async () => {
    const rows = shipped('backyard.csv')
      .trim()
      .split('\n')
      .slice(0, 25)
      .map((line) => line.split(','));
    const book = Buffer.from(xlsx({ Tests: rows }));
    const given = {
      'backyard.yaml': shipped('backyard.yaml').replace(/^days: .*$/m, 'days: 40'),
      'backyard.xlsx': book,
      'backyard.map': shipped('backyard.map'),
    };
    const folder = folderWith(given);
    const args = ['--log', 'backyard.xlsx', '--map', 'backyard.map', '--out', 'fit.json'];
    const told = await leat(['fit', 'backyard.yaml', ...args], folder);
    expect([0, 3]).toContain(told.code);
    const { page, wrong } = await tested.open();
    await giveFiles(page, given);
    await page.click('#ask-fit > summary');
    expect(await page.textContent('#ask-fit p')).toContain('backyard.xlsx');
    await page.click('#fit');
    await page.waitForSelector('#save-fit');
    expect(await savedBy(page, '#save-fit')).toBe(readFileSync(join(folder, 'fit.json'), 'utf8'));
    await giveFiles(page, { 'broken.xlsx': Buffer.from('PK no spreadsheet') });
    await page.waitForSelector('#trouble');
    expect(await page.textContent('#trouble')).toContain('broken.xlsx: cannot be read as a spreadsheet');
    expect(wrong).toEqual([]);
    await page.context().close();
  });
});
