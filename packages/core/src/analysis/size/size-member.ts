import { InputError } from '../../errors.js';
import type { OpenScenario } from '../../scenario/read-scenario.js';
import { openSampling, type Sampling } from '../draws/sampling.js';
import { basisOf } from '../ensemble/basis.js';
import { openRuns } from '../open-runs.js';
import { findSize, type SizeAnswer, type SizeSearch } from './find-size.js';
import { judgeRun } from './judge-run.js';
import type { Trial } from './trial.js';

/** A search for a size that is repeated for draws of the uncertain numbers. */
export interface SizeDraws extends Omit<SizeSearch, 'judge'> {
  /** Opens the system with one value. */
  readonly open: (value: number) => OpenScenario;
  /** Conditions in words: see `conditionOf`. */
  readonly keep: readonly string[];
  readonly sampling: Sampling;
  /** Value at which the numbers that are used, and so drawn, are found out. */
  readonly about: number;
  /** A size whose fate in each draw is asked. */
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
        return { value, holds: false, margins, broke: error.message };
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
