import { openSampling, openAccumulator, type Sampling, type SavedFit, type Accumulator } from '@leat/core';
import type { Display } from '@leat/view/text';
import { differencesOf, ensembleId, type EnsemblePart } from '../../files/ensemble-part.js';
import { correlationsOf, withFitted } from '../shared/correlations.js';
import { readPart, writePart } from '../../files/ensemble-part.js';
import { checkpointName, keptNote, openSaver, plainName } from '../../files/checkpoint.js';
import { printEnsemble } from './print.js';
import { type KeptOptions, openKept, type Output, unusedOutput } from '../../files/outputs.js';
import type { ExitCode } from '../../terminal/exit.js';
import { FileError } from '../../files/read.js';
import { job as outlineJob } from '../shared/outline-job.js';
import { job, type MemberShared } from './job.js';
import type { ScenarioOptions } from '../shared/referenced-files.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import { type ReferencedFiles } from '@leat/core/tasks';
import { readTexts } from '../shared/referenced-files.js';
import { InterruptedError, interruptible } from '../../workers/interruptible.js';
import { eachJob, noteReplaced, runOnEach } from '../../workers/pool.js';
import { openRunsProgress } from '../../terminal/progress.js';
import type { Streams } from '../../terminal/streams.js';
import { linesText } from '../../terminal/columns.js';

/** One part of n of the members of an ensemble: every n-th, so that each part sees all of the range. */
export interface Shard {
  /** 1 to `of`. */
  readonly part: number;
  readonly of: number;
}

/** What `leat ensemble` was asked. */
export interface EnsembleOptions extends ScenarioOptions, KeptOptions, Pick<DisplayOptions, 'units'> {
  readonly json?: boolean;
  readonly members: number;
  readonly seed: number;
  readonly sampling: Sampling['method'];
  readonly correlate: readonly string[];
  readonly of: readonly string[];
  readonly keep: readonly string[];
  readonly tolerance?: number;
  readonly workers?: number;
  readonly shard?: Shard;
}

/** An ensemble under way. */
interface Work {
  readonly display: Display;
  readonly accumulator: Accumulator;
  /** The part so far. */
  readonly part: () => EnsemblePart;
  readonly shared: MemberShared;
  /** Members still to be run. */
  readonly todo: readonly number[];
}

function samplingOf(options: EnsembleOptions, fit: SavedFit | undefined): Sampling {
  const correlations = withFitted(correlationsOf(options.correlate), fit);
  const { sampling: method, members, seed } = options;
  return { method, members, seed, ...(correlations.length > 0 && { correlations }) };
}

/** Puts what an earlier call kept into the tally. Throws FileError where that was another ensemble. */
function resume(path: string, accumulator: Accumulator, now: EnsemblePart): void {
  const before = readPart(path);
  if (ensembleId(before) !== ensembleId(now)) {
    const differences = differencesOf(before, now).map((line) => `  ${line}`);
    throw new FileError([`${path}: of another ensemble (kept / asked):`, ...differences]);
  }
  accumulator.merge(before.accumulated);
}

async function openWork(texts: ReferencedFiles, options: EnsembleOptions, streams: Streams): Promise<Work> {
  const sampling = samplingOf(options, texts.fitted?.fit);
  const questions = { measures: options.of, conditions: options.keep };
  const simulation = options.tolerance === undefined ? {} : { tolerance: options.tolerance };
  // Before the first run: what --units cannot be is told now.
  displayInUnits(options);
  const { workers, members } = options;
  const { outline, keys, notes, display } = await runOnEach(
    outlineJob,
    { texts, ...simulation },
    questions,
    members,
    workers === undefined ? {} : { workers },
  );
  openSampling(
    sampling,
    outline.rows.map(({ id }) => id),
  );
  streams.note(linesText(notes));
  const accumulator = openAccumulator(outline, sampling.members);
  const part = (): EnsemblePart => ({ outline, keys, sampling, accumulated: accumulator.state() });
  if (options.resume !== undefined) resume(options.resume, accumulator, part());
  const { shard = { part: 1, of: 1 } } = options;
  const todo = Array.from({ length: sampling.members }, (_, member) => member).filter(
    (member) => member % shard.of === shard.part - 1 && !accumulator.has(member),
  );
  return {
    display: displayInUnits(options, display),
    accumulator,
    part,
    shared: { texts, rows: outline.rows, sampling, questions, ...simulation },
    todo,
  };
}

/**
 * `leat ensemble FILE`: draws the numbers that the system uses from their ranges, runs every member on the
 * workers and tells bands and odds. What is done is kept in `--out` now and then; Ctrl-C, or a fault,
 * keeps it too and says how to go on.
 */
export async function ensembleCommand(
  file: string,
  options: EnsembleOptions,
  streams: Streams,
): Promise<ExitCode> {
  const texts = readTexts(file, options);
  const { kept, csv } = openKept(options, 'ensemble');
  const { display, accumulator, part, shared, todo } = await openWork(texts, options, streams);
  const { workers, members, json = false } = options;
  const keep = (to: Output): void => {
    writePart(to, part());
  };
  const saver = openSaver(() => {
    if (kept !== undefined) keep(kept);
  });
  const progress = await openRunsProgress('members', members, accumulator.size());
  try {
    await interruptible((signal) =>
      eachJob(
        job,
        shared,
        todo,
        (index, outcome) => {
          accumulator.add(todo[index], outcome);
          progress.day(accumulator.size());
          saver.maybe();
        },
        { signal, ...(workers === undefined ? {} : { workers }), ...noteReplaced(streams) },
      ),
    );
  } catch (error) {
    progress.end();
    const to = kept ?? unusedOutput(checkpointName(plainName(file), ensembleId(part()), 'ensemble'));
    keep(to);
    streams.note(keptNote(`${accumulator.size()} of ${members} members`, to.path));
    if (error instanceof InterruptedError) return error.code;
    throw error;
  }
  progress.end();
  if (kept !== undefined) keep(kept);
  if (options.shard !== undefined)
    streams.note(
      linesText([
        `shard ${options.shard.part}/${options.shard.of}: ${accumulator.size()} of ${members} members are in ${kept?.path ?? ''}; leat merge joins the shards`,
      ]),
    );
  return printEnsemble(part(), accumulator, { display, json, csv }, streams);
}
