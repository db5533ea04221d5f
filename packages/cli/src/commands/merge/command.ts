import { openAccumulator } from '@leat/core';
import { differencesOf, ensembleId, type EnsemblePart } from '../../files/ensemble-part.js';
import { readPart, writePart } from '../../files/ensemble-part.js';
import { displayInUnits, type DisplayOptions } from '../shared/display.js';
import { printEnsemble } from '../ensemble/print.js';
import { openOutputs } from '../../files/outputs.js';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { FileError } from '../../files/read.js';
import type { Streams } from '../../terminal/streams.js';
import { linesText } from '../../terminal/columns.js';

/** What `leat merge` was asked. */
export interface MergeOptions extends Pick<DisplayOptions, 'units'> {
  readonly json?: boolean;
  readonly csv?: string;
  readonly out?: string;
  readonly force?: boolean;
}

/**
 * `leat merge FILES`: joins the shards of one ensemble, one after the other, and tells the whole. Refuses
 * parts of different ensembles and members that two parts hold. Leaves with `notFinished` while members
 * are missing.
 */
export function mergeCommand(files: readonly string[], options: MergeOptions, streams: Streams): ExitCode {
  const kinds = { out: 'ensemble', csv: 'course' } as const;
  const { force, json = false } = options;
  const { out, csv } = openOutputs<'out' | 'csv'>(options, kinds, { force, inputs: files });
  const display = displayInUnits(options);
  const first = readPart(files[0]);
  const { outline, keys, sampling } = first;
  const accumulator = openAccumulator(outline, sampling.members);
  files.forEach((file, i) => {
    const part = i === 0 ? first : readPart(file);
    if (ensembleId(part) !== ensembleId(first)) {
      const differences = differencesOf(first, part).map((line) => `  ${line}`);
      throw new FileError([`${file}: of another ensemble than ${files[0]}:`, ...differences]);
    }
    const twice = part.accumulated.done.findIndex((done, member) => done === 1 && accumulator.has(member));
    if (twice >= 0) throw new FileError(`${file}: member ${twice} is in another of the files too`);
    accumulator.merge(part.accumulated);
  });
  const whole: EnsemblePart = { outline, keys, sampling, accumulated: accumulator.state() };
  if (out !== undefined) writePart(out, whole);
  const code = printEnsemble(whole, accumulator, { display, json, csv }, streams);
  const missing = sampling.members - accumulator.size();
  if (missing === 0) return code;
  streams.note(
    linesText([`not finished: ${missing} of ${sampling.members} members are in none of the files`]),
  );
  return exit.notFinished;
}
