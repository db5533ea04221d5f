import {
  basisOf,
  conditionOf,
  measureOf,
  openModel,
  outlineOf,
  type Basis,
  type ExtendedScenario,
  type Outline,
  type Questions,
  type ScenarioReading,
} from '@leat/core';
import type { Job } from '../../workers/job.js';
import { keySeries } from '@leat/view/documents';
import { openTexts, type ReferencedFiles } from '@leat/core/tasks';

/** What draws are made around, in plain data. */
export interface OutlineAnswer {
  readonly outline: Outline;
  /** Names of the series that say most. */
  readonly keys: readonly string[];
  /** What was assumed, what is unusual, and whether the run with the numbers as they stand breaks off. */
  readonly notes: readonly string[];
  /** How the file wants results told. */
  readonly display?: NonNullable<ScenarioReading['display']>;
}

/**
 * Runs a system once with the numbers as they stand. In a worker, so that the command stays small and can be
 * stopped. The input is the questions.
 */
export const job: Job<
  { readonly texts: ReferencedFiles; readonly tolerance?: number },
  Questions,
  OutlineAnswer
> = {
  module: import.meta.url,
  open({ texts, tolerance }) {
    const opened = openTexts(texts);
    return {
      run: (questions) => {
        const where = { measures: '--of', conditions: '--keep' };
        const basis = basisOf(opened, questions, { where, ...(tolerance !== undefined && { tolerance }) });
        const { outcome } = basis.run;
        const broken =
          outcome.kind === 'done'
            ? []
            : [`the run with the numbers as they stand breaks off on day ${outcome.time}: ${outcome.kind}`];
        const notes = [...basis.notes, ...broken];
        const { display } = opened.reading;
        const outline = { outline: outlineOf(basis), keys: keySeries(basis.run), notes };
        return display === undefined ? outline : { ...outline, display };
      },
    };
  },
};

/** What is asked of every run, for a system whose outline is known: its rows were checked, its questions read, there. */
export function askedOf(
  { reading }: ExtendedScenario,
  questions: Questions,
): Pick<Basis, 'measures' | 'conditions'> {
  const { model } = openModel(reading, { closureDraws: 0 });
  return {
    measures: questions.measures.map((text) => measureOf(text, model)),
    conditions: questions.conditions.map((text) => conditionOf(text, model)),
  };
}
