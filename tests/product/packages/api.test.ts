import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { root } from './packed.js';

const ours = join(root, '.tools/typedoc.json');

/** Typedoc's check of the reference, as `npm run api` makes it, without writing anything. */
function checked(options: string): { code: number | null; said: string } {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [join(root, 'node_modules/typedoc/bin/typedoc'), '--options', options, '--emit', 'none'],
    { cwd: root, encoding: 'utf8', env: { ...process.env, NO_COLOR: '1' } },
  );
  return { code: status, said: stdout + stderr };
}

/** The same check of a made-up library with this text as its index. */
function checkedText(text: string): { code: number | null; said: string } {
  const folder = mkdtempSync(join(tmpdir(), 'leat-api-'));
  const write = (name: string, content: unknown): void =>
    writeFileSync(join(folder, name), JSON.stringify(content));
  writeFileSync(join(folder, 'index.ts'), text);
  write('package.json', { name: 'made-up', version: '0.0.0' });
  write('tsconfig.json', { compilerOptions: { strict: true, types: [] }, files: ['index.ts'] });
  write('typedoc.json', {
    ...{ extends: [ours], entryPoints: ['index.ts'], tsconfig: 'tsconfig.json' },
    ...{ projectDocuments: [], readme: 'none' },
  });
  return checked(join(folder, 'typedoc.json'));
}

/** Every page of a folder, by its path. */
const pagesIn = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.html'));

describe('the site of guides and reference', () => {
  const site = mkdtempSync(join(tmpdir(), 'leat-site-'));
  const read = (path: string): string => readFileSync(join(site, path), 'utf8');

  beforeAll(() => {
    const { status, stdout, stderr } = spawnSync(
      process.execPath,
      [join(root, 'node_modules/typedoc/bin/typedoc'), '--options', ours, '--out', site],
      { cwd: root, encoding: 'utf8', env: { ...process.env, NO_COLOR: '1' } },
    );
    expect([status, `${stdout}${stderr}`.match(/\[(?:warning|error)\].*/g)]).toEqual([0, null]);
  });

  it('has a guide for each of eight questions, with programs that the tests run', () => {
    const titles = [
      ...['A first program', 'A run told how far to go', 'Components and processes of your own'],
      ...['How sure is it?', 'A fit to a log', 'In a page', 'In Python', 'A lesson of your own'],
    ];
    const guides = pagesIn(join(site, 'documents')).map((path) => read(join('documents', path)));
    for (const title of titles) {
      const guide = guides.find((text) => text.includes(`<h1>${title}</h1>`) || text.includes(`>${title}<a`));
      expect(guide, title).toBeDefined();
      expect(guide, title).toMatch(/<pre><code class="(?:typescript|ts|html|python)">/);
    }
  });

  it('stands in any folder: every link of a page leads to a file of it, and nothing is loaded from elsewhere', () => {
    const pages = pagesIn(site);
    expect(pages.length).toBeGreaterThan(200);
    const lost = pages.flatMap((page) => {
      const text = read(page);
      const loaded = [...text.matchAll(/<(?:script|img|link)[^>]+(?:src|href)="([^"]+)"/g)].map(
        ([, to]) => to,
      );
      const linked = [...text.matchAll(/<a [^>]*href="([^"#]+)[^"]*"/g)].map(([, to]) => to);
      const outside = loaded.filter((to) => /^(?:[a-z]+:)?\/\//.test(to));
      const within = [...loaded, ...linked].filter((to) => !/^(?:[a-z]+:|\/\/|data:)/.test(to));
      const missing = within.filter((to) => !existsSync(join(site, dirname(page), decodeURI(to))));
      return [...outside, ...missing].map((to) => `${page}: ${to}`);
    });
    expect([...new Set(lost)]).toEqual([]);
  });
});

describe('the API reference', () => {
  it('has a word for every export of @leat/core, and for every number in it', () => {
    const { code, said } = checked(ours);
    expect(said).not.toMatch(/\[(?:warning|error)\]/);
    expect(code).toBe(0);
  });

  it('would not be made of an export without a word', () => {
    const { code, said } = checkedText(`
      export function bare(): void {}
      /** Said. */
      export interface Said { bare(): void }
      /** Said. */
      export const said = 1;
    `);
    expect(code).not.toBe(0);
    expect(said).toMatch(/\bbare \(CallSignature\).*does not have any documentation/);
    expect(said).toMatch(/Said\.bare \(CallSignature\).*does not have any documentation/);
    expect(said).toContain('2 warnings');
  });

  it('would not be made of a number without a word, a type that is not there, or a link to nothing', () => {
    const { code, said } = checkedText(`
      interface Hidden { readonly text: string }
      /** See {@link Nowhere}. */
      export interface Open { readonly hidden: Hidden; readonly share: readonly number[] }
      /** What lies below. */
      export function below(x: number): number { return x }
    `);
    expect(code).not.toBe(0);
    expect(said).toContain('Open.share is a number without a word of what it is');
    expect(said).toContain('below.below.x is a number without a word of what it is');
    expect(said).toMatch(/Hidden, .* is referenced by Open\.hidden but not included/);
    expect(said).toMatch(/resolve.*Nowhere/i);
  });

  it('takes what is said beside a number, or of it by name in the words above', () => {
    const { code, said } = checkedText(`
      /** A share of a whole: \`part\` of it, 0..1. */
      export interface Share {
        readonly part: number;
        /** The whole, g. */
        readonly whole: number;
      }
      /** Half of \`x\`, in its unit. */
      export function half(x: number): number { return x / 2 }
    `);
    expect([code, said.match(/\[warning\].*/g)]).toEqual([0, null]);
  });
});
