// Builds the lessons in every language into a folder of static files with relative links:
//   node .tools/lessons.mjs [FOLDER] [--unchecked]
// Pages share one script, which is no module: a module from a disk is refused by Chromium. Each lesson, and all of them, are there
// once more as a single file. The types of all lessons and editions are checked first: a fault ends the build with 1.
import { execFileSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseHTML } from 'linkedom';
import { build, runnerImport } from 'vite';

const root = fileURLToPath(new URL('../', import.meta.url));
const notebooks = join(root, 'notebooks');
const [folder = 'dist-notebooks'] = process.argv.slice(2).filter((each) => !each.startsWith('--'));
const out = join(root, folder);

/** Folders of languages, English first. */
const languages = readdirSync(join(notebooks, 'text'), { withFileTypes: true })
  .filter((each) => each.isDirectory())
  .map(({ name }) => name)
  .sort((a, b) => (a === 'en' ? -1 : b === 'en' ? 1 : a.localeCompare(b)));

const vite = (language) => ({
  ...{ root: notebooks, configFile: false, logLevel: 'error' },
  resolve: { alias: { '../text/en/index.js': join(notebooks, 'text', language, 'index.ts') } },
});

/** What a module of the lessons exports, run in Node. */
const loaded = async (path, language) => (await runnerImport(join(notebooks, path), vite(language))).module;

/** The script of all pages of a language. */
async function scriptOf(language) {
  const bundle = await build({
    ...vite(language),
    build: {
      write: false,
      target: 'es2022',
      lib: { entry: join(notebooks, 'page/main.ts'), formats: ['iife'], name: 'lessons' },
    },
  });
  const [{ output }] = Array.isArray(bundle) ? bundle : [bundle];
  if (output.length !== 1) throw new Error(`the script came out as ${output.length} files`);
  return output[0].code;
}

const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** A page of static markup, or one that a script fills. */
function pageOf({ edition, id, title, style, script, main = '', header, footer = '' }) {
  const { frame, site } = edition;
  return `<!doctype html>
<html lang="${frame.language}" dir="${frame.direction}">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <title>${escaped(title)}</title>
    <link rel="icon" href="data:," />
    ${style}
  </head>
  <body data-page="${id}">
    <header>${header}</header>
    <main>${main === '' ? `<noscript>${site.noScript}</noscript>` : main}</main>
    ${footer}
    <footer>${site.footer}</footer>
    ${script}
  </body>
</html>
`;
}

/** Pages that hold no model, as markup: they are there without a script. */
async function staticPages(language, edition) {
  const { openPage } = await loaded('page/pages.ts', language);
  const { newMaker } = await import('@leat/view/pictures');
  return (page) => {
    const { document } = parseHTML('<!doctype html><html><body><main></main></body></html>');
    const main = document.querySelector('main');
    openPage({ maker: newMaker(document), edition, page, main, hash: () => '', changed: () => undefined });
    return main.innerHTML;
  };
}

async function edition(language, editions) {
  const { [language]: words } = editions;
  const { lessons } = await loaded('lessons/index.ts', language);
  const { site } = words;
  const code = await scriptOf(language);
  const css = readFileSync(join(notebooks, 'page/lesson.css'), 'utf8');
  const inlined = {
    style: `<style>${css}</style>`,
    script: `<script>${code.replaceAll('</script', '<\\/script')}</script>`,
  };
  const linked = {
    style: '<link rel="stylesheet" href="./lesson.css" />',
    script: '<script src="./lessons.js"></script>',
  };
  const others = (id) =>
    languages
      .filter((each) => each !== language)
      .map(
        (each) =>
          `<a href="../${each}/${id}.html" hreflang="${each}" lang="${each}">${editions[each].site.name}</a>`,
      )
      .join(' ');
  const header = (id) =>
    `<a href="./index.html">${site.all}</a> <nav aria-label="${site.language}">${others(id)}</nav>`;
  const keep = (file, text) =>
    `<p class="keep"><a href="./${file}" download>${text}</a> <small>${site.singleNote}</small></p>`;
  const write = (name, options) =>
    writeFileSync(join(out, language, name), pageOf({ edition: words, ...options }));
  mkdirSync(join(out, language, 'single'), { recursive: true });
  writeFileSync(join(out, language, 'lessons.js'), code);
  writeFileSync(join(out, language, 'lesson.css'), css);
  const filled = await staticPages(language, words);
  for (const [id, title] of [
    ['index', site.title],
    ['teacher', site.teacher],
  ])
    write(`${id}.html`, {
      ...{ id, title, style: linked.style, script: '', main: filled(id), header: header(id) },
      footer: id === 'index' ? keep('single/all.html', site.singleAll) : '',
    });
  const pages = [
    ...lessons.map((lesson) => [lesson.id, lesson.words(words).title]),
    ['worksheets', site.worksheets],
    ['answers', site.answers],
  ];
  for (const [id, title] of pages) {
    write(`${id}.html`, {
      ...{ id, title, ...linked, header: header(id), footer: keep(`single/${id}.html`, site.single) },
    });
    write(`single/${id}.html`, { id, title, ...inlined, header: escaped(site.title) });
  }
  write('single/all.html', {
    ...{ id: 'all', title: site.title, ...inlined, header: `<a href="#">${site.all}</a>` },
  });
  return { pages: pages.length + 2, script: code.length };
}

if (!process.argv.includes('--unchecked'))
  execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'notebooks/tsconfig.json'], {
    cwd: root,
    stdio: 'inherit',
  });
const editions = {};
for (const language of languages)
  ({ edition: editions[language] } = await loaded(`text/${language}/index.ts`, language));
rmSync(out, { recursive: true, force: true });
for (const language of languages) {
  const { pages, script } = await edition(language, editions);
  console.log(`${folder}/${language}: ${pages} pages, script ${Math.round(script / 1000)} kB`);
}
writeFileSync(
  join(out, 'index.html'),
  pageOf({
    ...{ edition: editions.en, id: 'languages', title: 'Leat: lessons', script: '' },
    style: '<link rel="stylesheet" href="./en/lesson.css" />',
    header: '',
    main: `<h1>Leat</h1><ul>${languages
      .map((each) => {
        const { site } = editions[each];
        return `<li lang="${each}"><a href="./${each}/index.html" hreflang="${each}">${site.name}: ${site.title}</a></li>`;
      })
      .join('')}</ul>`,
  }),
);
