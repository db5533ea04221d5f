import { describePath, plainOf } from './tree.js';
function isBox(value) {
    return typeof value === 'object' && value !== null && !Array.isArray(value);
}
/** Puts a value at a path of a plain tree that nobody else holds, opening maps on the way. */
function put(root, path, value) {
    let at = root;
    for (const step of path.slice(0, -1)) {
        const below = Object.hasOwn(at, step) ? at[step] : undefined;
        if (typeof below !== 'object' || below === null)
            at[step] = {};
        at = at[step];
    }
    const last = path[path.length - 1];
    if (last !== undefined)
        at[last] = value;
}
/** Where each single value of a tree was written. */
function originsOf(tree, path, into) {
    if (tree.kind === 'map')
        for (const [key, { node }] of tree.entries)
            originsOf(node, [...path, key], into);
    else if (tree.kind === 'list')
        tree.items.forEach((item, index) => {
            originsOf(item, [...path, index], into);
        });
    else
        into.set(describePath(path), [tree.origin.file, tree.origin.line].filter((part) => part !== undefined).join(':'));
}
function valuesOf(plain, path, origins) {
    if (plain === null)
        return [];
    if (Array.isArray(plain))
        return plain.flatMap((item, index) => valuesOf(item, [...path, index], origins));
    if (isBox(plain))
        return Object.entries(plain).flatMap(([key, item]) => valuesOf(item, [...path, key], origins));
    const key = describePath(path);
    return [{ key, value: plain, origin: origins.get(key) ?? 'default' }];
}
/**
 * Lays the defaults used into a tree. A default that came out differently for different readers of the
 * same path (oxygen at saturation in vessels of different temperature) stays unwritten.
 */
export function resolveTree(tree, defaults, over) {
    const found = new Map();
    for (const used of defaults) {
        const key = describePath(used.path);
        const same = !found.has(key) || JSON.stringify(found.get(key)?.value) === JSON.stringify(used.value);
        found.set(key, same ? used : undefined);
    }
    const whole = plainOf(tree);
    const plain = isBox(whole) ? whole : {};
    for (const used of found.values())
        if (used !== undefined)
            put(plain, used.path, used.value);
    const origins = new Map();
    originsOf(tree, [], origins);
    if (over.days !== undefined) {
        put(plain, ['days'], over.days);
        origins.set('days', '--days');
    }
    return { plain, values: valuesOf(plain, [], origins) };
}
//# sourceMappingURL=resolve-tree.js.map