import { quantileSorted } from 'd3-array';
import { InputError } from '../../base/faults.js';
import type { OpenScenario } from '../../scenario/read-scenario.js';
import { basisOf } from '../uncertainty/members.js';
import { openRuns } from '../uncertainty/open-runs.js';
import { type Bands, bandsOf } from '../uncertainty/quantiles.js';
import { openSampling, type Sampling } from '../uncertainty/sampling.js';
import { findSize, type SizeAnswer, type SizeSearch } from './size.js';
import { judgeRun, type Trial } from './trial.js';

/** A search for a size that is repeated for draws of the uncertain numbers. */
export interface SizeDraws extends Omit<SizeSearch, 'judge'> {
  /** Opens the system with one value. */
  readonly open: (value: number) => OpenScenario;
  /** Conditions as text: see `conditionOf`. */
  readonly keep: readonly string[];
  readonly sampling: Sampling;
  /** Value at which the numbers that are used, and so drawn, are found out. */
  readonly about: number;
  /** A size that is judged in each draw as well. */
  readonly chosen?: number;
}

/** The size that one draw needs, `value` in the unit of what is varied. Plain data. */
export interface SizeMember {
  readonly kind: SizeAnswer['kind'];
  readonly value?: number;
  /** Places of the conditions that bind. */
  readonly binding: readonly number[];
  /** Whether the chosen size keeps every condition. */
  readonly survives?: boolean;
  /** Trials that broke off, with why. */
  readonly broke: readonly { readonly value: number; readonly reason: string }[];
}

/**
 * Opens the search for draws: the size of a member by its number. Each draw keeps its numbers at every value.
 * Throws InputError for a sampling or conditions that cannot be.
 */
export function openSizeMembers(draws: SizeDraws): (member: number) => SizeMember {
  const { open, keep, sampling, about, chosen, ...search } = draws;
  const { rows, conditions } = basisOf(open(about), { measures: [], conditions: keep });
  const draw = openSampling(
    sampling,
    rows.map(({ id }) => id),
  );
  return (member) => {
    const u = draw(member);
    const judge = (value: number): Trial => {
      try {
        return judgeRun(openRuns(open(value), rows)(u), value, conditions);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        const margins = conditions.map(() => Number.NaN);
        return { value, holds: false, margins, broke: error.message.replaceAll('\n', '; ') };
      }
    };
    const { kind, value, binding, trials } = findSize({ ...search, judge });
    const known = trials.find((trial) => trial.value === chosen);
    const survives = chosen === undefined ? undefined : (known ?? judge(chosen)).holds;
    return {
      kind,
      ...(value === undefined ? {} : { value }),
      binding,
      ...(survives === undefined ? {} : { survives }),
      broke: trials.flatMap((trial) =>
        trial.broke === undefined ? [] : [{ value: trial.value, reason: trial.broke }],
      ),
    };
  };
}

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
  /** Draws in which the chosen size keeps every condition; absent where none was chosen. */
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
  const anyChosen = outcomes.some(({ survives }) => survives !== undefined);
  return {
    members: outcomes.length,
    ...bandsOf((p) => quantile(sorted, p)),
    beyond: count(({ kind }) => kind === 'holds-nowhere'),
    atEnd: count(({ kind }) => kind === 'holds-everywhere' || kind === 'at-the-end'),
    notMonotone: count(({ kind }) => kind === 'not-monotone'),
    broke: count(({ broke }) => broke.length > 0),
    ...(anyChosen ? { survive: count(({ survives }) => survives === true) } : {}),
    binds: Array.from({ length: conditions }, (_, i) => count(({ binding }) => binding.includes(i))),
  };
}
