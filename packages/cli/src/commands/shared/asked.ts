import {
  compileModel,
  conditionOf,
  createParameters,
  measureOf,
  type Basis,
  type OpenScenario,
  type Questions,
} from '@leat/core';

/** What is asked of every run, for a system whose outline is known: its rows were checked, its questions read, there. */
export function askedOf(
  { reading: { scenario } }: OpenScenario,
  questions: Questions,
): Pick<Basis, 'measures' | 'conditions'> {
  const model = compileModel(scenario, createParameters(scenario.overrides), { closureDraws: 0 });
  return {
    measures: questions.measures.map((text) => measureOf(text, model)),
    conditions: questions.conditions.map((text) => conditionOf(text, model)),
  };
}
