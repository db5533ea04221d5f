import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument, type Document, type ParsedNode } from 'yaml';
import type { Fault } from '../errors.js';
import type { Entry, Origin, Tree } from './tree.js';

/** Longest text read, characters; most values after aliases are followed; deepest nesting. */
const limits = { characters: 4_000_000, values: 400_000, depth: 40 };

/** What a syntax error means for whoever wrote the file. */
const meanings: Record<string, string> = {
  DUPLICATE_KEY: 'key written twice',
  TAB_AS_INDENT: 'a tab in the indentation: use spaces',
  MULTIPLE_DOCS: 'more than one document in the file: remove the line "---"',
};

/** A tree (undefined where the text cannot be read at all) and everything wrong with its YAML. */
export interface TreeReading {
  readonly tree: Tree | undefined;
  readonly faults: readonly Fault[];
}

type Written = ParsedNode | null | undefined;

class TreeReader {
  readonly faults: Fault[] = [];
  private values = 0;

  constructor(
    private readonly file: string,
    private readonly lines: LineCounter,
    private readonly document: Document.Parsed,
  ) {}

  origin(offset: number): Origin {
    if (this.file === '--set') return { file: this.file };
    const { line, col } = this.lines.linePos(offset);
    return { file: this.file, line, column: col };
  }

  private fault(origin: Origin, problem: string, rest: Partial<Fault> = {}): void {
    this.faults.push({ ...origin, problem, ...rest });
  }

  read(node: Written, origin: Origin, depth: number): Tree {
    const place = node?.range ? this.origin(node.range[0]) : origin;
    const empty: Tree = { kind: 'scalar', origin: place, value: null, source: '' };
    this.values += 1;
    if (this.values > limits.values) {
      if (this.values === limits.values + 1) {
        this.fault(place, `more than ${limits.values} values once aliases are followed`);
      }
      return empty;
    }
    if (depth > limits.depth) {
      this.fault(place, `nested more than ${limits.depth} deep`);
      return empty;
    }
    if (isAlias(node)) {
      const target = node.resolve(this.document) as Written;
      if (target === undefined) {
        this.fault(place, 'alias without an anchor', { got: `*${node.source}` });
        return empty;
      }
      return this.read(target, place, depth + 1);
    }
    if (isMap(node)) return this.readMap(node.items as { key: Written; value: Written }[], place, depth);
    if (isSeq(node)) {
      const items = (node.items as Written[]).map((item) => this.read(item, place, depth + 1));
      return { kind: 'list', origin: place, items };
    }
    return isScalar(node) ? this.readScalar(node.value, node.source, place) : empty;
  }

  private readScalar(value: unknown, source: string | undefined, origin: Origin): Tree {
    if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') {
      return { kind: 'scalar', origin, value, source: source ?? String(value) };
    }
    return { kind: 'scalar', origin, value: null, source: '' };
  }

  private readMap(pairs: readonly { key: Written; value: Written }[], origin: Origin, depth: number): Tree {
    const entries = new Map<string, Entry>();
    for (const { key, value } of pairs) {
      const place = key?.range ? this.origin(key.range[0]) : origin;
      if (!isScalar(key) || key.value === null) {
        this.fault(place, 'a key must be a word');
        continue;
      }
      const name = typeof key.value === 'string' ? key.value : (key.source ?? '');
      if (name === '__proto__') this.fault(place, 'a key that cannot be used', { got: name });
      else entries.set(name, { origin: place, node: this.read(value, place, depth + 1) });
    }
    return { kind: 'map', origin, entries };
  }
}

/** The first line of the library's message, without its snippet. */
function firstLine(message: string): string {
  return (message.split('\n')[0] ?? message).replace(/[.:]$/, '');
}

/**
 * Reads YAML text into a tree that keeps the line and column of every key and value.
 *
 * @param text what the file holds
 * @param file its name for messages; `--set` for a value from the command line (no line numbers)
 */
export function readTree(text: string, file: string): TreeReading {
  if (text.length > limits.characters) {
    return { tree: undefined, faults: [{ file, problem: `longer than ${limits.characters} characters` }] };
  }
  const lines = new LineCounter();
  try {
    const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, version: '1.2' });
    const reader = new TreeReader(file, lines, document);
    const broken = [...document.errors, ...document.warnings].map(
      ({ code, message, pos }): Fault => ({
        ...reader.origin(pos[0]),
        problem: meanings[code] ?? `not YAML: ${firstLine(message)}`,
        ...(code === 'DUPLICATE_KEY' ? { got: /^[^:\s]+/.exec(text.slice(pos[0]))?.[0] ?? '' } : {}),
      }),
    );
    const severe = document.errors.some(({ code }) => code !== 'DUPLICATE_KEY');
    if (severe) return { tree: undefined, faults: broken };
    const tree = reader.read(document.contents, { file, line: 1, column: 1 }, 0);
    return { tree, faults: [...broken, ...reader.faults] };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { tree: undefined, faults: [{ file, problem: `nested more than ${limits.depth} deep` }] };
  }
}
