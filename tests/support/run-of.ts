import { createParameters } from '../../packages/core/src/library/parameters.js';
import { compileModel } from '../../packages/core/src/model/compile.js';
import { waterComponents, type WaterComponent } from '../../packages/core/src/processes/components.js';
import { waterState } from '../../packages/core/src/model/layout.js';
import type { Run, Sample } from '../../packages/core/src/run/run.js';
import type { ResumableRun } from '../../packages/core/src/run/run-state.js';
import type { SimulateOptions } from '../../packages/core/src/run/driver.js';
import { simulate } from '../../packages/core/src/run/stepping.js';
import type { Scenario } from '../../packages/core/src/scenario/scenario.js';

/** Compiles a scenario with its overrides and runs it. */
export function runOf(scenario: Scenario, options: SimulateOptions = {}): ResumableRun {
  return simulate(compileModel(scenario, createParameters(scenario.overrides)), options);
}

/** Runs a scenario that must reach its end. */
export function doneRun(scenario: Scenario, options: SimulateOptions = {}): ResumableRun {
  const run = runOf(scenario, options);
  if (run.outcome.kind !== 'done') throw new Error(`the run ended with ${JSON.stringify(run.outcome)}`);
  return run;
}

/** The last sample of a run. */
export function lastOf(run: Run): Sample {
  return run.samples[run.samples.length - 1];
}

/** Concentration of a component in a vessel at a sample. */
export function concentration(run: Run, sample: Sample, component: WaterComponent, vessel: string): number {
  const index = run.model.layout.vessels.indexOf(vessel);
  return sample.y[waterState(index, component)] / sample.volume[index];
}

/** Concentrations of a component in a vessel at every sample. */
export function courseOf(run: Run, component: WaterComponent, vessel: string): number[] {
  return run.samples.map((sample) => concentration(run, sample, component, vessel));
}

/** Amount of a component that is held once at a place (vessel, cohort, batch). */
export function amountOf(run: Run, sample: Sample, component: string, place: string): number {
  const state = run.model.layout.states.findIndex((s) => s.component === component && s.place === place);
  if (state < 0) throw new RangeError(`no ${component} at ${place}`);
  return sample.y[state];
}

/** Extent of one row since the start. */
export function extentOf(run: Run, sample: Sample, row: string): number {
  const index = run.model.rows.findIndex(({ id }) => id === row);
  if (index < 0) throw new RangeError(`no row ${row}`);
  return sample.x[index];
}

/** Every state of a run by component and place: concentrations in water, amounts elsewhere. */
export function readingsOf(run: Run, sample: Sample): Map<string, number> {
  return new Map(
    run.model.layout.states.map(({ component, place, vessel }, state) => {
      const inWater = (waterComponents as readonly string[]).includes(component);
      return [`${component}@${place}`, inWater ? sample.y[state] / sample.volume[vessel] : sample.y[state]];
    }),
  );
}
