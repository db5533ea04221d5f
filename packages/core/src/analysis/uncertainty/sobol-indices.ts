import { wholePower } from '../../base/elementary.js';
import { mean } from 'd3-array';
import { createRandom } from '../../base/random.js';
import { quantilesOf } from './quantiles.js';
import { openSampling } from './sampling.js';
import { moved } from './one-at-a-time.js';
import type { Points } from './one-at-a-time.js';

/**
 * A `value` with the interval, `low` to `high`, that holds it in 95 of 100 samplings, as far as the sample can tell.
 */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** What share of the variance of the outcome comes from one input. */
export interface SobolIndices {
  /** Alone: what would go if the input were known. */
  readonly first: Estimate;
  /** Alone and together with others: what would stay if all others were known. */
  readonly total: Estimate;
}

/** Sobol indices of every input, and of how many points they are made. */
export interface SobolAnswer {
  readonly indices: readonly SobolIndices[];
  /** Base points used: those of which every outcome could be worked out. */
  readonly used: number;
}

/**
 * The points of Saltelli's scheme: for each of N `basePoints`, one point of sample A, one of B, and A with
 * each input in turn from B: `inputs` + 2 points a base point, together. A and B are halves of one Sobol
 * sequence moved by `seed`. Throws InputError for a number of base points that cannot be, and more than 400 inputs.
 */
export function sobolDesign(inputs: number, basePoints: number, seed: number): Points {
  const ids = Array.from({ length: 2 * inputs }, (_, i) => `input ${i}`);
  const draw = openSampling({ method: 'sobol', members: basePoints, seed }, ids);
  return Array.from({ length: basePoints }, (_, j) => {
    const u = draw(j);
    const a = u.slice(0, inputs);
    const b = u.slice(inputs);
    const mixed = Array.from({ length: inputs }, (__, i) => moved(a, i, b[i]));
    return [a, b, ...mixed];
  }).flat();
}

interface Sums {
  readonly first: number;
  readonly total: number;
}

/** The estimators of one input over some base points. */
function indicesOver(rows: readonly ArrayLike<number>[], input: number): Sums {
  const all = rows.flatMap((row) => [row[0], row[1]]);
  const centre = mean(all) ?? Number.NaN;
  const variance = mean(all, (value) => wholePower(value - centre, 2)) ?? Number.NaN;
  const first = mean(rows, (row) => (row[1] - centre) * (row[input + 2] - row[0])) ?? Number.NaN;
  const total = mean(rows, (row) => wholePower(row[0] - row[input + 2], 2) / 2) ?? Number.NaN;
  return { first: first / variance, total: total / variance };
}

function estimate(value: number, resampled: readonly number[]): Estimate {
  const [low, high] = quantilesOf(resampled, [0.025, 0.975]);
  return { value, low, high };
}

/**
 * First and total Sobol indices from the outcomes at the points of `sobolDesign`: first by Saltelli et al.
 * (Computer Physics Communications 181, 2010, table 2 b), total by Jansen (same, table 2 f), intervals by
 * bootstrap over base points. A base point with a NaN among its outcomes is left out whole. An estimate
 * may lie a little outside 0..1; NaN where the outcome does not vary.
 * @param inputs how many, as given to `sobolDesign`
 * @param options `seed` and number of `resamples` (default 200) of the bootstrap
 */
export function sobolIndices(
  inputs: number,
  outcomes: ArrayLike<number>,
  options: { readonly seed: number; readonly resamples?: number },
): SobolAnswer {
  const width = inputs + 2;
  const rows = Array.from({ length: outcomes.length / width }, (_, j) =>
    Float64Array.from({ length: width }, (__, i) => outcomes[j * width + i]),
  ).filter((row) => !row.some(Number.isNaN));
  const random = createRandom(options.seed);
  const picks = Array.from({ length: options.resamples ?? 200 }, () =>
    rows.map(() => rows[Math.floor(random() * rows.length)]),
  );
  const indices = Array.from({ length: inputs }, (_, input): SobolIndices => {
    const { first, total } = indicesOver(rows, input);
    const again = picks.map((picked) => indicesOver(picked, input));
    return {
      first: estimate(
        first,
        again.map((each) => each.first),
      ),
      total: estimate(
        total,
        again.map((each) => each.total),
      ),
    };
  });
  return { indices, used: rows.length };
}
