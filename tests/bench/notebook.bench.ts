import { execFileSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { openLesson, predict, slide, sliders } from '../product/lessons/open-lesson.js';
import { chromiumHere, chromiumMissing, openChromium } from '../support/chromium.js';
import { medianOf } from './support/median.js';
import { checking, figure } from './support/kept.js';

const root = fileURLToPath(new URL('../../', import.meta.url));
const folder = '.reports/lessons-bench';
/** Places of a slider, as a hand passes over them. */
const shares = [0.15, 0.3, 0.45, 0.6, 0.75, 0.9, 0.7, 0.5, 0.35, 0.2];

// By the clock of this machine, so nothing is kept of it.
describe.skipIf(!chromiumHere || checking)(`lessons in Chromium${chromiumMissing}`, () => {
  it('from the move of a slider to the frame with the new picture', async () => {
    execFileSync('node', ['.tools/lessons.mjs', folder, '--unchecked'], { cwd: root, stdio: 'pipe' });
    const pages = `${root}${folder}/en`;
    const lessons = readdirSync(pages).filter((file) => /^\d\d-/.test(file));
    const browser = await openChromium();
    const all: number[] = [];
    console.log('\n  ms by the clock from the move of a slider to the new picture, runs of 90 days');
    for (const file of lessons) {
      const { page } = await openLesson(browser, pages, file, { width: 1280 });
      await predict(page);
      const took: number[] = [];
      for (const name of await sliders(page))
        for (const share of shares) took.push(await slide(page, name, share));
      console.log(`  ${file}: median ${medianOf(took).toFixed(1)}, most ${Math.max(...took).toFixed(1)}`);
      all.push(...took);
      await page.context().close();
    }
    await browser.close();
    const median = medianOf(all);
    expect(all.length).toBeGreaterThan(200);
    figure(`median of ${all.length} moves`, median, 'ms', 50);
  });
});
