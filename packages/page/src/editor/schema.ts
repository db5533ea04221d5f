// Where a text stands in the schema of the system file: what may be written there, and what a key means.
import { scenarioJsonSchema } from '@leat/core';

/** A part of the schema, as far as help is taken from it. */
interface Part {
  readonly description?: string;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly properties?: Readonly<Record<string, Part>>;
  readonly additionalProperties?: Part | boolean;
  readonly items?: Part;
  readonly anyOf?: readonly Part[];
  readonly oneOf?: readonly Part[];
  readonly allOf?: readonly Part[];
  readonly enum?: readonly unknown[];
  readonly const?: unknown;
  readonly examples?: readonly unknown[];
}

/** All that a part may be. */
function waysOf(part: Part): readonly Part[] {
  return [part, ...[...(part.anyOf ?? []), ...(part.oneOf ?? []), ...(part.allOf ?? [])].flatMap(waysOf)];
}

function into(part: Part, step: string): readonly Part[] {
  return waysOf(part).flatMap(({ properties, additionalProperties, items }) => {
    if (step === '-') return items === undefined ? [] : [items];
    const named = properties?.[step];
    if (named !== undefined) return [named];
    return typeof additionalProperties === 'object' ? [additionalProperties] : [];
  });
}

let whole: Part | undefined;

/** The schema of a whole system file, made when help is first asked for. */
function schema(): Part {
  const { definitions } = scenarioJsonSchema() as { readonly definitions: { readonly whole: Part } };
  return (whole ??= definitions.whole);
}

const partsAt = (path: readonly string[]): readonly Part[] =>
  path.reduce<readonly Part[]>(
    (parts, step) => parts.flatMap((part) => into(part, step)),
    [whole ?? schema()],
  );

/** Keys that may stand below a path, each with what it means. */
export function keysAt(path: readonly string[]): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const part of partsAt(path).flatMap(waysOf))
    for (const [key, { description = '' }] of Object.entries(part.properties ?? {}))
      if (!found.has(key)) found.set(key, description);
  return found;
}

/** Words that may stand as the value of a path. */
export function valuesAt(path: readonly string[]): readonly string[] {
  const found = partsAt(path)
    .flatMap(waysOf)
    .flatMap((part) => [
      ...(part.enum ?? []),
      ...(part.const === undefined ? [] : [part.const]),
      ...(part.examples ?? []),
    ]);
  return [
    ...new Set(found.filter((each) => typeof each === 'string' || typeof each === 'number').map(String)),
  ];
}

/** What a path means: its meaning, unit, range and default. A plain number has its range beside its meaning. */
export function meaningAt(path: readonly string[]): string {
  const found = partsAt(path)
    .flatMap(waysOf)
    .find(({ description }) => description !== undefined);
  if (found === undefined) return '';
  const { description = '', minimum, maximum } = found;
  const isTold = minimum === undefined || maximum === undefined || description.includes('range:');
  return isTold ? description : `${description}; range: ${String(minimum)} to ${String(maximum)}`;
}

const keyOf = /^(\s*(?:-\s+)*)(?:"([^"]*)"|'([^']*)'|([^\s:#"'][^:#]*?))\s*:(?:\s|$)/;

/**
 * The keys above a line of YAML and its own, from the top; `-` stands for an item of a list. Blocks are followed by their
 * indentation; of what is written in braces, the line alone counts.
 * @param indent how far the line is indented, where it holds no key yet
 */
export function pathAt(lines: readonly string[], line: number, indent?: number): readonly string[] {
  const path: string[] = [];
  let within = Infinity;
  for (let at = line; at >= 0; at--) {
    const text = lines[at];
    if (text.trim() === '' || text.trimStart().startsWith('#')) {
      if (at === line && indent !== undefined) within = indent;
      continue;
    }
    const match = keyOf.exec(text);
    if (at === line && match === null) {
      within = indent ?? text.length - text.trimStart().length;
      if (/^\s*-/.test(text)) {
        path.unshift('-');
        within = text.indexOf('-') + 1;
      }
      continue;
    }
    if (match === null) continue;
    const [, lead, double, single, bare] = match;
    const column = lead.length;
    if (column >= within) continue;
    path.unshift(double ?? single ?? bare);
    const dash = lead.indexOf('-');
    if (dash >= 0) path.unshift('-');
    within = dash >= 0 ? dash + 1 : column;
    // Lists may stand at the column of their key.
    if (dash < 0 && column === 0) break;
    if (dash === 0) within = 1;
  }
  return path;
}
