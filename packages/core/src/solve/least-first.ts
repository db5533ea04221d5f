/**
 * Numbers 0 .. size-1, each with a count that may change, taken least count first, ties by the lower number. A binary
 * heap in which an outdated entry stays until it comes up.
 */
export class LeastFirst {
  private readonly entries: (readonly [number, number])[] = [];
  private readonly counts: Float64Array;

  constructor(size: number) {
    this.counts = new Float64Array(size).fill(Number.NaN);
  }

  /** Gives a number its count, or a new one. */
  set(number: number, count: number): void {
    if (this.counts[number] === count) return;
    this.counts[number] = count;
    const { entries } = this;
    const entry = [count, number] as const;
    let at = entries.length;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!before(entry, entries[above])) break;
      entries[at] = entries[above];
      at = above;
    }
    entries[at] = entry;
  }

  /** Takes the number with the least count; -1 when none is left. */
  take(): number {
    for (let top = this.pop(); top !== undefined; top = this.pop()) {
      const [count, number] = top;
      if (this.counts[number] !== count) continue;
      this.counts[number] = Number.NaN;
      return number;
    }
    return -1;
  }

  private pop(): readonly [number, number] | undefined {
    const { entries } = this;
    const top = entries.at(0);
    const last = entries.pop();
    if (last === undefined || entries.length === 0) return top;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      if (below + 1 < entries.length && before(entries[below + 1], entries[below])) below++;
      if (below >= entries.length || !before(entries[below], last)) break;
      entries[at] = entries[below];
      at = below;
    }
    entries[at] = last;
    return top;
  }
}

function before(a: readonly [number, number], b: readonly [number, number]): boolean {
  return a[0] < b[0] || (a[0] === b[0] && a[1] < b[1]);
}
