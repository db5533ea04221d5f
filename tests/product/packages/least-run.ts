import {
  compileModel,
  compileUnchecked,
  createParameters,
  seriesOf,
  simulate,
  type Scenario,
} from '@leat/core';

/** The least that a program needs which holds systems that were checked before: a run, and one of its series. */
export function leastRun(scenario: Scenario, series: string): readonly number[] {
  return Array.from(seriesOf(simulate(compileUnchecked(scenario)), series).values);
}

/** The same of systems that nobody has checked, which it then does itself. */
export function checkedRun(scenario: Scenario, series: string): readonly number[] {
  const run = simulate(compileModel(scenario, createParameters(scenario.overrides)));
  return Array.from(seriesOf(run, series).values);
}
