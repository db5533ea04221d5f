import { apartness, why, type Comparison, type Difference, type Run } from '@leat/core';
import { quantityOf } from './words.js';

/** Quantities that `why` can split, of those a comparison lists. */
const splittable: ReadonlySet<string> = new Set([
  'tan',
  'nitrite',
  'nitrate',
  'alkalinity',
  'oxygen',
  'chloride',
  'volume',
  'fish-mass',
  'crop-mass',
]);

/** Most quantities that are explained for one pair of runs. */
const mostExplained = 4;

/** Difference below this share of a quantity's highest is not worth a reason. */
const least = 0.02;

/** The reasons for one difference, on the day on which it is largest. */
export interface Explained {
  readonly day: number;
  readonly difference: Difference;
}

/** Day on which two runs differ most in a quantity, of the days that both have. */
function widestDay(a: Run, b: Run, values: (run: Run) => ArrayLike<number>): number | undefined {
  const [first, second] = [values(a), values(b)];
  let found: number | undefined;
  let most = 0;
  a.samples.forEach(({ time }, i) => {
    const j = b.samples.findIndex((sample) => Math.abs(sample.time - time) <= 1e-9);
    const apart = j < 0 ? Number.NaN : Math.abs(second[j] - first[i]);
    if (apart > most) [most, found] = [apart, time];
  });
  return found;
}

/**
 * Why two runs differ: of the quantities that a comparison names, largest difference first, those that are a sum
 * of what processes and flows did, each on the day on which it differs most.
 * @param values values of a series of a run by its name; undefined where a run has none
 */
export function explain(
  [from, to]: readonly [Run, Run],
  comparison: Comparison,
  values: (run: Run, name: string) => ArrayLike<number> | undefined,
): readonly Explained[] {
  return [...comparison.quantities]
    .filter((quantity) => splittable.has(quantityOf(quantity.name)) && apartness(quantity) >= least)
    .filter(({ name }, i, all) => all.findIndex((each) => quantityOf(each.name) === quantityOf(name)) === i)
    .slice(0, mostExplained)
    .flatMap(({ name }) => {
      if (values(from, name) === undefined || values(to, name) === undefined) return [];
      const day = widestDay(from, to, (run) => values(run, name) ?? []);
      if (day === undefined) return [];
      const moments = [
        { run: from, day },
        { run: to, day },
      ] as const;
      return [{ day, difference: why(name, ...moments, { around: 'system' }) }];
    });
}
