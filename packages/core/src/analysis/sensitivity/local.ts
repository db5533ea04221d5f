import type { TableRow } from '../../library/table-row.js';
import { shareBelow } from '../draws/share-below.js';
import { moved } from './moved.js';
import type { Points } from './morris.js';

/** How an outcome answers to a small change of one number. */
export interface LocalEffect {
  /** Change of the outcome, in its unit, per unit of the number. */
  readonly slope: number;
  /** Percent of the outcome for each percent of the number; NaN where either is 0. */
  readonly elasticity: number;
  /** Slope times the range of the number, in the unit of the outcome: as if the outcome ran straight. */
  readonly overRange: number;
}

/** Share of its range by which a number is moved, either way. */
const move = 0.05;

/** The values between which the difference is taken: as far as the range goes. */
function ends({ value, low, high }: TableRow): readonly [number, number] {
  const step = move * (high - low);
  return [Math.max(low, value - step), Math.min(high, value + step)];
}

/** The uniform numbers at which each row has the value it has in the tables. */
export function middleOf(rows: readonly TableRow[]): Float64Array {
  return Float64Array.from(rows, (row) => shareBelow(row, row.value));
}

/**
 * Central differences: for each of the `inputs` (places in `rows`) two points, a little below and above its value, all
 * else as it stands.
 */
export function localDesign(rows: readonly TableRow[], inputs: readonly number[]): Points {
  const middle = middleOf(rows);
  return inputs.flatMap((input) =>
    ends(rows[input]).map((value) => moved(middle, input, shareBelow(rows[input], value))),
  );
}

/**
 * Slopes and elasticities from the outcomes at the points of `localDesign`.
 * @param inputs as given to `localDesign`
 * @param outcome with every number as it stands
 */
export function localEffects(
  rows: readonly TableRow[],
  inputs: readonly number[],
  outcomes: ArrayLike<number>,
  outcome: number,
): readonly LocalEffect[] {
  return inputs.map((input, i) => {
    const row = rows[input];
    const [below, above] = ends(row);
    const slope = (outcomes[2 * i + 1] - outcomes[2 * i]) / (above - below);
    const elasticity = outcome === 0 || row.value === 0 ? Number.NaN : (slope * row.value) / outcome;
    return { slope, elasticity, overRange: slope * (row.high - row.low) };
  });
}
