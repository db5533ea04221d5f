/**
 * The loops in which an integrator spends its time, in the subset of TypeScript that `tools/module` makes WebAssembly of: the module
 * (`loops.generated.ts`) and these functions as they stand do the same operations in the same order, and give the same bytes.
 * Arrays come first. What a function writes to overlaps nothing that it reads, unless it says so.
 */

/** A whole number: a place or a count. The module holds it in 32 bits. */
export type i32 = number;

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
 * out = base + w0 v0 + w1 v1 + ... for `count` vectors (at most 6) that lie one after another in `vectors`, in one pass over memory:
 * written out for each count. `out` may be `base`.
 */
export function combine(
  base: Float64Array,
  w: Float64Array,
  vectors: Float64Array,
  out: Float64Array,
  size: i32,
  count: i32,
): void {
  const second = size;
  const third = 2 * size;
  const fourth = 3 * size;
  const fifth = 4 * size;
  const sixth = 5 * size;
  if (count === 0) {
    for (let i = 0; i < size; i++) out[i] = base[i];
  } else if (count === 1) {
    for (let i = 0; i < size; i++) out[i] = base[i] + w[0] * vectors[i];
  } else if (count === 2) {
    for (let i = 0; i < size; i++) out[i] = base[i] + w[0] * vectors[i] + w[1] * vectors[second + i];
  } else if (count === 3) {
    for (let i = 0; i < size; i++) {
      out[i] = base[i] + w[0] * vectors[i] + w[1] * vectors[second + i] + w[2] * vectors[third + i];
    }
  } else if (count === 4) {
    for (let i = 0; i < size; i++) {
      const two = base[i] + w[0] * vectors[i] + w[1] * vectors[second + i];
      out[i] = two + w[2] * vectors[third + i] + w[3] * vectors[fourth + i];
    }
  } else if (count === 5) {
    for (let i = 0; i < size; i++) {
      const two = base[i] + w[0] * vectors[i] + w[1] * vectors[second + i];
      const four = two + w[2] * vectors[third + i] + w[3] * vectors[fourth + i];
      out[i] = four + w[4] * vectors[fifth + i];
    }
  } else {
    for (let i = 0; i < size; i++) {
      const two = base[i] + w[0] * vectors[i] + w[1] * vectors[second + i];
      const four = two + w[2] * vectors[third + i] + w[3] * vectors[fourth + i];
      out[i] = four + w[4] * vectors[fifth + i] + w[5] * vectors[sixth + i];
    }
  }
}

/** out += v. */
export function add(v: Float64Array, out: Float64Array, size: i32): void {
  for (let i = 0; i < size; i++) out[i] += v[i];
}

/** out = v + w. */
export function setSum(v: Float64Array, w: Float64Array, out: Float64Array, size: i32): void {
  for (let i = 0; i < size; i++) out[i] = v[i] + w[i];
}

/** out += share v, the share being one number. */
export function addShare(v: Float64Array, share: Float64Array, out: Float64Array, size: i32): void {
  for (let i = 0; i < size; i++) out[i] += share[0] * v[i];
}

/** out = share v. */
export function setShare(v: Float64Array, share: Float64Array, out: Float64Array, size: i32): void {
  for (let i = 0; i < size; i++) out[i] = share[0] * v[i];
}

/** Whether every entry is a finite number, 1 or 0; four sums that do not wait for each other. */
export function finite(v: Float64Array, size: i32): i32 {
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let i: i32 = 0;
  for (; i + 3 < size; i += 4) {
    a += v[i] * 0;
    b += v[i + 1] * 0;
    c += v[i + 2] * 0;
    d += v[i + 3] * 0;
  }
  for (; i < size; i++) a += v[i] * 0;
  return a + b + c + d === 0 ? 1 : 0;
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
