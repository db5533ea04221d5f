import { quantileSorted } from 'd3-array';
import { bandsOf, type Bands } from '../ensemble/summary-of.js';
import type { SizeMember } from './size-member.js';

/** The sizes that many draws (`members`) need, in the unit of what is varied. */
export interface SizeSpread extends Bands {
  readonly members: number;
  /** Draws that no value of the range serves: their size lies beyond it, and counts as infinite (largest: minus). */
  readonly beyond: number;
  /** Draws that the wanted end of the range serves: their size is that end, or would be a better one. */
  readonly atEnd: number;
  /** Draws whose conditions hold, fail and hold again; counted with the first size at which they hold. */
  readonly notMonotone: number;
  /** Draws with at least one run that broke off. */
  readonly broke: number;
  /** Draws in which the chosen size keeps every condition; absent where none was asked about. */
  readonly survive?: number;
  /** How often each condition binds. */
  readonly binds: readonly number[];
}

/** Straight lines between neighbours (d3-array); a neighbour beyond the range takes the whole step. */
function quantile(sorted: readonly number[], p: number): number {
  const place = p * (sorted.length - 1);
  const below = Math.floor(place);
  const pair = sorted.slice(below, below + 2);
  if (place === below) return pair[0];
  if (pair.every(Number.isFinite)) return quantileSorted(pair, place - below) ?? Number.NaN;
  return Number.isFinite(pair[0]) ? pair[1] : pair[0];
}

/**
 * Median and bands of the sizes of draws, and how many a chosen size survives.
 * @param outcomes one for each draw; at least one
 * @param want which end of the range is the wanted one
 * @param conditions how many there are
 */
export function sizeSpread(
  outcomes: readonly SizeMember[],
  want: 'smallest' | 'largest',
  conditions: number,
): SizeSpread {
  const none = want === 'smallest' ? Infinity : -Infinity;
  const sorted = outcomes.map(({ value = none }) => value).sort((a, b) => a - b);
  const count = (holds: (outcome: SizeMember) => boolean): number => outcomes.filter(holds).length;
  const asked = outcomes.some(({ survives }) => survives !== undefined);
  return {
    members: outcomes.length,
    ...bandsOf((p) => quantile(sorted, p)),
    beyond: count(({ kind }) => kind === 'holds-nowhere'),
    atEnd: count(({ kind }) => kind === 'holds-everywhere' || kind === 'at-the-end'),
    notMonotone: count(({ kind }) => kind === 'not-monotone'),
    broke: count(({ broke }) => broke.length > 0),
    ...(asked ? { survive: count(({ survives }) => survives === true) } : {}),
    binds: Array.from({ length: conditions }, (_, i) => count(({ binding }) => binding.includes(i))),
  };
}
