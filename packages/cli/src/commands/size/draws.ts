import {
  contentHash,
  InputError,
  sizeSpread,
  valueInUnit,
  type SizeAnswer,
  type SizeMember,
  type SizeSpread,
} from '@leat/core';
import { valueText } from '@leat/view/text';
import { withFitted } from '../shared/correlations.js';
import { job, type SizeShared } from './job.js';
import type { ExitCode } from '../../terminal/exit.js';
import { noteReplaced } from '../../workers/pool.js';
import { runWithCheckpoint } from '../../workers/run-with-checkpoint.js';
import { openCheckpoint, type Checkpoint, keptNote, plainName } from '../../files/checkpoint.js';
import type { KeptOptions, Output } from '../../files/outputs.js';
import { InterruptedError, interruptible } from '../../workers/interruptible.js';
import type { Streams } from '../../terminal/streams.js';
import { withoutCode } from '../../files/extension.js';
import { linesText } from '../../terminal/columns.js';

/** Options of the draws of a size. */
export interface DrawsOptions extends KeptOptions {
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

const isSize = (value: unknown): value is SizeMember =>
  typeof value === 'object' && value !== null && 'kind' in value && 'binding' in value && 'broke' in value;

/** The part of the checkpoint that holds the draws. */
const part = 'draws';

function openDraws(
  whole: SizeShared,
  resume: string | undefined,
  kept: Output | undefined,
): Checkpoint<SizeMember> {
  const shared = withoutCode(whole);
  const { varied, want, within, keep, chosen, sampling } = shared;
  const asked = {
    system: `${shared.texts.file} ${contentHash(shared.texts).slice(0, 8)}`,
    '--vary': varied.path,
    range: `${valueText(varied, varied.from)} to ${valueText(varied, varied.to)}`,
    wanted: `${want} within ${within}`,
    '--keep': keep.join('; '),
    '--chosen': chosen === undefined ? '' : valueText(varied, chosen),
    '--members': String(sampling.members),
    '--seed': String(sampling.seed),
  };
  return openCheckpoint({ command: 'size', asked, from: shared, isOutput: isSize }, { kept, resume });
}

/**
 * Finds the size that each draw needs, on the workers. Where the work is stopped, the draws that were done are
 * told, with which code to leave, and kept so that another call can go on.
 */
export async function sizeDraws(
  search: Pick<SizeShared, 'texts' | 'varied' | 'want' | 'within' | 'keep'>,
  answer: SizeAnswer,
  options: DrawsOptions,
  kept: Output | undefined,
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
  const checkpoint = openDraws(shared, options.resume, kept);
  const draws = Array.from({ length: members }, (_, member) => member);
  let stopped: ExitCode | undefined;
  try {
    await interruptible((signal) =>
      runWithCheckpoint(
        job,
        shared,
        draws,
        checkpoint,
        { part, shown: part },
        { signal, ...(workers && { workers }), ...noteReplaced(streams) },
      ),
    );
    checkpoint.finish();
  } catch (error) {
    const path = checkpoint.stop(plainName(search.texts.file));
    if (path !== undefined) streams.note(keptNote(`${checkpoint.size()} of ${members} draws`, path));
    if (!(error instanceof InterruptedError)) throw error;
    stopped = error.code;
    streams.note(linesText([`stopped: ${checkpoint.size()} of ${members} draws are told`]));
  }
  const ending = stopped === undefined ? {} : { stopped };
  if (checkpoint.size() === 0) return ending;
  const inOrder = draws.flatMap((member) => checkpoint.get(part, member) ?? []);
  const drawn = {
    spread: sizeSpread(inOrder, search.want, search.keep.length),
    ...{ asked: members, seed },
    ...(chosen === undefined ? {} : { chosen }),
  };
  return { drawn, ...ending };
}
