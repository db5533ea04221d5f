import { basisOf, openMembers, type MemberOutcome, type Questions, type Sampling } from '@leat/core';
import type { Job } from '../pool/job.js';
import { openTexts, type ScenarioTexts } from '../scenario-texts.js';

/** What all members of an ensemble share. */
export interface MemberShared {
  readonly texts: ScenarioTexts;
  readonly sampling: Sampling;
  readonly questions: Questions;
  readonly tolerance?: number;
}

/** Runs members of an ensemble by their number. */
export const memberJob: Job<MemberShared, number, MemberOutcome> = {
  open({ texts, sampling, questions, tolerance }) {
    const options = tolerance === undefined ? {} : { tolerance };
    const opened = openTexts(texts);
    const run = openMembers(opened, basisOf(opened, questions, options), sampling, options);
    return {
      run,
      buffers: (outcome) => (outcome.kind === 'done' ? [outcome.series.buffer as ArrayBuffer] : []),
    };
  },
};
