/** Largest |got − wanted|; NaN when an entry is not a number. */
export function largestDeviation(got: ArrayLike<number>, wanted: ArrayLike<number>): number {
  let largest = 0;
  for (let i = 0; i < wanted.length; i++) {
    const deviation = Math.abs(got[i] - wanted[i]);
    if (!(deviation <= largest)) largest = deviation;
  }
  return largest;
}

/** Largest |got − wanted| / |wanted| over all entries; NaN when one is not a number. */
export function relativeDeviation(got: ArrayLike<number>, wanted: ArrayLike<number>): number {
  const ratio = Array.from(wanted, (value, i) => got[i] / value);
  return largestDeviation(
    ratio,
    ratio.map(() => 1),
  );
}

/** Observed orders between neighbours of a list of errors, each with half the step of the one before. */
export function observedOrders(errors: readonly number[]): number[] {
  return errors.slice(1).map((error, i) => Math.log2(errors[i] / error));
}
