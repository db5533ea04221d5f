import {
  InputError,
  sizeSpread,
  valueInUnit,
  type SizeAnswer,
  type SizeMember,
  type SizeSpread,
} from '@leat/core';
import { withFitted } from '../ensemble/correlations.js';
import type { SizeShared } from '../jobs/size-job.js';
import type { ExitCode } from '../exit.js';
import { InterruptedError, interruptible } from '../pool/interruptible.js';
import { eachJob } from '../pool/run-jobs.js';
import { openRunsProgress } from '../progress.js';
import type { Streams } from '../streams.js';

/** Options of the draws of a size. */
export interface DrawsOptions {
  readonly members?: number;
  readonly seed: number;
  readonly chosen?: string;
  readonly workers?: number;
}

/** How a size spreads over draws. */
export interface SizeDrawn {
  readonly spread: SizeSpread;
  /** Draws asked for; fewer are in the spread where the work was stopped. */
  readonly asked: number;
  readonly seed: number;
  readonly chosen?: number;
}

/** What the draws came to; without `drawn` where none was done, with `stopped` where the work was ended before its end. */
export interface SizeDrawsResult {
  readonly drawn?: SizeDrawn;
  readonly stopped?: ExitCode;
}

/** The chosen size in the unit of the range; the answer where none was chosen. */
function chosenOf(text: string | undefined, unit: string, answer: SizeAnswer): number | undefined {
  if (text === undefined) return answer.value;
  const value = valueInUnit(text, unit, '--chosen');
  if (typeof value === 'number') return value;
  throw new InputError([value]);
}

/**
 * Finds the size that each draw needs, on the workers. Where the work is stopped, the draws that were done are
 * told, and with which code to leave.
 */
export async function sizeDraws(
  search: Pick<SizeShared, 'texts' | 'varied' | 'want' | 'within' | 'keep'>,
  answer: SizeAnswer,
  options: DrawsOptions,
  streams: Streams,
): Promise<SizeDrawsResult> {
  const { members = 1, seed, workers } = options;
  const chosen = chosenOf(options.chosen, search.varied.unit, answer);
  const correlations = withFitted([], search.texts.fitted?.fit);
  const shared: SizeShared = {
    ...search,
    sampling: {
      ...{ method: 'latin-hypercube', members, seed },
      ...(correlations.length === 0 ? {} : { correlations }),
    },
    about: answer.value ?? search.varied.to,
    ...(answer.kind === 'found' && answer.value !== undefined ? { near: answer.value } : {}),
    ...(chosen === undefined ? {} : { chosen }),
  };
  const outcomes = new Map<number, SizeMember>();
  const progress = await openRunsProgress('draws', members, 0);
  let stopped: ExitCode | undefined;
  try {
    await interruptible((signal) =>
      eachJob(
        'size',
        shared,
        Array.from({ length: members }, (_, member) => member),
        (member, outcome) => {
          outcomes.set(member, outcome);
          progress.day(outcomes.size);
        },
        { signal, ...(workers === undefined ? {} : { workers }) },
      ),
    );
  } catch (error) {
    if (!(error instanceof InterruptedError)) throw error;
    stopped = error.code;
    streams.note(`stopped: ${outcomes.size} of ${members} draws are told\n`);
  } finally {
    progress.end();
  }
  const ending = stopped === undefined ? {} : { stopped };
  if (outcomes.size === 0) return ending;
  const inOrder = [...outcomes].sort(([a], [b]) => a - b).map(([, outcome]) => outcome);
  const drawn = {
    spread: sizeSpread(inOrder, search.want, search.keep.length),
    ...{ asked: members, seed },
    ...(chosen === undefined ? {} : { chosen }),
  };
  return { drawn, ...ending };
}
