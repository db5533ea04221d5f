import { InputError, NoAnswerError, openRuns, type Answer, type TableRow } from '@leat/core';
import type { Job } from '../../workers/job.js';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';
import { askedOf } from '../shared/outline-job.js';

/** What all points of a sensitivity share. */
export interface AnswerShared {
  readonly texts: ReferencedFiles;
  /** What is drawn, by the outline. */
  readonly rows: readonly TableRow[];
  /** The measure, in words. */
  readonly measure: string;
  readonly tolerance?: number;
}

/** The measure of a run at uniform numbers, one for each number that the system draws, in the order of the outline. */
export const job: Job<AnswerShared, Float64Array, Answer> = {
  module: import.meta.url,
  open({ texts, rows, measure, tolerance }) {
    const options = tolerance === undefined ? {} : { tolerance };
    const opened = openTexts(texts);
    const { measures } = askedOf(opened, { measures: [measure], conditions: [] });
    const runAt = openRuns(opened, rows, { ...options, reuse: true });
    return {
      run: (u) => {
        try {
          return { value: measures[0].of(runAt(u)) };
        } catch (error) {
          if (error instanceof NoAnswerError || error instanceof InputError)
            return { value: Number.NaN, reason: error.message };
          throw error;
        }
      },
    };
  },
};
