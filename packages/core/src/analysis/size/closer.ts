import type { Trial } from './trial.js';

/**
 * The margin that decides: that of the condition nearest to failing, each in its own measure over the bracket, so
 * that margins of different units can be held against each other. NaN where there is no answer.
 */
function deciding(trial: Trial, other: Trial): number {
  return trial.margins.reduce((worst, margin, i) => {
    const scale = Math.abs(margin) + Math.abs(other.margins[i]);
    const share = scale === 0 ? 0 : margin / scale;
    return Number.isNaN(share) || share < worst ? share : worst;
  }, Infinity);
}

/**
 * The next value to try between one that fails and one that holds: where the straight line between their margins
 * crosses zero, no nearer to an end than half the final width; or the middle, where the line is not to be trusted.
 * @param width at which the search ends
 */
export function closer(fails: Trial, holds: Trial, width: number): number {
  const below = deciding(fails, holds);
  const above = deciding(holds, fails);
  const middle = (fails.value + holds.value) / 2;
  if (!(below < 0 && above > 0)) return middle;
  const line = (fails.value * above - holds.value * below) / (above - below);
  const least = Math.min(fails.value, holds.value) + width / 2;
  const most = Math.max(fails.value, holds.value) - width / 2;
  return least < most ? Math.min(most, Math.max(least, line)) : middle;
}
