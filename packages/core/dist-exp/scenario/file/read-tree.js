import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument } from 'yaml';
/**
 * Longest text of YAML, characters; most marks in it (what opens, closes or parts values), which bound what the parser
 * makes of it; deepest nesting, and the bound on it above which a text is not even parsed.
 */
export const yamlLimits = { characters: 2_000_000, marks: 250_000, depth: 40, bound: 200 };
const marks = new Set('\n,:-?[]{}&*!|>#');
/** How many marks of YAML a text holds, those in quotes and comments too. */
export function yamlMarks(text) {
    let count = 0;
    for (const sign of text)
        if (marks.has(sign))
            count += 1;
    return count;
}
/** Why a text is no YAML that is worth parsing, found without parsing it; undefined where it may be. */
function unfitText(text, file) {
    const { characters, marks: most, depth, bound } = yamlLimits;
    if (text.length > characters) {
        return { file, problem: 'too long', got: `${text.length} characters`, expected: `at most ${characters}` };
    }
    const hidden = text.indexOf('\0');
    if (hidden >= 0) {
        const line = text.slice(0, hidden).split('\n').length;
        return { file, line, problem: 'not text', expected: 'a text file (YAML, UTF-8)' };
    }
    const count = yamlMarks(text);
    if (count > most) {
        const got = `${count} line ends, commas, colons and other marks of YAML`;
        return { file, problem: 'too much in one file', got, expected: `at most ${most}` };
    }
    return nestingBound(text) > bound ? { file, problem: `nested more than ${depth} deep` } : undefined;
}
/**
 * The first directive of a text (`%YAML 1.1`, `%TAG ...`), which would have it read by other rules than those of YAML 1.2:
 * dates as times, words as true and false. It stands before a document begins.
 */
