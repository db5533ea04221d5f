/** The largest value of each state over all days, without signs. */
export function largestOf(days: Float64Array, states: number): Float64Array {
  const largest = new Float64Array(states);
  days.forEach((value, i) => {
    largest[i % states] = Math.max(largest[i % states], Math.abs(value));
  });
  return largest;
}

/**
 * Where two courses differ most, in shares of what is allowed: `allowed` of the value and `allowed` of
 * the largest value of that state. A value that is not a number counts as infinitely far off.
 */
export function largestDeviation(
  reference: Float64Array,
  days: Float64Array,
  states: number,
  allowed: number,
): { readonly share: number; readonly state: number; readonly day: number } {
  const largest = largestOf(reference, states);
  let worst = { share: 0, state: 0, day: 0 };
  reference.forEach((value, i) => {
    const state = i % states;
    const off = Math.abs(days[i] - value);
    const most = allowed * (Math.abs(value) + largest[state]);
    const share = off === 0 ? 0 : Number.isFinite(off) ? off / most : Infinity;
    if (share > worst.share) worst = { share, state, day: Math.floor(i / states) + 1 };
  });
  return worst;
}
