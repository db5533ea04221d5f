import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, readFileSync, readdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { build } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import { chromiumHere, chromiumMissing, openChromium } from '../../support/chromium.js';
import { shippedText } from '../../support/shipped-scenario.js';
import { installed } from './installed.js';
import { call, root } from './packed.js';

const required = process.env['LEAT_CI_TOOLS'] === '1';
const examples = join(root, 'packages/examples');
const names = readdirSync(examples).filter((name) => name !== 'README.md');
const { folder: place, status, said, offline, why } = installed(['core', 'view']);

/** Most lines of a program of a newcomer. */
const mostLines = 29;

/** Compiler options of a strict program that checks the types of what it uses, too. */
const compilerOptions = {
  ...{ target: 'ES2022', module: 'NodeNext', lib: ['ES2022', 'DOM', 'DOM.Iterable'], types: ['node'] },
  ...{ strict: true, skipLibCheck: false, exactOptionalPropertyTypes: true, noImplicitOverride: true },
  ...{ noFallthroughCasesInSwitch: true, noImplicitReturns: true, noUnusedLocals: true },
};

/** Puts a package of ours beside those that were installed, for programs that need it. */
function beside(name: string, from: string): void {
  const path = join(place, 'node_modules', name);
  mkdirSync(dirname(path), { recursive: true });
  symlinkSync(dirname(createRequire(from).resolve(`${name}/package.json`)), path);
}

const ran = (program: string, ...args: readonly string[]): string => {
  const { status: code, stdout, stderr } = call(process.execPath, [program, ...args], place);
  expect([code, stderr]).toEqual([0, '']);
  return stdout;
};
const written = (name: string): string => readFileSync(join(place, name), 'utf8');

