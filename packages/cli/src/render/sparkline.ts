const bars = '▁▂▃▄▅▆▇█';

/**
 * A small line of the course of values: each letter the mean of its part, from lowest to highest of those
 * means; level where they do not differ; a blank where there are no numbers.
 */
export function sparkline(values: ArrayLike<number>, letters: number): string {
  const count = Math.min(letters, values.length);
  const means = Array.from({ length: count }, (_, i) => {
    const from = Math.floor((i * values.length) / count);
    const to = Math.floor(((i + 1) * values.length) / count);
    const part = Array.from(values).slice(from, to).filter(Number.isFinite);
    return part.reduce((total, value) => total + value, 0) / part.length;
  });
  const known = means.filter(Number.isFinite);
  const low = Math.min(...known);
  const high = Math.max(...known);
  return means
    .map((mean) => {
      if (!Number.isFinite(mean)) return ' ';
      const share = high - low > 1e-9 * Math.abs(high) ? (mean - low) / (high - low) : 0;
      return bars[Math.min(bars.length - 1, Math.floor(share * bars.length))];
    })
    .join('');
}
