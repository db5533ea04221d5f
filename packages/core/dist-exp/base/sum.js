/** Parts that add up to all that was added, none of whose digits overlap, smallest first (Shewchuk 1997). */
class ExactSum {
    parts = new Float64Array(40);
    count = 0;
    add(value) {
        const { parts } = this;
        let rest = value;
        let kept = 0;
        for (let i = 0; i < this.count; i++) {
            const part = parts[i];
            const high = rest + part;
            const low = Math.abs(rest) < Math.abs(part) ? rest - (high - part) : part - (high - rest);
            if (low !== 0)
                parts[kept++] = low;
            rest = high;
        }
        parts[kept] = rest;
        this.count = kept + 1;
        return this;
    }
    /** The sum, rounded once: where it lies half way, what is smaller decides. */
    valueOf() {
        const { parts } = this;
        let i = this.count - 1;
        let high = i < 0 ? 0 : parts[i];
        let low = 0;
        while (i > 0 && low === 0) {
            const before = high;
            const part = parts[--i];
            high = before + part;
            low = part - (high - before);
        }
        if (i > 0 && Math.sign(low) === Math.sign(parts[i - 1])) {
            const twice = 2 * low;
            const rounded = high + twice;
            if (twice === rounded - high)
                high = rounded;
        }
        return high;
    }
}
/**
 * Sum without rounding until the end, so that a balance of
 * large flows shows its residual and not the order in which it was added up. Any NaN or infinity
 * among the values shows in the sum.
 * @param values what to add; an empty list sums to 0
 */
export function sum(values) {
    let exact;
    let [first, second, count, plain] = [0, 0, 0, 0];
    for (const value of values) {
        plain = count === 0 ? value : plain + value;
        // Of two values the plain sum is the exact one, rounded.
        if (count === 0)
            first = value;
        else if (count === 1)
            second = value;
        else
            exact = (exact ?? new ExactSum().add(first).add(second)).add(value);
        count++;
    }
    return exact !== undefined && Number.isFinite(plain) ? exact.valueOf() : plain;
}
//# sourceMappingURL=sum.js.map