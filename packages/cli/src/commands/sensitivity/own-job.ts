import { InputError, measureOf, NoAnswerError, openModel, simulate, type Answer } from '@leat/core';
import type { Job } from '../../workers/job.js';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';

/** What the runs of a user's own numbers share. */
export interface OwnShared {
  readonly texts: ReferencedFiles;
  readonly measure: string;
}

/** The measure with one value in place of what the file says, as `path=value`; empty: as it stands. */
export const job: Job<OwnShared, string, Answer> = {
  module: import.meta.url,
  open: ({ texts, measure }) => ({
    run(setting) {
      try {
        const { options } = texts;
        const set = setting === '' ? options.set : [...options.set, setting];
        const { model } = openModel(openTexts({ ...texts, options: { ...options, set } }).reading, {
          closureDraws: 0,
        });
        return { value: measureOf(measure, model, '--of').of(simulate(model)) };
      } catch (error) {
        if (error instanceof NoAnswerError || error instanceof InputError)
          return { value: Number.NaN, reason: error.message };
        throw error;
      }
    },
  }),
};
