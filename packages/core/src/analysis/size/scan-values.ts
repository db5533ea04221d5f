/** Values of a scan. */
const COUNT = 9;
/** From this ratio of the ends on, values are spread by equal ratios. */
const WIDE = 10;

/**
 * Values that show the whole of a range, its ends among them: by equal steps, or by equal ratios where the range is
 * wide; whole numbers, each once, where only they make sense.
 */
export function scanValues(from: number, to: number, whole = false): readonly number[] {
  const geometric = from > 0 && to / from >= WIDE;
  const values = Array.from({ length: COUNT }, (_, i) => {
    if (i === 0) return from;
    if (i === COUNT - 1) return to;
    const share = i / (COUNT - 1);
    const value = geometric ? from * (to / from) ** share : from + (to - from) * share;
    return whole ? Math.round(value) : value;
  });
  return [...new Set(values)];
}
