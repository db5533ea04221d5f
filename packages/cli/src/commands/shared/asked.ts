import { conditionOf, measureOf, openModel, type Basis, type OpenScenario, type Questions } from '@leat/core';

/** What is asked of every run, for a system whose outline is known: its rows were checked, its questions read, there. */
export function askedOf(
  { reading }: OpenScenario,
  questions: Questions,
): Pick<Basis, 'measures' | 'conditions'> {
  const { model } = openModel(reading, { closureDraws: 0 });
  return {
    measures: questions.measures.map((text) => measureOf(text, model)),
    conditions: questions.conditions.map((text) => conditionOf(text, model)),
  };
}
