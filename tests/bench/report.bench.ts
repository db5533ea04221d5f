import { execFileSync } from 'node:child_process';
import { mkdtempSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, openChromium } from '../support/chromium.js';
import { medianOf } from './support/median.js';
import { checking, figure } from './support/kept.js';

const inCli = (path: string): string => fileURLToPath(new URL(`../../packages/cli/${path}`, import.meta.url));
const scenarios = ['glasshouse', 'double-stock', 'bare-beds'].map((name) => inCli(`scenarios/${name}.yaml`));

/** Time from the start of the navigation until a task after the first frame that follows the load, ms. */
const untilPainted = `new Promise((resolve) => {
  const painted = () => requestAnimationFrame(() => setTimeout(() => resolve(performance.now())));
  if (document.readyState === 'complete') painted(); else addEventListener('load', painted);
})`;

// By the clock of this machine, so nothing is kept of it.
describe.skipIf(!chromiumHere || checking)(`a report in Chromium${chromiumMissing}`, () => {
  it('of three runs of a year, from asking for it to its first picture', async () => {
    const file = join(mkdtempSync(join(tmpdir(), 'leat-')), 'three.html');
    const args = [inCli('dist/main.js'), 'report', ...scenarios, '--days', '365', '--out', file];
    execFileSync(process.execPath, args, { stdio: 'ignore' });
    const browser = await openChromium();
    const took: number[] = [];
    for (let i = 0; i < 7; i++) {
      const page = await (await browser.newContext({ bypassCSP: true })).newPage();
      await page.goto(pathToFileURL(file).href, { waitUntil: 'commit' });
      took.push(await page.evaluate<number>(untilPainted));
      await page.context().close();
    }
    await browser.close();
    const opening = medianOf(took);
    expect(opening).toBeGreaterThan(0);
    console.log(
      `\n  report of three years, ${(statSync(file).size / 1e6).toFixed(2)} MB: at most ${Math.max(...took).toFixed(0)} ms`,
    );
    figure('opening a report of three years', opening, 'ms', 1000);
  });
});
