/** The path as people write it: `vessels.tank-1.volume`, `flows[0].rate`. */
export function describePath(path) {
    return path.reduce((text, step) => {
        if (typeof step === 'number')
            return `${text}[${step}]`;
        return text === '' ? step : `${text}.${step}`;
    }, '');
}
/** The plain value of a tree. Keys left empty (`note:`) or set to null count as not written. */
export function plainOf(tree) {
    if (tree.kind === 'scalar')
        return tree.value;
    if (tree.kind === 'list')
        return tree.items.map(plainOf);
    const written = [...tree.entries].filter(([, { node }]) => !isEmpty(node));
    return Object.fromEntries(written.map(([key, { node }]) => [key, plainOf(node)]));
}
/** Whether a value was left out: `key:` with nothing after it, or null. */
export function isEmpty(tree) {
    return tree.kind === 'scalar' && tree.value === null;
}
/** The value at a path, or undefined. */
export function nodeAt(tree, path) {
    let node = tree;
    for (const step of path) {
        if (node?.kind === 'map')
            node = node.entries.get(String(step))?.node;
        else if (node?.kind === 'list' && typeof step === 'number')
            node = node.items[step];
        else
            return undefined;
    }
    return node;
}
/** Where the deepest written part of a path stands: the value itself, or the key that should hold it. */
export function originAt(tree, path) {
    const node = nodeAt(tree, path);
    if (node?.kind === 'scalar')
        return node.origin;
    for (let length = path.length; length > 0; length -= 1) {
        const key = keyOrigin(tree, path.slice(0, length));
        if (key !== undefined)
            return key;
    }
    return tree.origin;
}
/** Where the key at the end of a path stands, or the item itself in a list. */
export function keyOrigin(tree, path) {
    const parent = nodeAt(tree, path.slice(0, -1));
    const last = path[path.length - 1];
    if (last === undefined)
        return undefined;
    if (parent?.kind === 'map')
        return parent.entries.get(String(last))?.origin;
    return nodeAt(tree, path)?.origin;
}
/** What came, short enough for a message. */
export function describeTree(tree) {
    if (tree.kind === 'list')
        return `a list of ${tree.items.length}`;
    if (tree.kind === 'map')
        return tree.entries.size === 0 ? 'an empty map' : `a map with ${[...tree.entries.keys()][0]}`;
    const { source, value } = tree;
    const text = source.length > 60 ? `${source.slice(0, 57)}...` : source;
    return typeof value === 'string' ? JSON.stringify(text) : text;
}
//# sourceMappingURL=tree.js.map