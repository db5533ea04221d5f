/** Scenarios that were read from files, each by itself: a copy with changes is another. It decides no result. */
const fromFiles = new WeakSet();
/** Remembers that a scenario was read from a file without a fault. */
export function rememberRead(scenario) {
    fromFiles.add(scenario);
}
/** Whether this very scenario was read from a file, and so checked before. */
export function wasRead(scenario) {
    return fromFiles.has(scenario);
}
//# sourceMappingURL=read-before.js.map