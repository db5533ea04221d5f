/**
 * Indices of the points of a course to draw: all of a short one; of a long one the lowest and the highest of each of
 * `most / 2` equal stretches, the first and the last, so that no peak is lost.
 */
export function drawnPoints(values: ArrayLike<number>, most: number): readonly number[] {
  const count = values.length;
  if (count <= most) return Array.from({ length: count }, (_, i) => i);
  const stretches = Math.floor(most / 2);
  const kept = new Set([0, count - 1]);
  for (let stretch = 0; stretch < stretches; stretch += 1) {
    const from = Math.floor((stretch * count) / stretches);
    const to = Math.floor(((stretch + 1) * count) / stretches);
    let [low, high] = [from, from];
    for (let i = from; i < to; i += 1) {
      if (values[i] < values[low] || Number.isNaN(values[low])) low = i;
      if (values[i] > values[high] || Number.isNaN(values[high])) high = i;
    }
    kept.add(low).add(high);
  }
  return [...kept].sort((a, b) => a - b);
}
