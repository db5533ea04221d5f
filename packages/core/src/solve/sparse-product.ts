import type { SparsePattern, SparseRows } from './contract.js';

/** out = Sᵀ r: what the rates do to the states. */
export function applyStoichiometry(rows: SparseRows, rates: Float64Array, out: Float64Array): void {
  const { start, column, value } = rows;
  const count = rates.length;
  out.fill(0);
  for (let k = 0; k < count; k++) {
    const rate = rates[k];
    if (rate === 0) continue;
    const end = start[k + 1];
    for (let p = start[k]; p < end; p++) out[column[p]] += value[p] * rate;
  }
}

/** out += R v, with the values of R given apart from its places. */
export function addProduct(
  pattern: SparsePattern,
  values: Float64Array,
  v: Float64Array,
  out: Float64Array,
): void {
  const { start, column } = pattern;
  const count = out.length;
  for (let k = 0; k < count; k++) {
    const end = start[k + 1];
    let sum = 0;
    for (let p = start[k]; p < end; p++) sum += values[p] * v[column[p]];
    out[k] += sum;
  }
}
