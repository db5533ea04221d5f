import { drawnRuns } from './draw-runs.js';
import type { SystemCase, SystemQuantity } from './system-case.js';

/** What the draws say of one quantity. */
export interface Band {
  readonly quantity: SystemQuantity;
  readonly low: number;
  readonly median: number;
  readonly high: number;
  /** Whether the published value or range overlaps the band from the 5th to the 95th percentile. */
  readonly hit: boolean;
}

/** Rounding of what is taken in as it was published. */
const rounding = 1e-9;

function bandOf(quantity: SystemQuantity, values: readonly number[]): Band {
  const sorted = [...values].sort((a, b) => a - b);
  const step = (sorted.length - 1) / 20;
  if (!Number.isInteger(step)) throw new RangeError('draws must be 1 more than a multiple of 20');
  const [low, median, high] = [sorted[step], sorted[10 * step], sorted[19 * step]];
  const slack = rounding * Math.abs(median);
  const hit = quantity.published.low <= high + slack && quantity.published.high >= low - slack;
  return { quantity, low, median, high, hit };
}

/** The quantities of a system by the draw of one seed, in their order. */
export function drawnValues(system: SystemCase, seed: number): readonly number[] {
  const runs = drawnRuns(system, seed);
  return system.quantities.map(({ value }) => value(runs));
}

const known = new Map<SystemCase, readonly Band[]>();

/** Bands of all quantities of a system, by draws with seeds 1, 2, 3 ...; worked out once. */
export function bandsOf(system: SystemCase): readonly Band[] {
  const found = known.get(system);
  if (found !== undefined) return found;
  const values = Array.from({ length: system.draws }, (_, draw) => drawnValues(system, draw + 1));
  const bands = system.quantities.map((quantity, index) =>
    bandOf(
      quantity,
      values.map((each) => each[index]),
    ),
  );
  known.set(system, bands);
  return bands;
}

/** Bands as the texts of a system list them, hit where no miss is told, without their numbers: no draw is made. */
export function listedBands(system: SystemCase): readonly Band[] {
  const none = { low: Number.NaN, median: Number.NaN, high: Number.NaN };
  return system.quantities.map((quantity) => ({ quantity, ...none, hit: quantity.miss === undefined }));
}
