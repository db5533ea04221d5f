import { describe, expect, it } from 'vitest';
import { firefoxHere, firefoxMissing, openFirefox } from '../../support/firefox.js';
import { folderWith, leat } from '../../support/leat.js';
import { pageForTests, runSystem, short, typeSystem } from './open-page.js';

const tested = pageForTests(firefoxHere, openFirefox, { offline: false });

describe.skipIf(!firefoxHere)(`the page in Firefox, from the disk${firefoxMissing}`, () => {
  it('draws, runs and tells what the command tells, and turns a number', async () => {
    const { out } = await leat(['run', 'short.yaml'], folderWith({ 'short.yaml': short }));
    const lines = out.replaceAll(/\n */g, ' ');
    const { page, wrong } = await tested.open();
    await page.waitForSelector('figure.system svg', { state: 'attached' });
    await typeSystem(page, short);
    await runSystem(page);
    for (const line of await page.locator('.short li').allTextContents()) expect(lines).toContain(line);
    await page.selectOption('#number', 'fish.growers.number');
    await page.focus('#slider');
    await page.keyboard.press('End');
    await page.waitForSelector('.tried .pair');
    await page.click('#put-turned');
    expect(await page.inputValue('.editor textarea')).toContain('number: 60');
    expect(wrong).toEqual([]);
    await page.context().close();
  });

  it('says the faults of a file and runs no such file', async () => {
    const { page, wrong } = await tested.open();
    await typeSystem(page, short.replace('days: 10', 'dayz: 10'));
    await page.waitForSelector('.faults li');
    expect(await page.textContent('.faults')).toMatch(/dayz: unknown key; .*did you mean days\?/);
    expect(await page.isDisabled('#run')).toBe(true);
    expect(wrong).toEqual([]);
    await page.context().close();
  });
});
