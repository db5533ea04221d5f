import type { LogReading } from '../log/water-log.js';

type Figure = Pick<LogReading, 'low' | 'high' | 'value'>;

/** The latest reading that shows a figure of the kit whose bounds hold a value. */
function figureOf(readings: readonly Figure[], value: number): Figure | undefined {
  for (let i = readings.length - 1; i >= 0; i--) {
    const { low, high, value: figure } = readings[i];
    // A range that was written by hand is no step of the kit.
    const isFigure =
      !Number.isFinite(low) || !Number.isFinite(high) || figure !== (low + high) / 2 || high > low;
    if (isFigure && value >= low && value <= high) return readings[i];
  }
  return undefined;
}

/**
 * What a kit shows where a value is there: the figure of a reading of the same quantity and place whose bounds hold it, the
 * latest such; the value itself where the kit has shown no figure for it. So a card that has 10 and 20 shows no 14.
 * @param readings of one quantity in one place, in the order of time
 */
export const shownByKit = (readings: readonly Figure[], value: number): number =>
  figureOf(readings, value)?.value ?? value;

/** Half of the kit's step about a value, by the bounds of that figure; 0 where they are open or no figure is known. */
export function halfStepAt(readings: readonly Figure[], value: number): number {
  const figure = figureOf(readings, value);
  const half = figure === undefined ? 0 : (figure.high - figure.low) / 2;
  return Number.isFinite(half) ? half : 0;
}
