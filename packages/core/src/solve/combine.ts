/**
 * out = base + w0 v0 + w1 v1 + ... for the first `count` vectors, in one pass over memory. The inner loops
 * are written out for each count: this is where an integrator spends most of its own time.
 */
export function combine(
  base: Float64Array,
  w: ArrayLike<number>,
  v: readonly Float64Array[],
  count: number,
  out: Float64Array,
): void {
  const size = out.length;
  const [w0, w1, w2, w3, w4, w5] = [w[0], w[1], w[2], w[3], w[4], w[5]];
  const [v0, v1, v2, v3, v4, v5] = [v[0], v[1], v[2], v[3], v[4], v[5]];
  switch (count) {
    case 0:
      out.set(base);
      return;
    case 1:
      for (let i = 0; i < size; i++) out[i] = base[i] + w0 * v0[i];
      return;
    case 2:
      for (let i = 0; i < size; i++) out[i] = base[i] + w0 * v0[i] + w1 * v1[i];
      return;
    case 3:
      for (let i = 0; i < size; i++) out[i] = base[i] + w0 * v0[i] + w1 * v1[i] + w2 * v2[i];
      return;
    case 4:
      for (let i = 0; i < size; i++) {
        out[i] = base[i] + w0 * v0[i] + w1 * v1[i] + w2 * v2[i] + w3 * v3[i];
      }
      return;
    case 5:
      for (let i = 0; i < size; i++) {
        out[i] = base[i] + w0 * v0[i] + w1 * v1[i] + w2 * v2[i] + w3 * v3[i] + w4 * v4[i];
      }
      return;
    case 6:
      for (let i = 0; i < size; i++) {
        out[i] = base[i] + w0 * v0[i] + w1 * v1[i] + w2 * v2[i] + w3 * v3[i] + w4 * v4[i] + w5 * v5[i];
      }
      return;
    default:
      throw new RangeError(`combine takes up to 6 vectors, got ${String(count)}`);
  }
}
