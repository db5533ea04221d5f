import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const folder = '.reports/site';
const site = join(root, folder);

const pages = (): readonly string[] =>
  readdirSync(site, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.html'))
    .map((name) => join(site, name));

/** Markup without scripts, styles and comments: what is written in them is no link of the page. */
const bare = (html: string): string =>
  html.replace(/<(script|style)\b[^>]*>[\s\S]*?<\/\1>/g, (all) => all.slice(0, all.indexOf('>') + 1));

const attributes = (html: string, tags: string, name: string): readonly string[] =>
  [...html.matchAll(new RegExp(`<(?:${tags})\\b[^>]*?\\s${name}="([^"]*)"`, 'g'))].map(([, value]) => value);

const outside = (address: string): boolean => /^(?:[a-z]+:)?\/\//.test(address);

/** Links of a page that lead to nothing in the folder. */
function broken(page: string, html: string): readonly string[] {
  const links = [
    ...attributes(html, 'a|link', 'href'),
    ...attributes(html, 'script|img|iframe|source', 'src'),
  ].filter((address) => !outside(address) && !/^(?:data|mailto|javascript):/.test(address));
  return links.filter((address) => {
    const [path, hash] = address.split('#');
    const target = path === '' ? page : resolve(dirname(page), decodeURIComponent(path.split('?')[0]));
    if (!target.startsWith(site) || !existsSync(target)) return true;
    // An anchor that a script fills in is looked for by it.
    if (hash === undefined || hash === '' || !target.endsWith('.html') || page.includes('/single/'))
      return false;
    const id = decodeURIComponent(hash);
    const text = readFileSync(target, 'utf8');
    return !text.includes(`id="${id}"`) && !text.includes(`name="${id}"`);
  });
}

/** Addresses of other hosts that a page would load by itself. */
const asked = (html: string): readonly string[] =>
  [
    ...attributes(html, 'script|img|iframe|source', 'src'),
    ...attributes(html, 'link', 'href'),
    ...[...html.matchAll(/url\(['"]?([^)'"]+)/g)].map(([, address]) => address),
  ].filter(outside);

describe('the site', () => {
  beforeAll(() => {
    execFileSync('node', ['.tools/site.mjs', folder], { cwd: root, stdio: 'pipe' });
  });
  afterAll(() => {
    rmSync(site, { recursive: true, force: true });
  });

  it('holds lessons in both languages, a report of each what-if, guides, reference and the page', () => {
    const scenarios = readdirSync(join(root, 'packages/cli/scenarios')).filter((name) =>
      name.endsWith('.yaml'),
    );
    for (const name of scenarios)
      expect(existsSync(join(site, 'gallery', name.replace('.yaml', '.html')))).toBe(true);
    for (const language of ['en', 'es'])
      expect(readdirSync(join(site, 'lessons', language)).filter((name) => /^\d\d-/.test(name))).toHaveLength(
        16,
      );
    for (const name of ['leat.html', 'reference/index.html']) expect(existsSync(join(site, name))).toBe(true);
  });

  it('has no broken link, and asks no other host for anything', () => {
    const all = pages();
    expect(all.length).toBeGreaterThan(80);
    for (const page of all) {
      const html = readFileSync(page, 'utf8');
      const marks = bare(html);
      expect([page, broken(page, marks)]).toEqual([page, []]);
      expect([page, asked(marks)]).toEqual([page, []]);
    }
  });

  it('finds a broken link and a foreign script, so that the check above can fail', () => {
    const page = join(site, 'index.html');
    expect(broken(page, '<a href="./nowhere.html">x</a>')).toEqual(['./nowhere.html']);
    expect(asked('<script src="https://example.org/x.js"></script>')).toEqual(['https://example.org/x.js']);
    expect(statSync(page).size).toBeGreaterThan(500);
  });
});
