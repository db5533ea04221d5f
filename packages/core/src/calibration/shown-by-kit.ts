import type { LogReading } from '../log/water-log.js';

/**
 * What a kit shows where a value is there: the figure of a reading of the same quantity and place whose bounds hold it, the
 * latest such; the value itself where the kit has shown no figure for it. So a card that has 10 and 20 shows no 14.
 * @param readings of one quantity in one place, in the order of time
 */
export function shownByKit(
  readings: readonly Pick<LogReading, 'low' | 'high' | 'value'>[],
  value: number,
): number {
  for (let i = readings.length - 1; i >= 0; i--) {
    const { low, high, value: figure } = readings[i];
    // A range that was written by hand is no step of the kit.
    const isFigure =
      !Number.isFinite(low) || !Number.isFinite(high) || figure !== (low + high) / 2 || high > low;
    if (isFigure && value >= low && value <= high) return figure;
  }
  return value;
}
