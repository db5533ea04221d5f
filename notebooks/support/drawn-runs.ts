import {
  basisOf,
  type EnsembleResult,
  ensembleResult,
  openAccumulator,
  openMembers,
  openScenarioText,
  type Sampling,
} from '@leat/core';

/** An ensemble as far as it has come. */
export interface DrawnRuns {
  /** How many members have run. */
  readonly done: () => number;
  readonly result: () => EnsembleResult;
  /** The asked number of each member that has one. */
  readonly answers: () => readonly number[];
  /** Runs all that are left, a few at a time, so that the page stays awake. */
  readonly finish: (told: (done: number) => void) => Promise<void>;
}

/** Runs at a time. */
const AT_A_TIME = 4;

/**
 * Opens an ensemble that runs when it is asked to.
 * @param measure one number of a run in words, such as `highest tan@tank`
 */
export function drawnRuns(text: string, sampling: Sampling, measure: string): DrawnRuns {
  const open = openScenarioText(text, { file: 'lesson.yaml' });
  const basis = basisOf(open, { measures: [measure], conditions: [] });
  const run = openMembers(open, basis, sampling);
  const accumulator = openAccumulator(basis, sampling.members);
  const answers: number[] = [];
  let member = 0;
  let finished: Promise<void> | undefined;
  const some = (): void => {
    for (let i = 0; i < AT_A_TIME && member < sampling.members; i += 1, member += 1) {
      const outcome = run(member);
      accumulator.add(member, outcome);
      if (outcome.kind === 'done' && !Number.isNaN(outcome.measures[0].value))
        answers.push(outcome.measures[0].value);
    }
  };
  const finish = async (told: (done: number) => void): Promise<void> => {
    while (member < sampling.members) {
      some();
      told(member);
      await new Promise((resolve) => {
        setTimeout(resolve);
      });
    }
  };
  return {
    done: () => member,
    result: () => ensembleResult(basis, sampling, accumulator),
    answers: () => answers,
    finish: (told) => (finished ??= finish(told)),
  };
}
