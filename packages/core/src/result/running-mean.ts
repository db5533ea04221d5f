/** Integral from times[0] to each time of the straight lines through the values. */
function integral(times: readonly number[], values: ArrayLike<number>): Float64Array {
  const whole = new Float64Array(times.length);
  for (let i = 1; i < times.length; i++) {
    whole[i] = whole[i - 1] + ((times[i] - times[i - 1]) * (values[i] + values[i - 1])) / 2;
  }
  return whole;
}

/**
 * Mean over the window that ends at each time, of the straight lines through (time, value): exact for
 * them. NaN where the window reaches back past the first time. A window of 0 gives the values back.
 * @param times ascending
 * @param window same unit as the times, 0 or more
 */
export function runningMean(
  times: readonly number[],
  values: ArrayLike<number>,
  window: number,
): Float64Array {
  if (window === 0) return Float64Array.from(values);
  const whole = integral(times, values);
  // Room for rounding: the end of the first full window must not be missed by the last bit.
  const slack = 1e-9 * window;
  const means = new Float64Array(times.length).fill(Number.NaN);
  let j = 0;
  for (let i = 0; i < times.length; i++) {
    const time = times[i];
    const from = Math.max(time - window, times[0]);
    if (time - window < times[0] - slack) continue;
    while (j + 1 < times.length && times[j + 1] <= from) j++;
    const past = from - times[j];
    const slope = j + 1 < times.length ? (values[j + 1] - values[j]) / (times[j + 1] - times[j]) : 0;
    const before = whole[j] + past * (values[j] + (slope * past) / 2);
    means[i] = (whole[i] - before) / (time - from);
  }
  return means;
}
