import {
  adviceOutcome,
  basisOf,
  conditionOf,
  InputError,
  noTrial,
  openModel,
  openRuns,
  openSampling,
  planAim,
  planQuantity,
  planTrial,
  planValue,
  simulate,
  usualQuantities,
  withRation,
  type AdviceOutcome,
  type PlainFile,
  type PlanQuantity,
  type PlanTrial,
  type Run,
  type Scenario,
} from '@leat/core';
import type { Job } from '../../workers/job.js';
import { openChanged } from '../shared/changed-file.js';
import { openTexts, type ReferencedFiles } from '../shared/referenced-files.js';

/** What all trials of a plan share. */
export interface PlanShared {
  readonly texts: ReferencedFiles;
  /** Each `NAME=FROM:TO`; none: the usual ones. */
  readonly vary: readonly string[];
  readonly aim: string;
  readonly keep: readonly string[];
  /** Cap of the water, such as `160 L/d`; absent: those of the file. */
  readonly ration?: string;
  readonly members: number;
  readonly seed: number;
}

/** What is to be run: a choice of all quantities, or the choice with the numbers of a draw. */
export interface PlanInput {
  readonly at: readonly number[];
  readonly member?: number;
}

/** What a choice came to: its trial, and what it gives; absent where it makes no system. */
export interface PlanOutput extends PlanTrial {
  readonly outcome?: AdviceOutcome;
}

/** What is planned, and the file that a choice makes. */
export interface OpenPlan {
  readonly scenario: Scenario;
  readonly quantities: readonly PlanQuantity[];
  /** What the file says with a choice. Throws InputError where it makes no system. */
  fileOf(at: readonly number[]): PlainFile;
  /** The texts of that. */
  textsOf(at: readonly number[]): ReferencedFiles;
}

/** Opens a plan: reads the file once. Throws InputError with the faults of what is varied. */
export function openPlan({ texts, vary, ration }: PlanShared): OpenPlan {
  const { scenario, resolved } = openTexts(texts).reading;
  const file = ration === undefined ? resolved.plain : withRation(resolved.plain, ration);
  const quantities =
    vary.length === 0 ? usualQuantities(scenario) : vary.map((text) => planQuantity(text, scenario, file));
  const changed = openChanged(texts);
  const fileOf = (at: readonly number[]): PlainFile =>
    quantities.reduce((so, quantity, i) => quantity.apply(so, planValue(quantity, at[i])), file);
  return { scenario, quantities, fileOf, textsOf: (at) => changed(fileOf(at)) };
}

/** Runs a choice, or a draw of it. */
export const job: Job<PlanShared, PlanInput, PlanOutput> = {
  module: import.meta.url,
  open(shared) {
    const plan = openPlan(shared);
    const judged = (at: readonly number[], run: Run): PlanOutput => {
      const conditions = shared.keep.map((text) => conditionOf(text, run.model, '--keep'));
      const outcome = adviceOutcome(run, conditions);
      return { ...planTrial(at, run, outcome, planAim(shared.aim, run.model)), outcome };
    };
    let draw: ((member: number) => Run) | undefined;
    const openDraw = (at: readonly number[]): ((member: number) => Run) => {
      const opened = openTexts(plan.textsOf(at));
      const { rows } = basisOf(opened, { measures: [], conditions: shared.keep });
      const { members, seed } = shared;
      const sampling = openSampling(
        { method: 'latin-hypercube', members, seed },
        rows.map(({ id }) => id),
      );
      const runAt = openRuns(opened, rows);
      return (member) => runAt(sampling(member));
    };
    return {
      run({ at, member }) {
        try {
          if (member !== undefined) return judged(at, (draw ??= openDraw(at))(member));
          const { model } = openModel(openTexts(plan.textsOf(at)).reading, { closureDraws: 0 });
          return judged(at, simulate(model));
        } catch (error) {
          if (!(error instanceof InputError)) throw error;
          return noTrial(at);
        }
      },
    };
  },
};
