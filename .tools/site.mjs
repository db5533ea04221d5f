// One static folder with everything for people without a terminal, its links relative: lessons, the page that runs a system of
// one's own, guides and reference, and a gallery of the shipped what-ifs with their reports.
//   node .tools/site.mjs [FOLDER]
import { execFileSync } from 'node:child_process';
import { copyFileSync, cpSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../', import.meta.url));
const [folder = 'dist-site'] = process.argv.slice(2);
const out = join(root, folder);
const scenarios = join(root, 'packages/cli/scenarios');
const run = (command, args) =>
  execFileSync(command, args, { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] });
const escaped = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');

/** A page of the site, with the look of the lessons. */
const pageOf = (title, main, up) => `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8" />
    <meta name="viewport" content="width=device-width, initial-scale=1" />
    <title>${escaped(title)}</title>
    <link rel="icon" href="data:," />
    <link rel="stylesheet" href="${up}lessons/en/lesson.css" />
  </head>
  <body>
    <header>${up === './' ? '' : `<a href="${up}index.html">Leat</a>`}</header>
    <main>${main}</main>
    <footer>
      Every system here is invented. Leat is a model of well-mixed vessels with published averages, not a guarantee. Measure your own
      water before you act; fish welfare, food safety, discharge and electricity follow your law and licensed practice.
    </footer>
  </body>
</html>
`;

rmSync(out, { recursive: true, force: true });
mkdirSync(join(out, 'gallery'), { recursive: true });

run('node', ['.tools/lessons.mjs', `${folder}/lessons`]);

// The page that runs a system of one's own.
run('npm', ['run', '-s', 'page']);
copyFileSync(join(root, '.page/leat.html'), join(out, 'leat.html'));

run('npm', ['run', '-s', 'api']);
cpSync(join(root, '.api'), join(out, 'reference'), { recursive: true });

/** What a file asks: the first line of its comment. */
const gallery = readdirSync(scenarios)
  .filter((name) => name.endsWith('.yaml'))
  .map((file) => {
    const [first] = readFileSync(join(scenarios, file), 'utf8').split('\n');
    return { name: file.replace('.yaml', ''), file, question: first.replace(/^#\s*/, '') };
  });
for (const each of readdirSync(scenarios)) copyFileSync(join(scenarios, each), join(out, 'gallery', each));
for (const { name, file } of gallery)
  run('node', [
    ...['packages/cli/dist/main.js', 'report', join(scenarios, file)],
    ...['--out', join(out, 'gallery', `${name}.html`)],
  ]);
writeFileSync(
  join(out, 'gallery/index.html'),
  pageOf(
    'What-ifs with their reports',
    `<h1>What-ifs with their reports</h1><ul>${gallery
      .map(
        ({ name, file, question }) =>
          `<li>${escaped(question)}<br /><a href="./${name}.html">report of ${name}</a>, <a href="./${file}" download>its file</a></li>`,
      )
      .join('')}</ul>`,
    '../',
  ),
);
const parts = [
  ['./leat.html', 'Run your own system', 'in this browser; nothing leaves it'],
  ['./lessons/en/index.html', 'Lessons', 'predict, see, change'],
  ['./lessons/es/index.html', 'Lecciones en español', 'predecir, ver, cambiar'],
  ['./gallery/index.html', 'What-ifs', 'shipped systems with their reports'],
  ['./reference/index.html', 'Guides and reference', 'the library, for those who program'],
];
writeFileSync(
  join(out, 'index.html'),
  pageOf(
    'Leat',
    `<h1>Leat</h1>
    <p>What nitrogen will do in a recirculating fish-and-plant system, before anything is built or changed.</p>
    <ul>${parts.map(([href, name, what]) => `<li><a href="${href}">${name}</a>: ${what}</li>`).join('')}</ul>`,
    './',
  ),
);
console.log(`${folder}: ${gallery.length} reports`);
