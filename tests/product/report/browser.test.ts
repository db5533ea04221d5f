import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired, openChromium } from '../../support/chromium.js';
import { full } from '../../support/length.js';
import { reportPage } from '../../../packages/cli/src/commands/report/page.js';
import { drawnAround } from './drawn-around.js';
import { nasty, saying } from './nasty.js';
import { summaryOf, summaryOver } from './summarized.js';
import { folderWith } from '../../support/leat.js';

/** What axe says of a page. */
interface Findings {
  readonly violations: readonly {
    readonly id: string;
    readonly impact: string;
    readonly nodes: readonly { readonly html: string }[];
  }[];
  readonly passes: readonly unknown[];
}

const require = createRequire(import.meta.url);
const axe = readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const folder = folderWith();
const pages: Record<string, string> = {};
let browser: Browser | undefined;

function opened(): Browser {
  if (browser === undefined) throw new Error('no browser');
  return browser;
}

const every = ['one', 'three', 'ensemble', 'three ensembles'].flatMap((name) =>
  (['light', 'dark'] as const).flatMap((scheme) =>
    [390, 1280].map((width) => [name, scheme, width] as const),
  ),
);
/** The short form looks at each page once, with both colours and both widths in each half of the pages. */
const looks = full ? every : [every[0], every[7], every[10], every[13]];

describe('the browser of these tests', () => {
  it(`is there where it must be${chromiumMissing}`, () => {
    expect(chromiumHere || !chromiumRequired).toBe(true);
  });
});

describe.skipIf(!chromiumHere)('a report in Chromium', () => {
  beforeAll(async () => {
    const names = ['glasshouse', 'double-stock', 'bare-beds'];
    const told = [
      await summaryOf(names[0], 'A', 365),
      await summaryOf(names[1], 'B', 365),
      await summaryOf(names[2], 'C', 365),
    ];
    const sure = told.map((run, i) => ({ ...run, ensemble: drawnAround(names[i], 365, full ? 6 : 3) }));
    const html = {
      one: reportPage(told.slice(0, 1)),
      three: reportPage(told),
      ensemble: reportPage(sure.slice(0, 1)),
      'three ensembles': reportPage(sure),
    };
    for (const [name, text] of Object.entries(html)) {
      pages[name] = join(folder, `${name}.html`);
      writeFileSync(pages[name], text);
    }
    browser = await openChromium();
  });
  afterAll(async () => {
    await browser?.close();
  });

  it.each(['three', 'three ensembles'])('(%s) is under 1.5 MB for three runs of a year', (name) => {
    expect(readFileSync(pages[name]).length).toBeLessThan(1.5e6);
  });

  it('(three) is under a third of 42,000 px on a phone, and the keyboard and paper open what is folded', async () => {
    const page = await opened().newPage({ viewport: { width: 390, height: 900 } });
    page.setDefaultTimeout(0);
    await page.goto(pathToFileURL(pages['three']).href);
    expect(await page.evaluate('document.documentElement.scrollHeight')).toBeLessThan(14_000);
    await page.focus('#courses summary');
    await page.keyboard.press('Enter');
    expect(await page.evaluate('document.querySelector("#courses details").open')).toBe(true);
    await page.click('nav a[href="#nitrogen-inside"]');
    expect(await page.evaluate('document.querySelector("#nitrogen details").open')).toBe(true);
    expect(await page.evaluate('document.querySelector("#basis-inside").checkVisibility()')).toBe(false);
    await page.emulateMedia({ media: 'print' });
    expect(await page.evaluate('document.querySelector("#basis-inside").checkVisibility()')).toBe(true);
    await page.close();
  });

  it.each(looks)(
    '(%s, %s, %i px) has no serious fault, asks for nothing and does not scroll sideways',
    async (name, colorScheme, width) => {
      const context = await opened().newContext({
        bypassCSP: true,
        colorScheme,
        viewport: { width, height: 900 },
      });
      context.setDefaultTimeout(0);
      const page = await context.newPage();
      const asked: string[] = [];
      const said: string[] = [];
      page.on('request', (request) => asked.push(request.url()));
      page.on('console', (message) => said.push(message.text()));
      const address = pathToFileURL(pages[name]).href;
      await page.goto(address);
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
      await page.evaluate(
        `document.querySelectorAll('details.fold').forEach((each) => { each.open = true; })`,
      );
      expect(await page.evaluate('document.documentElement.scrollWidth')).toBe(width);
      await page.evaluate(axe);
      const found = await page.evaluate<Findings>('axe.run(document)');
      expect(found.passes.length).toBeGreaterThan(20);
      const grave = found.violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
      expect(grave.map(({ id, nodes }) => `${id}: ${nodes[0].html}`)).toEqual([]);
      expect([asked, said]).toEqual([[address], []]);
      await context.close();
    },
  );

  it.each(nasty)('reads as text what a document says: %s', async (text) => {
    const file = join(folder, 'nasty.html');
    writeFileSync(file, reportPage([saying(text, await summaryOver('title: Plain\n'))]));
    const page = await opened().newPage();
    page.setDefaultTimeout(0);
    await page.goto(pathToFileURL(file).href);
    expect(await page.title()).toBe(`${text} - Leat`);
    expect(await page.evaluate('document.querySelectorAll("script, img, [onload], [onerror]").length')).toBe(
      0,
    );
    expect(await page.evaluate('document.querySelector("h1").textContent')).toBe(text);
    await page.close();
  });

  it.each(['A4', 'Letter'])('prints on %s', async (format) => {
    const page = await opened().newPage();
    page.setDefaultTimeout(0);
    await page.goto(pathToFileURL(pages['one']).href);
    const pdf = await page.pdf({ format });
    expect(pdf.subarray(0, 5).toString('latin1')).toBe('%PDF-');
    await page.close();
  });
});
