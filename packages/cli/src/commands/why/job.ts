import { openModel, simulate, valueOn } from '@leat/core';
import type { Job } from '../../workers/job.js';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';

/** What the runs of all sets of changes share. */
export interface ChangesShared {
  /** The first file, with what both name beside them. */
  readonly texts: ReferencedFiles;
  readonly of: string;
  /** d. */
  readonly day: number;
}

/** What a quantity was on the day with one set of changes made, or why there is none. */
export type ChangesAnswer = { readonly value: number } | { readonly broke: string };

/** The texts of a file with another text in its place: `--set` stands in it already. */
export const withText = (texts: ReferencedFiles, text: string): ReferencedFiles => ({
  ...texts,
  text,
  options: { ...texts.options, set: [] },
});

/** Runs a file as it is with one set of changes made, given as its text. */
export const job: Job<ChangesShared, string, ChangesAnswer> = {
  module: import.meta.url,
  open: ({ texts, of, day }) => ({
    run(text) {
      const { model } = openModel(openTexts(withText(texts, text)).reading, { closureDraws: 0 });
      const run = simulate(model);
      const { kind, time } = run.outcome;
      if (kind !== 'done' && time < day) return { broke: `${kind} on day ${time}` };
      return { value: valueOn(of, { run, day }).value };
    },
  }),
};
