/**
 * Finds which module of the source reads which numbers of the tables, and writes it to
 * src/library/uses.generated.ts (`npm run generate`). Processes are left out: they say themselves what they read when
 * asked.
 *
 * How: every string and template of a module is held against every id. A hole that is a whole word between two
 * dots (`fish.${species}.mortality`) may be anything, any other only a string of the same module. A template
 * that asks for a number and names none is an error: then this tool must learn how it is made.
 */
import { readFileSync, readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { ids } from './tables.mjs';

const source = join(dirname(fileURLToPath(import.meta.url)), '..', 'src');

/** Rooms that hold the numbers or know nothing of them; processes say themselves what they read when asked. */
const others = new Set(['library', 'solve']);

/** The line at the head of a module that says by what name it reads numbers, wherever the file lies. */
const heading = /^\/\/ Reads numbers as: (.+)$/m;

/**
 * Modules that name numbers and read none for themselves: `model/scope.ts` hands on what a process asks for;
 * `calibration/default-free.ts` lists what a fit may vary among the numbers that a run was seen to read (their readers are
 * told already), and looks at their ranges only. A reader of a number is what its value changes.
 */
const passing = new Set(['calibration/default-free.ts', 'model/scope.ts']);

/** Whether a node is what a number is asked for by: the argument of `value(...)` or `row(...)`. */
function asksFor(node) {
  const call = node.parent;
  return (
    ts.isCallExpression(call) &&
    call.arguments[0] === node &&
    ts.isPropertyAccessExpression(call.expression) &&
    ['value', 'row'].includes(call.expression.name.text)
  );
}

/** A string as [text], a template as its pieces around the holes, with a mark where it asks for a number. */
function stringsOf(text, file) {
  const found = [];
  const visit = (node) => {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) found.push([node.text]);
    if (ts.isTemplateExpression(node))
      found.push(
        Object.assign([node.head.text, ...node.templateSpans.map((span) => span.literal.text)], {
          asks: asksFor(node),
        }),
      );
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
function patternsIn(strings, all, subjects, name) {
  const plain = strings.filter((pieces) => pieces.length === 1).map(([text]) => text);
  const words = new Set(plain.flatMap((text) => [text, text.toLowerCase()]));
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
    const whole = /^[a-z]+\.$/.test(pieces[0]) && pieces[1].startsWith('.') ? '[a-zA-Z0-9-]+|' : '';
    const [head, ...tail] = pieces.map(escaped);
    const word = [...words].map(escaped).join('|');
    const rest = tail.map((piece, at) => `(?:${at === 0 ? whole : ''}${word})${piece}`);
    const form = new RegExp(`^${head}${rest.join('')}$`);
    const named = [...all].filter((id) => form.test(id));
    if (pieces.asks && named.length === 0)
      throw new Error(`${name}: cannot tell which numbers ${pieces.join('${...}')} stands for`);
    for (const id of named) found.add(patternOf(id, subjects));
  }
  return [...found].sort();
}

function modules() {
  return readdirSync(source, { withFileTypes: true })
    .filter((room) => room.isDirectory() && !others.has(room.name))
    .flatMap(({ name }) =>
      readdirSync(join(source, name), { recursive: true }).map((file) => `${name}/${String(file)}`),
    )
    .filter((name) => name.endsWith('.ts') && !passing.has(name))
    .sort();
}

/** Reader and pattern of every module. A process is asked at run time; of its room only what has a heading is looked at. */
function readers() {
  const { all, subjects } = ids();
  return modules().flatMap((name) => {
    const text = readFileSync(join(source, name), 'utf8');
    const reader = heading.exec(text)?.[1];
    if (reader === undefined && name.startsWith('processes/')) return [];
    const patterns = patternsIn(stringsOf(text, name), all, subjects, name);
    if (patterns.length > 0 && reader === undefined)
      throw new Error(`${name}: reads ${patterns[0]}; say by what name: // Reads numbers as: ...`);
    return patterns.map((pattern) => [reader, pattern]);
  });
}

/** The text of the generated module. Same source and tables, same text. */
export function usesModule() {
  const lines = [...new Set(readers().map(([reader, pattern]) => `  ['${reader}', '${pattern}'],`))].sort();
  return [
    '// Generated from the source by tools/uses.mjs (npm run generate). Do not edit.',
    '',
    '/** Who reads, and the ids that it reads; `*` stands for any species, crop, feed, medium, product or water. */',
    'export const partUses: readonly (readonly [part: string, ids: string])[] = [',
    ...lines,
    '];',
    '',
  ].join('\n');
}
