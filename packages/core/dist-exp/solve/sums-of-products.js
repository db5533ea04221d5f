import { ShapeMemo } from './straight-line.js';
import { StraightLine } from './straight-line.js';
const MODES = ['set', 'add', 'negate'];
const memo = new ShapeMemo();
/** Many short sums of products of two arrays, with places known beforehand. */
export class SumsOfProducts {
    places;
    mode;
    line;
    constructor(places, mode) {
        this.places = places;
        this.mode = mode;
        const { start, left, right } = places;
        const shape = [start, left, right, Int32Array.of(MODES.indexOf(mode))];
        this.line = memo.get(shape, () => lineOf(places, mode));
    }
    /** Fills (or adds to) out. */
    apply(a, b, out) {
        const pieces = this.line.code();
        if (pieces === undefined)
            this.loop(a, b, out);
        else
            for (const piece of pieces)
                piece(a, b, out);
    }
    loop(a, b, out) {
        const { start, left, right } = this.places;
        const { mode } = this;
        const count = start.length - 1;
        for (let i = 0; i < count; i++) {
            const end = start[i + 1];
            let sum = 0;
            for (let p = start[i]; p < end; p++)
                sum += a[left[p]] * b[right[p]];
            if (mode === 'set')
                out[i] = sum;
            else if (mode === 'add')
                out[i] += sum;
            else
                out[i] = -sum;
        }
    }
}
function lineOf({ start, left, right }, mode) {
    return new StraightLine(['a', 'b', 'out'], left.length, (writer) => {
        for (let i = 0; i + 1 < start.length; i++) {
            let sum = '0';
            for (let p = start[i]; p < start[i + 1]; p++)
                sum += `+a[${left[p]}]*b[${right[p]}]`;
            const at = `out[${i}]`;
            const statement = { set: `${at}=${sum};`, add: `${at}+=${sum};`, negate: `${at}=-(${sum});` }[mode];
            writer.add(statement, start[i + 1] - start[i]);
        }
    });
}
/**
 * Groups products by the sum that they belong to, in the order given.
 * @param target for each product, the sum (0 .. count-1) it belongs to
 * @param left its place in the first array
 * @param right its place in the second array
 */
export function groupProducts(target, left, right, count) {
    const start = new Int32Array(count + 1);
    for (let q = 0; q < target.length; q++)
        start[target[q] + 1]++;
    for (let i = 0; i < count; i++)
        start[i + 1] += start[i];
    const next = start.slice(0, count);
    const grouped = { left: new Int32Array(target.length), right: new Int32Array(target.length) };
    for (let q = 0; q < target.length; q++) {
        const p = next[target[q]]++;
        grouped.left[p] = left[q];
        grouped.right[p] = right[q];
    }
    return { start, ...grouped };
}
//# sourceMappingURL=sums-of-products.js.map