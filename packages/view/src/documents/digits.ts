import type { Run, Series } from '@leat/core';
import { decadeOf } from '../text/index.js';

/** Digits kept beyond those of the tolerance, so that rounding adds nothing to its error. */
const MORE = 2;

/** Series of a run to the digits that mean something: two more than its tolerance has. */
export function meaningful<Of extends Pick<Series, 'values'>>(
  { tolerance }: Pick<Run, 'tolerance'>,
  series: readonly Of[],
): readonly Of[] {
  const figures = Math.min(17, MORE - decadeOf(tolerance));
  const rounded = (value: number): number =>
    Number.isFinite(value) ? Number(value.toPrecision(figures)) : value;
  return series.map((each) => ({ ...each, values: each.values.map(rounded) }));
}
