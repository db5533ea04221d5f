import { compileModel, createParameters, seriesOf, simulate, type Scenario } from '@leat/core';

/** The least that a program needs which builds its systems itself: a run, and one of its series. */
export function leastRun(scenario: Scenario, series: string): readonly number[] {
  const run = simulate(compileModel(scenario, createParameters(scenario.overrides)));
  return Array.from(seriesOf(run, series).values);
}
