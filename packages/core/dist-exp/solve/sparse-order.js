/**
 * Numbers 0 .. size-1, each with a count that may change, taken least count first, ties by the lower number. A binary
 * heap in which an outdated entry stays until it comes up.
 */
export class LeastFirst {
    entries = [];
    counts;
    constructor(size) {
        this.counts = new Float64Array(size).fill(Number.NaN);
    }
    /** Gives a number its count, or a new one. */
    set(number, count) {
        if (this.counts[number] === count)
            return;
        this.counts[number] = count;
        const { entries } = this;
        const entry = [count, number];
        let at = entries.length;
        while (at > 0) {
            const above = (at - 1) >> 1;
            if (!before(entry, entries[above]))
                break;
            entries[at] = entries[above];
            at = above;
        }
        entries[at] = entry;
    }
    /** Takes the number with the least count; -1 when none is left. */
    take() {
        for (let top = this.pop(); top !== undefined; top = this.pop()) {
            const [count, number] = top;
            if (this.counts[number] !== count)
                continue;
            this.counts[number] = Number.NaN;
            return number;
        }
        return -1;
    }
    pop() {
        const { entries } = this;
        const top = entries.at(0);
        const last = entries.pop();
        if (last === undefined || entries.length === 0)
            return top;
        let at = 0;
        for (;;) {
            let below = 2 * at + 1;
            if (below + 1 < entries.length && before(entries[below + 1], entries[below]))
                below++;
            if (below >= entries.length || !before(entries[below], last))
                break;
            entries[at] = entries[below];
            at = below;
        }
        entries[at] = last;
        return top;
    }
}
function before(a, b) {
    return a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]);
}
/**
 * Symbolic elimination of an unsymmetric square pattern with pivots on the diagonal, each time the one
 * with the least Markowitz count (rows − 1)(columns − 1); ties go to the lower number. Source [R]: Duff,
 * Erisman & Reid, Direct Methods for Sparse Matrices (Oxford 1986), section 7.2.
 */
export function eliminate(pattern) {
    const size = pattern.start.length - 1;
    const rows = Array.from({ length: size }, (_, i) => new Set([i]));
    const columns = Array.from({ length: size }, (_, i) => new Set([i]));
    for (let i = 0; i < size; i++) {
        for (let p = pattern.start[i]; p < pattern.start[i + 1]; p++) {
            rows[i].add(pattern.column[p]);
            columns[pattern.column[p]].add(i);
        }
    }
    const order = new Int32Array(size);
    const rank = new Int32Array(size).fill(-1);
    const filled = rows.map((row) => new Set(row));
    const left = new LeastFirst(size);
    const count = (i) => {
        left.set(i, (rows[i].size - 1) * (columns[i].size - 1));
    };
    for (let i = 0; i < size; i++)
        count(i);
    for (let k = 0; k < size; k++) {
        const pivot = left.take();
        order[k] = pivot;
        rank[pivot] = k;
        for (const column of rows[pivot])
            columns[column].delete(pivot);
        for (const row of columns[pivot])
            rows[row].delete(pivot);
        rows[pivot].delete(pivot);
        columns[pivot].delete(pivot);
        for (const row of columns[pivot]) {
            for (const column of rows[pivot]) {
                rows[row].add(column);
                columns[column].add(row);
                filled[row].add(column);
            }
        }
        for (const row of columns[pivot])
            count(row);
        for (const column of rows[pivot])
            count(column);
    }
    return { order, filled: renumber(filled, order, rank) };
}
function renumber(rows, order, rank) {
    const start = new Int32Array(rows.length + 1);
    const column = [];
    for (let k = 0; k < rows.length; k++) {
        const places = [...rows[order[k]]].map((old) => rank[old]);
        column.push(...places.sort((a, b) => a - b));
        start[k + 1] = column.length;
    }
    return { start, column: Int32Array.from(column) };
}
//# sourceMappingURL=sparse-order.js.map