import { InputError } from '../../errors.js';
import type { OpenScenario } from '../../scenario/read-scenario.js';
import { openSampling, type Sampling } from '../draws/sampling.js';
import { openRuns } from '../open-runs.js';
import { basisOf, type Basis, type Questions } from './basis.js';
import { memberOf, type MemberOutcome } from './member.js';
import { ensembleResult, type EnsembleResult } from './result.js';
import { openTally } from './tally.js';

/**
 * Runs members of an ensemble by their number, 0 to N - 1, each on its own. Throws InputError for a sampling that cannot
 * be.
 * @param open the system, read
 * @param basis what is drawn and what is asked of each member, as `basisOf` gives it
 * @param sampling how members are drawn
 * @param options relative `tolerance` of the integration (default as for `simulate`), and `room`, which gives the array
 *   for so many numbers of the series of a member (default: a new one each)
 */
export function openMembers(
  open: OpenScenario,
  { rows, measures, conditions }: Pick<Basis, 'rows' | 'measures' | 'conditions'>,
  sampling: Sampling,
  { room, ...options }: { readonly tolerance?: number; readonly room?: (size: number) => Float64Array } = {},
): (member: number) => MemberOutcome {
  const runAt = openRuns(open, rows, { ...options, reuse: true });
  const draw = openSampling(
    sampling,
    rows.map(({ id }) => id),
  );
  return (member) => {
    try {
      return memberOf(runAt(draw(member)), measures, conditions, room);
    } catch (error) {
      if (error instanceof InputError) return { kind: 'failed', reason: error.message };
      throw error;
    }
  };
}

/**
 * An ensemble run in one go: members drawn from the ranges of every number that the system uses, bands of
 * every series, the odds of passing each limit, and what was asked. A member whose run breaks off is
 * counted and named, and in no band. `tolerance` is the relative one of the integration.
 * Throws InputError for a sampling or questions that cannot be.
 */
export function ensembleOf(
  open: OpenScenario,
  sampling: Sampling,
  questions: Questions = { measures: [], conditions: [] },
  options: { readonly tolerance?: number } = {},
): EnsembleResult {
  const basis = basisOf(open, questions, options);
  const run = openMembers(open, basis, sampling, options);
  const tally = openTally(basis, sampling.members);
  for (let member = 0; member < sampling.members; member++) tally.add(member, run(member));
  return ensembleResult(basis, sampling, tally);
}