describe('examples', () => {
  it('are ten programs of under thirty lines and the template of a lesson, each named by the page that shows them', () => {
    const page = readFileSync(join(examples, 'README.md'), 'utf8');
    const rows = page.split('\n').filter((line) => /^\| \[/.test(line));
    expect(rows).toHaveLength(11);
    for (const name of names.filter((each) => each !== 'guides')) {
      expect(page, name).toContain(`](${name})`);
      const lines = readFileSync(join(examples, name), 'utf8').trimEnd().split('\n');
      // Most of a lesson is its words, which stand apart from its code.
      expect(lines.length, name).toBeLessThanOrEqual(name === 'lesson.ts' ? 90 : mostLines);
    }
  });

  it(`are of packed packages that npm installs${why}`, () => {
    expect(offline && !required ? 0 : status, said).toBe(0);
  });
});

describe.skipIf(offline)(`examples, with the packed packages${why}`, () => {
  beforeAll(() => {
    cpSync(examples, place, { recursive: true });
    beside('@types/node', join(root, 'package.json'));
    writeFileSync(join(place, 'tsconfig.json'), JSON.stringify({ compilerOptions, include: ['*.ts'] }));
    writeFileSync(join(place, 'package.json'), '{ "type": "module", "private": true }\n');
    const { status: code, stdout } = call(
      process.execPath,
      [join(root, 'node_modules/typescript/bin/tsc'), '-p', place],
      place,
    );
    expect([code, stdout]).toEqual([0, '']);
  });

  it('read and plot', () => {
    writeFileSync(join(place, 'system.yaml'), shippedText('glasshouse'));
    expect(ran('read-and-plot.js', 'system.yaml')).toMatch(/^Fish: /m);
    expect(readdirSync(place).filter((name) => /^nitrate-.*\.svg$/.test(name)).length).toBeGreaterThan(0);
  });

  it('built in code with a process of its own', () => {
    const [tan, algae] = ran('own-process.js').trim().split('\n');
    expect(Number(tan.split(' ')[1])).toBeGreaterThan(0);
    expect(Number(algae.split(' ')[1])).toBeGreaterThan(2);
  });

  it('200 variants in workers', () => {
    expect(ran('variants.js')).toMatch(/^200 runs; TAN stays below 1 mg N\/L up to \d\.\d\d %\/d\n$/);
  });

  it('a control loop', () => {
    const [, days] = /^done; half rations on (\d+) days/.exec(ran('control-loop.js')) ?? [];
    expect(Number(days)).toBeGreaterThan(0);
  });

  it('export to Python', (context) => {
    expect(ran('to-python.js')).toMatch(/^31 days, \d\d series\n$/);
    const python = ['/usr/bin/python3', 'python3'].find(
      (name) => spawnSync(name, ['-c', 'import pandas']).status === 0,
    );
    if (python === undefined && !required) context.skip('python3 with pandas is not installed');
    const { stdout, stderr } = spawnSync(python ?? 'python3', ['read-it.py'], {
      cwd: place,
      encoding: 'utf8',
    });
    expect(stderr).toBe('');
    expect(stdout).toMatch(/^date\n2027-03-01 +\d+\.\d\n/);
    expect(stdout.trim().split('\n')).toHaveLength(7);
  });

  it('a resumed season', () => {
    const [, resumed, unbroken] =
      /^day 30 to 60: (\S+) mg N\/L, unbroken (\S+)\n$/.exec(ran('resumed-season.js')) ?? [];
    expect(resumed).toBe(unbroken);
    expect(Number(resumed)).toBeGreaterThan(5);
  });

  it('bands of draws', () => {
    const [first, ...others] = ran('bands.js', 'system.yaml').trim().split('\n');
    expect(first).toMatch(/^50 members, \d+ broke off$/);
    expect(others[0]).toMatch(/^tan@\S+: \S+ \(\S+ to \S+\) mg N\/L$/);
  });

  it('a fit to a log', () => {
    for (const name of ['backyard.yaml', 'backyard.csv', 'backyard.map'])
      cpSync(join(root, 'packages/cli/scenarios', name), join(place, name));
    expect(ran('fit-a-log.js', 'backyard.yaml', 'backyard.csv', 'backyard.map')).toMatch(
      /^aob\.growth (?:stays|narrowed|moved): \S+ \(\S+ to \S+\) 1\/d, by \d+ readings\n$/,
    );
  });

  it("a page of a course of one's own", () => {
    expect(ran('own-lesson.js')).toMatch(/^lesson\.html: \d fates\n$/);
    expect(written('lesson.html')).toMatch(/<details>.*<svg .*<li>.* \d+ %<\/li>/s);
  });

  it(`are where they must be for a page${chromiumMissing}`, () => {
    expect(chromiumHere || !required).toBe(true);
  });

  it.skipIf(!chromiumHere)('a page with a slider', async () => {
    await build({
      ...{ root: place, configFile: false, logLevel: 'silent', base: './' },
      build: { outDir: 'page', rolldownOptions: { input: join(place, 'slider.html') } },
    });
    const types: Readonly<Record<string, string>> = { html: 'text/html', js: 'text/javascript' };
    const server = createServer((request, response) => {
      const path = (request.url ?? '/').slice(1);
      response.writeHead(200, { 'content-type': types[path.split('.').pop() ?? ''] ?? 'text/plain' });
      response.end(readFileSync(join(place, 'page', path)));
    });
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const address = server.address();
    const browser = await openChromium();
    try {
      const page = await browser.newPage();
      const seen: string[] = [];
      page.on('pageerror', ({ message }) => seen.push(message));
      page.on('console', (message) => seen.push(message.text()));
      if (address === null || typeof address === 'string') throw new Error('no address');
      await page.goto(`http://127.0.0.1:${address.port}/slider.html`);
      const told = (): Promise<string> => page.locator('#said').innerText();
      await page.waitForFunction('document.querySelector("#said").textContent !== ""');
      const before = await told();
      await page.locator('#ration').fill('2.5');
      const after = await told();
      expect([before, after].map((text) => /^nitrate rises to [\d.]+ mg N\/L$/.test(text))).toEqual([
        true,
        true,
      ]);
      expect(Number(after.split(' ')[3])).toBeGreaterThan(Number(before.split(' ')[3]));
      expect(await page.locator('#course polyline').getAttribute('points')).toMatch(
        /^40\.0,.* 295\.0,10\.0$/,
      );
      expect(seen).toEqual([]);
    } finally {
      await browser.close();
      server.close();
    }
  });
});
