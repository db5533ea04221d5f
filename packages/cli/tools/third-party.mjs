// THIRD-PARTY.md: every package that an installed leat brings along, with its version and licence, as their manifests
// say. `npm run generate` writes it. A package without a licence, or with one that is not in the list of those looked
// at, is an error.
import { existsSync, readFileSync, realpathSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** Licences that ask for no more than that their notice stays. */
const lookedAt = [
  'MIT',
  'ISC',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'MPL-2.0',
  'OFL-1.1',
  '0BSD',
  'Unlicense',
  'BlueOak-1.0.0',
];

const known = (license) =>
  String(license)
    .split(' AND ')
    .every((each) => lookedAt.includes(each));

const packages = fileURLToPath(new URL('../../', import.meta.url));
const read = (folder) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** The folder of a package as one that lies in `from` finds it. */
function found(name, from) {
  for (let folder = from; folder !== dirname(folder); folder = dirname(folder)) {
    const candidate = join(folder, 'node_modules', name);
    if (existsSync(join(candidate, 'package.json'))) return realpathSync(candidate);
  }
  throw new Error(`${name}, asked for by ${read(from).name}, is not installed`);
}

/** Rows of the table by package and version, of a folder and of all that it depends on. */
function visit(folder, lines) {
  const { dependencies = {}, name, version, license, homepage, repository } = read(folder);
  const key = `${name} ${version}`;
  if (lines.has(key)) return;
  const link = homepage ?? (typeof repository === 'object' ? repository.url : repository) ?? '';
  const own = name.startsWith('@leat/');
  if (!own && !known(license)) throw new Error(`${key}: licence ${license} was not looked at`);
  lines.set(key, own ? undefined : `| ${name} | ${version} | ${license} | ${link.replace(/^git\+/, '')} |`);
  for (const each of Object.keys(dependencies)) visit(found(each, folder), lines);
}

/** The text of THIRD-PARTY.md. */
export function thirdParty() {
  const lines = new Map();
  for (const own of ['core', 'view', 'cli']) visit(join(packages, own), lines);
  const rows = [...lines].flatMap(([key, line]) => (line === undefined ? [] : [[key, line]]));
  rows.sort(([a], [b]) => (a < b ? -1 : 1));
  return `# What Leat brings along

Leat is under the MIT licence. An installed \`@leat/cli\` brings these packages, each under its own licence, whose text lies
in the package; of those that are bound into its one script, \`dist/bundle/LICENSES.txt\` holds it too. PNG
pictures are drawn with the font Source Sans 3 (SIL Open Font License 1.1).

| package | version | licence | home |
| --- | --- | --- | --- |
${rows.map(([, line]) => line).join('\n')}
`;
}
