import {
  conditionOf,
  InputError,
  measureOf,
  openModel,
  simulate,
  sweepPoint,
  type SweepPoint,
} from '@leat/core';
import type { Job } from '../../workers/job.js';
import type { ReferencedFiles } from '@leat/core/tasks';
import { openAt, type Varied } from '@leat/core/tasks';

/** What all points of a sweep share. */
export interface SweepShared {
  readonly texts: ReferencedFiles;
  readonly varied: readonly Varied[];
  readonly of: readonly string[];
  readonly keep: readonly string[];
}

/** Runs the point of a sweep at its values, one for each quantity that is varied. */
export const job: Job<SweepShared, readonly number[], SweepPoint> = {
  module: import.meta.url,
  open: ({ texts, varied, of, keep }) => ({
    run(values, alive) {
      try {
        const { reading } = openAt(
          texts,
          varied.map((each, i) => ({ varied: each, value: values[i] })),
        );
        const { model } = openModel(reading, { closureDraws: 0 });
        const measures = of.map((text) => measureOf(text, model, '--of'));
        const conditions = keep.map((text) => conditionOf(text, model, '--keep'));
        return sweepPoint(simulate(model, { onDay: alive }), measures, conditions);
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        const none = Number.NaN;
        return {
          measures: of.map(() => none),
          margins: keep.map(() => none),
          holds: false,
          broke: error.message.replaceAll('\n', '; '),
        };
      }
    },
  }),
};
