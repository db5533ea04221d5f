import { placeIssues } from './complaint.js';
import { Report } from './report.js';
import { describePath, describeTree, isEmpty, keyOrigin, nodeAt, originAt, plainOf, } from './tree.js';
/** Leaves out the keys whose value is undefined. */
export function compact(value) {
    return Object.fromEntries(Object.entries(value).filter(([, item]) => item !== undefined));
}
/**
 * What `{ volume: 0,6 m3 }` says to YAML is `{ volume: 0, "6 m3": null }`. Where a number lacks its unit and the next key
 * is such a rest of a number, the comma is the fault.
 */
function commaSlip(tree, path, problem) {
    if (problem !== 'a number without a unit')
        return undefined;
    const map = nodeAt(tree, path.slice(0, -1));
    const value = nodeAt(tree, path);
    if (map?.kind !== 'map' || value?.kind !== 'scalar')
        return undefined;
    const keys = [...map.entries.keys()];
    const next = keys[keys.indexOf(String(path[path.length - 1])) + 1];
    const rest = next === undefined ? undefined : map.entries.get(next)?.node;
    if (next === undefined || !/^\d/.test(next) || rest === undefined || !isEmpty(rest))
        return undefined;
    return { problem: 'a comma in a number: write a decimal point', got: `${value.source},${next}` };
}
/** Reads parts of a tree by schema; collects every fault with its place, and every default used. */
export class Reader extends Report {
    tree;
    load;
    defaults = [];
    /** What should be known of the reading though it is no fault: what was assumed. */
    notes = [];
    origin = 'file';
    constructor(tree, load) {
        super();
        this.tree = tree;
        this.load = load;
    }
    /** A fault at a path. What came is taken from the tree where it is one value. */
    fault(path, problem, rest = {}, aboutKey = false) {
        const node = nodeAt(this.tree, path);
        const origin = (aboutKey ? keyOrigin(this.tree, path) : undefined) ?? originAt(this.tree, path);
        const key = describePath(path);
        const written = node !== undefined && !isEmpty(node) && !aboutKey;
        const single = written && (node.kind === 'scalar' || problem === 'wrong kind of value');
        this.faults.push({
            ...origin,
            ...(key === '' ? {} : { key }),
            problem,
            ...(single ? { got: describeTree(node) } : {}),
            ...rest,
        });
    }
    gotName() {
        return {};
    }
    lacks(path, what, key) {
        if (!this.has([key]))
            this.fault(path, `no ${what} in this file`, { expected: `a section ${key}` });
    }
    /** Whether the tree has anything at a path. */
    has(path) {
        const node = nodeAt(this.tree, path);
        return node !== undefined && !isEmpty(node);
    }
    /** The part of the tree at a path, read by a schema; undefined (and faults) where it does not fit. */
    parse(schema, path) {
        const node = nodeAt(this.tree, path);
        const result = schema.safeParse(node === undefined || isEmpty(node) ? undefined : plainOf(node));
        if (result.success)
            return result.data;
        const reported = new Set();
        for (const { path: at, aboutKey, ...complaint } of placeIssues(result.error.issues, path)) {
            // One fault a value: a second complaint about it comes of the first.
            if (reported.has(describePath(at)))
                continue;
            reported.add(describePath(at));
            const { problem, ...rest } = { ...complaint, ...commaSlip(this.tree, at, complaint.problem) };
            this.fault(at, problem, rest, aboutKey);
        }
        return undefined;
    }
    /** The keys of the map at a path; a fault where something else stands there. */
    keys(path) {
        if (!this.has(path))
            return [];
        const node = nodeAt(this.tree, path);
        if (node?.kind !== 'map') {
            this.fault(path, 'wrong kind of value', { expected: 'a map of names' });
            return [];
        }
        return [...node.entries].filter(([, entry]) => !isEmpty(entry.node)).map(([name]) => name);
    }
    /** Reads a section of named entries, one by one. A section not written has none. */
    named(section, most, read) {
        const found = new Map();
        const names = this.keys([section]);
        const tooMany = !this.checkCount([section], names.length, most);
        for (const name of names) {
            if (!tooMany)
                this.checkName(name, [section, name], true);
            found.set(name, tooMany ? undefined : read([section, name], name));
        }
        return found;
    }
    /** Reads a section that is a list, item by item. */
    listed(section, most, read) {
        if (!this.has([section]))
            return [];
        const node = nodeAt(this.tree, [section]);
        if (node?.kind !== 'list') {
            this.fault([section], 'wrong kind of value', { expected: 'a list' });
            return [];
        }
        if (!this.checkCount([section], node.items.length, most))
            return [];
        return node.items.map((_, index) => read([section, index]));
    }
    /** Notes that a default stands in for a key not written, and gives it back. */
    fallback(path, value, written) {
        this.defaults.push({ path, value: written });
        return value;
    }
    /** Where a path was written, for messages of the run: `glasshouse.yaml:12`. */
    where(path) {
        const { file, line } = originAt(this.tree, path);
        return line === undefined ? file : `${file}:${line}`;
    }
}
//# sourceMappingURL=reader.js.map