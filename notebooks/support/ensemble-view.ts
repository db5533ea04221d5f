import {
  basisOf,
  ensembleResult,
  openMembers,
  openScenarioText,
  openAccumulator,
  type EnsembleResult,
  type Sampling,
} from '@leat/core';
import { html } from './html.js';

/** An ensemble as far as it has come. */
export interface EnsembleSoFar {
  readonly result: EnsembleResult;
  /** The asked number of each member that has one. */
  readonly answers: readonly number[];
}

/** Runs shown at a time, so that the page stays awake. */
const AT_A_TIME = 4;

/**
 * Runs members of an ensemble one after another and shows how far it is; the value is what is known so far, null
 * before the first members.
 * @param measure one number of a run in words, such as `highest tan@tank`
 */
export function ensembleView(
  text: string,
  sampling: Sampling,
  measure: string,
): HTMLElement & { value: EnsembleSoFar | null } {
  const open = openScenarioText(text, { file: 'lesson.yaml' });
  const basis = basisOf(open, { measures: [measure], conditions: [] });
  const run = openMembers(open, basis, sampling);
  const accumulator = openAccumulator(basis, sampling.members);
  const answers: number[] = [];
  const element = Object.assign(html`<p class="small" role="status"></p>`, {
    value: null as EnsembleSoFar | null,
  });
  let member = 0;
  const step = (): void => {
    for (let i = 0; i < AT_A_TIME && member < sampling.members; i += 1, member += 1) {
      const outcome = run(member);
      accumulator.add(member, outcome);
      if (outcome.kind === 'done' && !Number.isNaN(outcome.measures[0].value))
        answers.push(outcome.measures[0].value);
    }
    element.value = { result: ensembleResult(basis, sampling, accumulator), answers: [...answers] };
    element.textContent = `${member} of ${sampling.members} runs`;
    element.dispatchEvent(new CustomEvent('input', { bubbles: true }));
    if (member < sampling.members) setTimeout(step);
  };
  setTimeout(step);
  return element;
}
