import type { RankCorrelation } from '../analysis/draws/correlate.js';
import { normalQuantile } from '../library/normal-quantile.js';
import type { Setting } from '../scenario/set-value.js';
import type { SavedFit } from './fit-file.js';
import { settingsOf } from './fitted-system.js';
import { valueAt, type Prior } from './prior.js';

const header = ['id', 'value', 'unit', 'low', 'high', 'distribution', 'conditions', 'source', 'page', 'mark'];

/** Deviates from the middle to the ends of a range that has the spread of a standard normal. */
const ends = {
  /** 5 % and 95 %, as the tables have it. */
  soft: normalQuantile(0.95),
  /** The ends of a triangle with standard deviation 1. */
  hard: Math.sqrt(6),
};

/** What the log left of the range of a number: value, low, high and how they are spread. */
function rangeLeft({ value, prior, deviate, deviation }: SavedFit['numbers'][number]): Prior {
  const soft = prior.distribution === 'normal' || prior.distribution === 'lognormal';
  const reach = deviation * (soft ? ends.soft : ends.hard);
  return {
    value,
    low: Math.min(value, valueAt(prior, deviate - reach)),
    high: Math.max(value, valueAt(prior, deviate + reach)),
    distribution: soft ? prior.distribution : 'triangular',
  };
}

/**
 * The numbers of a fit as a table of the user's own (tab-separated), with what the log left of their ranges: normal and
 * lognormal numbers span 90 %, others become triangles of the same spread, within the bounds they had. Start values and
 * paths of the file are not in it.
 */
export function fittedTable({ numbers, provenance }: SavedFit): string {
  const source = `fitted to the log of ${provenance.from} to ${provenance.until}`;
  const rows = numbers
    .filter(({ kind }) => kind === 'number')
    .map((number) => {
      const { value, low, high, distribution } = rangeLeft(number);
      return [number.name, value, number.unit, low, high, distribution, 'this system', source, '-', 'U'];
    });
  return [header, ...rows].map((cells) => `${cells.join('\t')}\n`).join('');
}

/**
 * A fit as settings: paths of the file, and those of its numbers (with their ranges) that the file gives anew under
 * `parameters`, where a table would not reach them.
 * @param given ids that the file gives anew
 */
export function fittedSettings({ numbers }: SavedFit, given: ReadonlySet<string>): readonly Setting[] {
  return numbers.flatMap((number) => {
    if (number.kind !== 'number') return settingsOf([number]);
    if (!given.has(number.name)) return [];
    const { value, low, high } = rangeLeft(number);
    return [{ path: `parameters.${number.name}`, value: `{ value: ${value}, low: ${low}, high: ${high} }` }];
  });
}

/**
 * How the numbers of a fit vary together, as rank correlations: 6/pi asin(r/2) of a correlation r between normals
 * (Pearson 1907) [M]. Of the numbers in `fittedTable` alone, and where both are drawn.
 */
export function fittedCorrelations({ numbers, covariance }: SavedFit): readonly RankCorrelation[] {
  return numbers.flatMap((a, i) =>
    numbers.slice(0, i).flatMap((b, j): RankCorrelation[] => {
      if (a.kind !== 'number' || b.kind !== 'number') return [];
      const r = covariance[i][j] / Math.sqrt(covariance[i][i] * covariance[j][j]);
      return [{ a: b.name, b: a.name, rank: (6 / Math.PI) * Math.asin(r / 2), whereDrawn: true }];
    }),
  );
}