function directiveIn(text, file) {
    let before = true;
    for (const [index, line] of text
        .replace(/^\uFEFF/, '')
        .split(/\r\n|\n|\r/)
        .entries()) {
        if (before && line.startsWith('%')) {
            const got = JSON.stringify(line.trimEnd().slice(0, 60));
            const expected = 'no line that begins with %: a file is read as YAML 1.2';
            const place = file === '--set' ? {} : { line: index + 1, column: 1 };
            return { file, ...place, problem: 'a directive of YAML', got, expected };
        }
        if (!/^\s*(#|$)/.test(line))
            before = /^\.\.\.(\s|$)/.test(line);
    }
    return undefined;
}
/** Levels opened by `- ` and `? ` at the head of one line. */
function headLevels(line) {
    return (/^\s*(?:[-?]\s+)*/.exec(line)?.[0].match(/[-?]/g) ?? []).length;
}
/**
 * A bound on how deep a YAML text nests, seen from its brackets, its indentation and its dashes without
 * parsing it, so that a hostile text is refused before a parser goes down with it. Brackets in quotes and
 * comments count too: the bound may be too high, never too low by more than what one line holds.
 */
export function nestingBound(text) {
    const indents = [];
    let brackets = 0;
    let deepest = 0;
    for (const line of text.split('\n')) {
        const indent = line.search(/\S/);
        if (indent >= 0) {
            while ((indents[indents.length - 1] ?? -1) >= indent)
                indents.pop();
            indents.push(indent);
        }
        const blocks = indents.length + headLevels(line);
        for (const sign of line) {
            if (sign === '[' || sign === '{')
                brackets += 1;
            else if ((sign === ']' || sign === '}') && brackets > 0)
                brackets -= 1;
            if (blocks + brackets > deepest)
                deepest = blocks + brackets;
        }
    }
    return deepest;
}
/** Most values after aliases are followed; deepest nesting; most faults of syntax told. */
const limits = { values: 400_000, depth: 40, syntax: 100 };
/** What a syntax error means for whoever wrote the file. */
const meanings = {
    TAB_AS_INDENT: 'a tab in the indentation: use spaces',
    UNEXPECTED_TOKEN: 'not YAML from here on',
    BAD_INDENT: 'a bracket that is not closed, or a line that is not set in enough',
    MISSING_CHAR: 'a quote or a bracket that is not closed',
    BLOCK_AS_IMPLICIT_KEY: 'a colon inside a value, or a line set in too far: put the value in quotes',
    MULTILINE_IMPLICIT_KEY: 'a line that is no "key: value": a colon with a blank behind it is missing',
    BLOCK_IN_FLOW: 'a list of "- " inside brackets: a bracket is not closed',
    TAG_RESOLVE_FAILED: 'a tag (!) that is not known here: remove it',
    BAD_DQ_ESCAPE: 'a backslash in double quotes that means nothing: write it twice',
    MULTIPLE_DOCS: 'more than one document in the file: remove the line "---"',
};
class TreeReader {
    file;
    lines;
    faults = [];
    /** Whether a value was lost, so that its absence says nothing. */
    broken = false;
    deep = false;
    values = 0;
    /** How many aliases lead to where we are. */
    aliases = 0;
    anchors = new Map();
    constructor(file, lines) {
        this.file = file;
        this.lines = lines;
    }
    origin(offset) {
        if (this.file === '--set')
            return { file: this.file };
        const { line, col } = this.lines.linePos(offset);
        return { file: this.file, line, column: col };
    }
    fault(origin, problem, rest = {}) {
        this.faults.push({ ...origin, problem, ...rest });
    }
    read(node, origin, depth) {
        const place = node?.range ? this.origin(node.range[0]) : origin;
        const empty = { kind: 'scalar', origin: place, value: null, source: '' };
        this.values += 1;
        if (this.values > limits.values) {
            this.broken = true;
            if (this.values === limits.values + 1) {
                this.fault(place, `more than ${limits.values} values once aliases are followed`);
            }
            return empty;
        }
        if (depth > limits.depth) {
            this.broken = true;
            if (!this.deep)
                this.fault(place, `nested more than ${limits.depth} deep`);
            this.deep = true;
            return empty;
        }
        if (isAlias(node)) {
            const target = this.anchors.get(node.source);
            if (target === undefined) {
                this.broken = true;
                this.fault(place, 'alias without an anchor', { got: `*${node.source}` });
                return empty;
            }
            this.aliases += 1;
            const found = this.read(target, place, depth + 1);
            this.aliases -= 1;
            return found;
        }
        // What an alias leads to keeps the anchors it had where it was written.
        if (node?.anchor !== undefined && this.aliases === 0)
            this.anchors.set(node.anchor, node);
        if (isMap(node))
            return this.readMap(node.items, place, depth);
        if (isSeq(node)) {
            const items = node.items.map((item) => this.read(item, place, depth + 1));
            return { kind: 'list', origin: place, items };
        }
        return isScalar(node) ? this.readScalar(node.value, node.source, place) : empty;
    }
    readScalar(value, source, origin) {
        if (typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean') {
            return { kind: 'scalar', origin, value, source: source ?? String(value) };
        }
        if (value !== null && value !== undefined) {
            const got = source === undefined ? {} : { got: JSON.stringify(source.slice(0, 60)) };
            this.fault(origin, 'a value of a kind that is not read', {
                ...got,
                expected: 'text, a number, true or false, without a tag such as !!timestamp',
            });
        }
        return { kind: 'scalar', origin, value: null, source: '' };
    }
    readMap(pairs, origin, depth) {
        const entries = new Map();
        for (const { key, value } of pairs) {
            const place = key?.range ? this.origin(key.range[0]) : origin;
            if (!isScalar(key) || key.value === null) {
                this.fault(place, 'a key must be a word');
                continue;
            }
            const name = typeof key.value === 'string' ? key.value : (key.source ?? '');
            // What an alias leads to was looked at where it was written.
            const inAlias = this.aliases > 0;
            if (name === '__proto__')
                this.fault(place, 'a key that cannot be used', { got: name });
            else if (entries.has(name) && !inAlias)
                this.fault(place, 'key written twice', { got: name.slice(0, 60) });
            else
                entries.set(name, { origin: place, node: this.read(value, place, depth + 1) });
        }
        return { kind: 'map', origin, entries };
    }
}
/** The first line of the library's message, without its snippet. */
function firstLine(message) {
    return (message.split('\n')[0] ?? message).replace(/[.:]$/, '');
}
/**
 * Reads YAML text into a tree that keeps the line and column of every key and value.
 *
 * @param text what the file holds
 * @param file its name for messages; `--set` for a value from the command line (no line numbers)
 */
export function readTree(text, file) {
    const unfit = unfitText(text, file) ?? directiveIn(text, file);
    if (unfit !== undefined)
        return { tree: undefined, faults: [unfit] };
    const lines = new LineCounter();
    // The library compares every key with every other; ours are told apart in `readMap`.
    const how = { prettyErrors: false, version: '1.2', uniqueKeys: false };
    const document = parseDocument(text, { lineCounter: lines, ...how });
    const reader = new TreeReader(file, lines);
    // Once the parser has lost its place, every later token is unexpected: the first of them is the fault.
    const lost = document.errors.findIndex(({ code }) => code === 'UNEXPECTED_TOKEN');
    const errors = document.errors.filter(({ code }, index) => code !== 'UNEXPECTED_TOKEN' || index === lost);
    // What follows a fault in its line comes of it.
    const reported = new Set();
    const found = [...errors, ...document.warnings].filter(({ pos }) => {
        const { line } = lines.linePos(pos[0]);
        return !reported.has(line) && reported.add(line);
    });
    const broken = found.slice(0, limits.syntax).map(({ code, message, pos }) => ({
        ...reader.origin(pos[0]),
        problem: meanings[code] ?? `not YAML: ${firstLine(message)}`,
    }));
    const unreported = found[limits.syntax];
    if (unreported !== undefined) {
        const problem = `${found.length - limits.syntax} more faults of syntax from here on`;
        broken.push({ ...reader.origin(unreported.pos[0]), problem });
    }
    if (document.errors.length > 0)
        return { tree: undefined, faults: broken };
    const tree = reader.read(document.contents, { file, line: 1, column: 1 }, 0);
    return { tree: reader.broken ? undefined : tree, faults: [...broken, ...reader.faults] };
}
//# sourceMappingURL=read-tree.js.map