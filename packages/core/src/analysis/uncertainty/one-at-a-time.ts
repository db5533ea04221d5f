import { log, wholePower } from '../../base/elementary.js';
import { deviation, mean } from 'd3-array';
import { deviate95, normalCdf } from '../../base/normal.js';
import { createRandom } from '../../base/random.js';
import type { RangedRow } from '../../library/table-row.js';

/** A point with one input put elsewhere. */
export function moved(point: Float64Array, input: number, to: number): Float64Array {
  const other = Float64Array.from(point);
  other[input] = to;
  return other;
}

/** Points at which to work out an outcome: uniform numbers (0..1), one for each input. */
export type Points = readonly Float64Array[];

/** How one input moved the outcome in a screening; in the unit of the outcome per whole range of the input. */
export interface ElementaryEffects {
  /** Mean of the sizes: how much the input matters. */
  readonly muStar: number;
  /** Mean with sign. */
  readonly mu: number;
  /** Standard deviation: how much that depends on the others, or on where. NaN for fewer than two. */
  readonly sigma: number;
  /** Effects that could be worked out. */
  readonly effects: number;
}

/** Levels of the grid, at the middles of four strata, so that no input is at the very end of its range. */
const levels = [1 / 8, 3 / 8, 5 / 8, 7 / 8];
const step = 1 / 2;

function shuffled(count: number, random: () => number): number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j], order[i]];
  }
  return order;
}

/**
 * Trajectories of M. D. Morris, "Factorial sampling plans for preliminary computational experiments",
 * Technometrics 33 (1991): from a random point of a grid of four levels, each input in turn, in a random
 * order, goes half its range up or down. Each of the `trajectories` takes `inputs` + 1 points, one after the other;
 * `seed` is that of their random places and orders.
 */
export function morrisDesign(inputs: number, trajectories: number, seed: number): Points {
  const random = createRandom(seed);
  return Array.from({ length: trajectories }, () => {
    const at = Float64Array.from({ length: inputs }, () => levels[Math.floor(random() * levels.length)]);
    const points = [Float64Array.from(at)];
    for (const input of shuffled(inputs, random)) {
      at[input] += at[input] < step ? step : -step;
      points.push(Float64Array.from(at));
    }
    return points;
  }).flat();
}

/**
 * Elementary effects from the outcomes at the points of a design (mu* after Campolongo, Cariboni and
 * Saltelli 2007). Outcomes that are NaN (a run that broke off) leave out the two effects they belong to.
 */
export function elementaryEffects(points: Points, outcomes: ArrayLike<number>): readonly ElementaryEffects[] {
  const inputs = points[0].length;
  const found = Array.from({ length: inputs }, (): number[] => []);
  for (let i = 1; i < points.length; i++) {
    if (i % (inputs + 1) === 0) continue;
    const input = points[i].findIndex((u, each) => u !== points[i - 1][each]);
    const effect = (outcomes[i] - outcomes[i - 1]) / (points[i][input] - points[i - 1][input]);
    if (!Number.isNaN(effect)) found[input].push(effect);
  }
  return found.map((effects) => ({
    muStar: mean(effects, Math.abs) ?? Number.NaN,
    mu: mean(effects) ?? Number.NaN,
    sigma: deviation(effects) ?? Number.NaN,
    effects: effects.length,
  }));
}

/**
 * Places of the inputs that matter in a screening: those that move the outcome by at least a `share` (0..1)
 * of what the strongest does, the strongest first, no more than so many (`most`); none where nothing moves it.
 */
export function fewOf(
  effects: readonly Pick<ElementaryEffects, 'muStar'>[],
  { share = 0.1, most = 8 }: { readonly share?: number; readonly most?: number } = {},
): readonly number[] {
  const order = effects
    .map(({ muStar }, input) => ({ muStar, input }))
    .filter(({ muStar }) => muStar > 0)
    .sort((a, b) => b.muStar - a.muStar);
  return order
    .filter(({ muStar }) => muStar >= share * order[0].muStar)
    .slice(0, most)
    .map(({ input }) => input);
}

/** What decides how the number of a row is drawn. */
export type Spread = Pick<RangedRow, 'value' | 'low' | 'high' | 'distribution'>;

function triangular({ value, low, high }: Spread, x: number): number {
  if (x <= low) return 0;
  if (x >= high) return 1;
  return x < value
    ? wholePower(x - low, 2) / ((high - low) * (value - low))
    : 1 - wholePower(high - x, 2) / ((high - low) * (high - value));
}

/**
 * Share (0..1) of the draws of a row that lie below `x`, in the unit of the row. A fixed row is taken as at its middle.
 */
export function shareBelow(row: Spread, x: number): number {
  const { value, low, high, distribution } = row;
  switch (distribution) {
    case 'fixed':
      return 0.5;
    case 'uniform':
      return Math.min(1, Math.max(0, (x - low) / (high - low)));
    case 'triangular':
      return triangular(row, x);
    case 'normal':
      return normalCdf(((x - value) / (x < value ? value - low : high - value)) * deviate95);
    case 'lognormal':
      return normalCdf((log(x / value) / log(x < value ? value / low : high / value)) * deviate95);
  }
}

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
function ends({ value, low, high }: RangedRow): readonly [number, number] {
  const step = move * (high - low);
  return [Math.max(low, value - step), Math.min(high, value + step)];
}

/** The uniform numbers at which each row has the value it has in the tables. */
export function middleOf(rows: readonly RangedRow[]): Float64Array {
  return Float64Array.from(rows, (row) => shareBelow(row, row.value));
}

/**
 * Central differences: for each of the `inputs` (places in `rows`) two points, a little below and above its value, all
 * else as it stands.
 */
export function localDesign(rows: readonly RangedRow[], inputs: readonly number[]): Points {
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
  rows: readonly RangedRow[],
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
