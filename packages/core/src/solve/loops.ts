/**
 * The loops in which an integrator spends its time, in the subset of TypeScript that `tools/module` makes WebAssembly of: the module
 * (`loops.generated.ts`) and these functions as they stand do the same operations in the same order, and give the same bytes.
 * Arrays come first. What a function writes to overlaps nothing that it reads, unless it says so.
 */

/** A whole number: a place or a count. The module holds it in 32 bits. */
type i32 = number;

/** A pivot below this share of its own diagonal entry is what cancellation left over. */
const LOST = 16 * Number.EPSILON;

/**
 * Sums of products, out[i] = Σ a[left p] b[right p] over start[i] <= p < start[i+1] for i < count. Mode 0 sets them, 1 adds
 * them to what is there, 2 sets them with the sign turned.
 */
export function sums(
  a: Float64Array,
  b: Float64Array,
  out: Float64Array,
  start: Int32Array,
  left: Int32Array,
  right: Int32Array,
  count: i32,
  mode: i32,
): void {
  let p = start[0];
  for (let i = 0; i < count; i++) {
    const end = start[i + 1];
    let sum = 0;
    for (; p < end; p++) sum += a[left[p]] * b[right[p]];
    if (mode === 0) out[i] = sum;
    else if (mode === 1) out[i] += sum;
    else out[i] = -sum;
  }
}

/**
 * Factors a sparse matrix in place, row by row without exchange: each row is spread out over `work`, then what the rows
 * above take from it is taken. `inverse` gets one over each pivot. Gives the first row whose pivot is zero, lost in round-off or
 * not finite, or -1.
 */
export function factor(
  values: Float64Array,
  inverse: Float64Array,
  work: Float64Array,
  start: Int32Array,
  column: Int32Array,
  diagonal: Int32Array,
  size: i32,
): i32 {
  for (let i = 0; i < size; i++) {
    const begin = start[i];
    const middle = diagonal[i];
    const end = start[i + 1];
    const before = values[middle];
    for (let p = begin; p < end; p++) work[column[p]] = values[p];
    for (let p = begin; p < middle; p++) {
      const k = column[p];
      const share = work[k] * inverse[k];
      work[k] = share;
      const last = start[k + 1];
      for (let q = diagonal[k] + 1; q < last; q++) work[column[q]] -= share * values[q];
    }
    for (let p = begin; p < end; p++) values[p] = work[column[p]];
    const pivot = work[i];
    if (!(Math.abs(pivot) > LOST * Math.abs(before)) || !Number.isFinite(pivot)) return i;
    inverse[i] = 1 / pivot;
  }
  return -1;
}

/** Replaces b by the solution with what `factor` left, forward and then back; row i of the factors is row `order`[i] of b. */
export function solve(
  b: Float64Array,
  values: Float64Array,
  inverse: Float64Array,
  work: Float64Array,
  start: Int32Array,
  column: Int32Array,
  diagonal: Int32Array,
  order: Int32Array,
  size: i32,
): void {
  for (let i = 0; i < size; i++) {
    const end = diagonal[i];
    let value = b[order[i]];
    for (let p = start[i]; p < end; p++) value -= values[p] * work[column[p]];
    work[i] = value;
  }
  for (let i = size - 1; i >= 0; i--) {
    const end = start[i + 1];
    let value = work[i];
    for (let p = diagonal[i] + 1; p < end; p++) value -= values[p] * work[column[p]];
    value *= inverse[i];
    work[i] = value;
    b[order[i]] = value;
  }
}

/**
 * out = base + w0 v0 + w1 v1 + ... for `count` vectors that lie one after another in `vectors`, two of them in one pass over
 * memory. `out` may be `base`.
 */
export function combine(
  base: Float64Array,
  w: Float64Array,
  vectors: Float64Array,
  out: Float64Array,
  size: i32,
  count: i32,
): void {
  for (let i = 0; i < size; i++) out[i] = base[i];
  let j: i32 = 0;
  for (; j + 1 < count; j += 2) {
    const a = w[j];
    const b = w[j + 1];
    const p = j * size;
    const q = p + size;
    for (let i = 0; i < size; i++) out[i] = out[i] + a * vectors[p + i] + b * vectors[q + i];
  }
  if (j < count) {
    const a = w[j];
    const p = j * size;
    for (let i = 0; i < size; i++) out[i] += a * vectors[p + i];
  }
}

/** Whether every entry is a finite number, 1 or 0. */
export function finite(v: Float64Array, size: i32): i32 {
  for (let i = 0; i < size; i++) if (!Number.isFinite(v[i])) return 0;
  return 1;
}

/** Sum of the squares of v, each weighted by absolute + relative · max(|y|, |other|). */
export function squares(
  v: Float64Array,
  y: Float64Array,
  other: Float64Array,
  absolute: Float64Array,
  size: i32,
  relative: number,
): number {
  let sum = 0;
  for (let i = 0; i < size; i++) {
    const weighted = v[i] / (absolute[i] + relative * Math.max(Math.abs(y[i]), Math.abs(other[i])));
    sum += weighted * weighted;
  }
  return sum;
}
