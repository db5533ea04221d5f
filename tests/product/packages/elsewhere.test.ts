import { createServer, type Server } from 'node:http';
import { join } from 'node:path';
import { Worker as Thread } from 'node:worker_threads';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, chromiumRequired, openChromium } from '../../support/chromium.js';
import { shippedText } from '../../support/shipped-scenario.js';
import { builtIn, bundled, type Bundle } from './bundled.js';
import { everySeries, type EverySeries } from './every-series.js';
import { emptyFolder, root } from './packed.js';
import { written } from './written.js';

const text = shippedText('glasshouse');
const inNode = everySeries(text);

const bundles: Partial<Record<'whole' | 'reading', Bundle>> = {};
function made(name: 'whole' | 'reading'): Bundle {
  const bundle = bundles[name];
  if (bundle === undefined) throw new Error(`${name} was not bundled`);
  return bundle;
}

beforeAll(async () => {
  bundles.whole = await bundled(join(root, 'packages/core/dist/index.js'));
  bundles.reading = await bundled(join(root, 'tests/product/packages/every-series.ts'));
});

describe('the whole library in a bundle for browsers', () => {
  it('asks for no Node built-in and for nothing else', () => {
    const { modules, imports, code } = made('whole');
    expect(modules.filter((path) => builtIn.test(path))).toEqual([]);
    expect(imports).toEqual([]);
    expect(code).toMatch(/\breadScenario\b/);
    expect(modules.filter((path) => path.includes('core/dist/')).length).toBeGreaterThan(150);
  });

  it('would be seen to ask for one', async () => {
    const asks = written(emptyFolder(), 'asks.js', "export { readFileSync } from 'node:fs';\n");
    const { modules, imports } = await bundled(new URL(asks).pathname);
    expect([...modules, ...imports].filter((path) => builtIn.test(path))).not.toEqual([]);
  });
});

describe('a worker thread of Node', () => {
  it('runs a shipped scenario to the same bytes', async () => {
    const file = written(emptyFolder(), 'reading.mjs', made('reading').code);
    const worker = new Thread(
      `const { parentPort, workerData } = require('node:worker_threads');
       import(workerData.file).then(({ everySeries }) => parentPort.postMessage(everySeries(workerData.text)));`,
      { eval: true, workerData: { file, text } },
    );
    const answer = await new Promise<EverySeries>((resolve, reject) => {
      worker.once('message', resolve);
      worker.once('error', reject);
    });
    await worker.terminate();
    expect(answer).toEqual(inNode);
  });
});

describe('the browser of these tests', () => {
  it(`is there where it must be${chromiumMissing}`, () => {
    expect(chromiumHere || !chromiumRequired).toBe(true);
  });
});

describe.skipIf(!chromiumHere)('Chromium', () => {
  let browser: Browser | undefined;
  let page: Page | undefined;
  let server: Server | undefined;
  const seen: string[] = [];

  const opened = (): Page => {
    if (page === undefined) throw new Error('no page');
    return page;
  };

  beforeAll(async () => {
    const files: Record<string, readonly [type: string, text: string]> = {
      '/': [
        'text/html',
        `<!doctype html><title>Leat</title><link rel="icon" href="data:,"><script type="module">
           import { everySeries } from './reading.js';
           window.everySeries = everySeries;
         </script>`,
      ],
      '/reading.js': ['text/javascript', made('reading').code],
      '/worker.js': [
        'text/javascript',
        `import { everySeries } from './reading.js';
         onmessage = ({ data }) => postMessage(everySeries(data));`,
      ],
    };
    const serving = createServer((request, response) => {
      const file = files[request.url ?? ''];
      if (file === undefined) response.writeHead(404).end();
      else response.writeHead(200, { 'content-type': `${file[0]}; charset=utf-8` }).end(file[1]);
    });
    server = serving;
    await new Promise<void>((resolve) => serving.listen(0, '127.0.0.1', resolve));
    const address = serving.address();
    if (address === null || typeof address === 'string') throw new Error('served nowhere');
    browser = await openChromium();
    page = await browser.newPage();
    page.setDefaultTimeout(0);
    page.on('pageerror', (error) => seen.push(`error: ${error.message}`));
    page.on('console', (message) => seen.push(`console: ${message.text()}`));
    await page.goto(`http://127.0.0.1:${address.port}/`);
    await page.waitForFunction('window.everySeries !== undefined');
  });

  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  it('runs a shipped scenario on the page to the same bytes as Node', async () => {
    const answer = await opened().evaluate<EverySeries>(`window.everySeries(${JSON.stringify(text)})`);
    expect(answer).toEqual(inNode);
    expect(seen).toEqual([]);
  });

  it('runs it in a worker to the same bytes as Node', async () => {
    const answer = await opened().evaluate(
      (scenario) =>
        new Promise<EverySeries>((resolve, reject) => {
          const worker = new Worker('./worker.js', { type: 'module' });
          worker.onmessage = ({ data }: MessageEvent<EverySeries>) => resolve(data);
          worker.onerror = ({ message }) => reject(new Error(message));
          worker.postMessage(scenario);
        }),
      text,
    );
    expect(answer).toEqual(inNode);
    expect(seen).toEqual([]);
  });
});
