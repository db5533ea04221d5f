import { openMembers, type MemberOutcome, type Questions, type Sampling, type TableRow } from '@leat/core';
import type { Job } from '../../workers/job.js';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';
import { askedOf } from '../shared/outline-job.js';

/** What all members of an ensemble share. */
export interface MemberShared {
  readonly texts: ReferencedFiles;
  /** What is drawn, by the outline. */
  readonly rows: readonly TableRow[];
  readonly sampling: Sampling;
  readonly questions: Questions;
  readonly tolerance?: number;
}

/**
 * Two arrays in memory that threads share, by turns. A worker is given its next member before its last one is taken in, and
 * its one after that only then: the array of the last but one is free.
 */
function byTurns(): (size: number) => Float64Array {
  const arrays: (Float64Array | undefined)[] = [];
  let turn = 0;
  return (size) => {
    turn = 1 - turn;
    const kept = arrays[turn];
    if (kept?.length === size) return kept;
    return (arrays[turn] = new Float64Array(new SharedArrayBuffer(size * Float64Array.BYTES_PER_ELEMENT)));
  };
}

/** Runs members of an ensemble by their number. The series of an outcome hold until the worker has been given two more. */
export const job: Job<MemberShared, number, MemberOutcome> = {
  module: import.meta.url,
  open({ texts, rows, sampling, questions, tolerance }) {
    const options = tolerance === undefined ? {} : { tolerance };
    const opened = openTexts(texts);
    let onDay = (): void => undefined;
    const member = openMembers(opened, { rows, ...askedOf(opened, questions) }, sampling, {
      ...options,
      ...{ allocate: byTurns(), onDay: () => onDay() },
    });
    return {
      run: (input, alive) => {
        onDay = alive;
        return member(input);
      },
    };
  },
};
