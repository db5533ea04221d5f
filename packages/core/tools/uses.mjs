/**
 * Finds which module of the source reads which numbers of the tables, and writes it to
 * src/library/uses.generated.ts. Processes are left out: they say themselves what they read when asked.
 *
 *   node packages/core/tools/uses.mjs           write the module
 *
 * How: every string and template of a module is held against every id. A hole in a template may be filled by
 * the name of a subject where one stands (`fish.${species}.`), else only by a string of the same module.
 */
import { readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { ids } from './tables.mjs';

const source = join(dirname(fileURLToPath(import.meta.url)), '..', 'src');
const output = join(source, 'library', 'uses.generated.ts');

/** Rooms that hold the numbers, say themselves what they read, or know nothing of them. */
const others = new Set(['library', 'processes', 'solve']);
const groups = 'fish|crop|feed|media|dose|water';

/** A string as [text], a template as its pieces around the holes. */
function stringsOf(text, file) {
  const found = [];
  const visit = (node) => {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) found.push([node.text]);
    if (ts.isTemplateExpression(node))
      found.push([node.head.text, ...node.templateSpans.map((span) => span.literal.text)]);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.ESNext, true));
  return found;
}

const escaped = (text) => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** `fish.nile-tilapia.mortality` as the pattern of all subjects, unless the text names the subject itself. */
function patternOf(id, subjects) {
  const [first, second, ...rest] = id.split('.');
  return rest.length > 0 && subjects.has(`${first}.${second}`) ? [first, '*', ...rest].join('.') : id;
}

/** Patterns of the ids that the strings of one module name. */
function patternsIn(strings, all, subjects) {
  const words = new Set(strings.filter((pieces) => pieces.length === 1).map(([text]) => text.toLowerCase()));
  const found = new Set();
  for (const pieces of strings) {
    if (pieces.length === 1) {
      const [text] = pieces;
      if (all.has(text)) found.add(text);
      // As a process or a planting says it, for whatever species, feed or crop is there.
      const group = /^(species|crop|feed)\.([a-z-]+)$/.exec(text);
      if (group === null || all.has(text)) continue;
      const pattern = `${group[1] === 'species' ? 'fish' : group[1]}.*.${group[2]}`;
      if ([...all].some((id) => patternOf(id, subjects) === pattern)) found.add(pattern);
      continue;
    }
    if (!pieces.some((piece) => piece.includes('.'))) continue;
    const [head, ...tail] = pieces.map(escaped);
    const subject = new RegExp(`^(${groups})\\.$`).test(pieces[0]) ? '[a-z0-9-]+|' : '';
    const word = [...words].map(escaped).join('|');
    const rest = tail.map((piece, at) => `(?:${at === 0 ? subject : ''}${word})${piece}`);
    const form = new RegExp(`^${head}${rest.join('')}$`);
    for (const id of all) if (form.test(id)) found.add(patternOf(id, subjects));
  }
  return [...found].sort();
}

function modules() {
  return readdirSync(source, { withFileTypes: true })
    .filter((room) => room.isDirectory() && !others.has(room.name))
    .flatMap(({ name }) =>
      readdirSync(join(source, name), { recursive: true }).map((file) => `${name}/${String(file)}`),
    )
    .filter((name) => name.endsWith('.ts'))
    .sort();
}

/** The text of the generated module. Same source and tables, same text. */
export function generateUses() {
  const { all, subjects } = ids();
  const lines = modules().flatMap((name) => {
    const patterns = patternsIn(stringsOf(readFileSync(join(source, name), 'utf8'), name), all, subjects);
    return patterns.map((pattern) => `  ['${name.slice(0, -'.ts'.length)}', '${pattern}'],`);
  });
  return [
    '// Generated from the source by tools/uses.mjs (npm run tables). Do not edit.',
    '',
    '/** Module, and the ids that it reads; `*` stands for any species, crop, feed, medium, product or water. */',
    'export const moduleUses: readonly (readonly [module: string, ids: string])[] = [',
    ...lines,
    '];',
    '',
  ].join('\n');
}

/** The module as it stands on disk. */
export function generatedUses() {
  return readFileSync(output, 'utf8');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(output, generateUses());
