import { allSeries, compileModel, createParameters, readScenario, simulate } from '@leat/core';

/** Values of every series of a run, by name. */
export type EverySeries = Readonly<Record<string, readonly number[]>>;

/** The run of a scenario's text: read, compiled, simulated. */
export function everySeries(text: string): EverySeries {
  const scenario = readScenario(text, { file: 'scenario.yaml' });
  const run = simulate(compileModel(scenario, createParameters(scenario.overrides)));
  return Object.fromEntries(allSeries(run).map(({ name, values }) => [name, Array.from(values)]));
}
