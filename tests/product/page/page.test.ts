import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired } from '../../support/chromium.js';
import { folderWith, leat } from '../../support/leat.js';
import { giveFiles, pageForTests, runSystem, savedBy, short, typeSystem } from './open-page.js';

const tested = pageForTests();

describe.skipIf(!chromiumHere && !chromiumRequired)(
  `the page, from the disk and offline${chromiumMissing}`,
  () => {
    it('is one file that asks for nothing, under 1.6 MB and under 500 kB as it is sent', () => {
      const bytes = readFileSync(tested.file());
      expect(bytes.toString('utf8')).not.toMatch(/<(?:link|script[^>]* src|img)[\s>]/);
      expect(bytes.length).toBeLessThan(1_600_000);
      expect(gzipSync(bytes, { level: 9 }).length).toBeLessThan(500_000);
    });

    it('goes from the questions to a verdict', async () => {
      const { page, wrong } = await tested.open();
      await page.click('#form > summary');
      await page.click('.questions button[type=submit]');
      await page.waitForSelector('.short li');
      expect(await page.textContent('.short')).toContain('Fish');
      expect(await page.textContent('.file')).toBe('my-system.yaml');
      expect(wrong).toEqual([]);
      await page.context().close();
    });

    it('says the faults of a file beside their lines, and runs no such file', async () => {
      const { page, wrong } = await tested.open();
      await typeSystem(page, short.replace('days: 10', 'dayz: 10'));
      await page.waitForSelector('.faults li');
      expect(await page.textContent('.faults')).toMatch(/dayz: unknown key; .*did you mean days\?/);
      expect(await page.isDisabled('#run')).toBe(true);
      const marked = await page.locator('.pce-line.fault').allTextContents();
      expect(marked.map((each) => each.trim())).toContain('dayz: 10');
      expect(wrong).toEqual([]);
      await page.context().close();
    });

    it('takes a file with what it includes', async () => {
      const { page, wrong } = await tested.open();
      await giveFiles(page, { 'over.yaml': 'include: base.yaml\ntitle: Laid over\n', 'base.yaml': short });
      expect(await runSystem(page)).toContain('Fish: safe');
      expect(await page.textContent('.title')).toBe('Laid over');
      expect(wrong).toEqual([]);
      await page.context().close();
    });

    it('gives the bytes that the command gives: JSON, CSV and state', async () => {
      const folder = folderWith({ 'short.yaml': short });
      const told = await leat(
        ['run', 'short.yaml', '--json', '--csv', 'short.csv', '--save', 'short.json'],
        folder,
      );
      expect(told.code).toBe(0);
      const { page, wrong } = await tested.open();
      await giveFiles(page, { 'short.yaml': short });
      await runSystem(page);
      expect(await savedBy(page, '#save-json')).toBe(told.out);
      expect(await savedBy(page, '#save-csv')).toBe(readFileSync(join(folder, 'short.csv'), 'utf8'));
      expect(await savedBy(page, '#save-state')).toBe(readFileSync(join(folder, 'short.json'), 'utf8'));
      expect(wrong).toEqual([]);
      await page.context().close();
    });

    it('tells and saves in another language and units', async () => {
      const { page, wrong } = await tested.open();
      await giveFiles(page, { 'short.yaml': short });
      await runSystem(page);
      await page.selectOption('#language', 'es');
      await page.selectOption('#units', 'us');
      await page.waitForFunction(() => /Peces/.test(document.querySelector('.short')?.textContent ?? ''));
      expect(await page.textContent('.short')).toMatch(/gal al día/);
      await page.waitForFunction(() =>
        [...document.querySelectorAll('.sections h2')].some((each) => each.textContent === 'Cosecha'),
      );
      const report = await savedBy(page, '#save-report');
      expect(report).toContain('<html lang="es">');
      expect(report).toContain('>Cosecha</h2>');
      expect(wrong).toEqual([]);
      await page.context().close();
    });

    it('holds a whole system in a link, which opens anew', async () => {
      const { page } = await tested.open();
      await giveFiles(page, { 'over.yaml': 'include: base.yaml\ntitle: From a link\n', 'base.yaml': short });
      await runSystem(page);
      await page.click('#link');
      const fragment = new URL(page.url()).hash;
      await page.context().close();
      const second = await tested.open({ fragment });
      await runSystem(second.page);
      expect(await second.page.textContent('.title')).toBe('From a link');
      expect(second.wrong).toEqual([]);
      await second.page.context().close();
    });

    it('says that a link is damaged, and opens all the same', async () => {
      const { page, wrong } = await tested.open({ fragment: '#system=q1YqS' });
      await page.waitForSelector('#trouble');
      expect(await page.textContent('#trouble')).toContain('damaged');
      expect(wrong).toEqual([]);
      await page.context().close();
    });

    it('ends an ensemble of 100 at once when it is cancelled', async () => {
      const { page, wrong } = await tested.open();
      await typeSystem(page, short);
      await runSystem(page);
      await page.click('#ask-ensemble > summary');
      await page.fill('#members', '100');
      await page.click('#ensemble');
      await page.waitForFunction(() =>
        /of 100 runs/.test(document.querySelector('.progress')?.textContent ?? ''),
      );
      await page.click('#cancel');
      await page.waitForSelector('#run:not([disabled])');
      expect(await page.textContent('#trouble')).toContain('Cancelled');
      expect(wrong).toEqual([]);
      await page.context().close();
    });

    it('turns a number, and the run follows', async () => {
      const { page, wrong } = await tested.open();
      await typeSystem(page, short);
      await runSystem(page);
      const option = await page.waitForSelector('#number option[value$="fish.growers.number"]', {
        state: 'attached',
      });
      await page.selectOption('#number', (await option.getAttribute('value')) ?? '');
      await page.focus('#slider');
      await page.keyboard.press('End');
      await page.waitForSelector('.tried .pair');
      await page.waitForSelector('.tried .pair-chart svg');
      expect(await page.inputValue('.slider input[type=number]')).toBe('60');
      expect(await page.locator('.tried .card').count()).toBe(2);
      expect(wrong).toEqual([]);
      await page.context().close();
    });
  },
);
