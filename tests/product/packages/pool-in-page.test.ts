import { createServer } from 'node:http';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired, openChromium } from '../../support/chromium.js';
import { smallSystem } from '../../support/small-text.js';
import { bundled } from './bundled.js';
import { everySeries } from './every-series.js';
import { root } from './packed.js';

const short = smallSystem.replace('days: 40', 'days: 5');
const texts = [short, short.replace('number: 60', 'number: 30'), short.replace('number: 60', 'number: 90')];

describe('the pool of workers in a page', () => {
  it(`has its browser where it must${chromiumMissing}`, () => {
    expect(chromiumHere || !chromiumRequired).toBe(true);
  });

  it.skipIf(!chromiumHere)('does each input on workers of the page, and gives back faults', async () => {
    const here = (name: string): string => join(root, 'tests/product/packages', name);
    const [pool, worker] = [await bundled(here('page-pool.ts')), await bundled(here('page-worker.ts'))];
    const files: Readonly<Record<string, readonly [type: string, text: string]>> = {
      '/': [
        'text/html',
        `<!doctype html><title>Pool</title><link rel="icon" href="data:,"><script type="module">
           import { endsOf } from './pool.js';
           window.endsOf = endsOf;
         </script>`,
      ],
      '/pool.js': ['text/javascript', pool.code],
      '/page-worker.js': ['text/javascript', worker.code],
    };
    const server = createServer((request, response) => {
      const file = files[request.url ?? ''];
      if (file === undefined) response.writeHead(404).end();
      else response.writeHead(200, { 'content-type': `${file[0]}; charset=utf-8` }).end(file[1]);
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const browser = await openChromium();
    try {
      const address = server.address();
      if (address === null || typeof address === 'string') throw new Error('no address');
      const page = await browser.newPage();
      page.setDefaultTimeout(0);
      await page.goto(`http://127.0.0.1:${address.port}/`);
      await page.waitForFunction('window.endsOf !== undefined');
      const ask = (of: readonly string[]): Promise<readonly unknown[]> =>
        page.evaluate(`window.endsOf('nitrate@tank', ${JSON.stringify(of)})`);
      const ends = texts.map((text) => everySeries(text)['nitrate@tank'].at(-1) ?? Number.NaN);
      const answers = (await ask(texts)) as readonly number[];
      // Powers of another V8 may differ in a last digit.
      answers.forEach((answer, i) => expect(Math.abs(answer / ends[i] - 1)).toBeLessThan(1e-9));
      expect(new Set(ends).size).toBe(3);
      expect(await ask([texts[0], ''])).toEqual([{ key: 'text', problem: 'is empty' }]);
    } finally {
      await browser.close();
      server.close();
    }
  });
});
