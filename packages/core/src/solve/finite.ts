/** Whether every entry is a finite number; four sums that do not wait for each other. */
export function allFinite(v: Float64Array): boolean {
  const size = v.length;
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let i = 0;
  for (; i + 3 < size; i += 4) {
    a += v[i] * 0;
    b += v[i + 1] * 0;
    c += v[i + 2] * 0;
    d += v[i + 3] * 0;
  }
  for (; i < size; i++) a += v[i] * 0;
  return a + b + c + d === 0;
}

/** Index of the first entry that is not a finite number, or -1. */
export function firstNotFinite(v: Float64Array): number {
  return v.findIndex((value) => !Number.isFinite(value));
}
