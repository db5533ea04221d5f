import { compileModel, createParameters, simulate, type Run, type ScenarioReading } from '@leat/core';
import { noProgress, openProgress } from '../../terminal/progress.js';
import type { Streams } from '../../terminal/streams.js';

/** How a scenario is simulated, and whether anything is said of it meanwhile. */
export interface SimulatedOptions {
  readonly integrator?: 'rosenbrock' | 'odex';
  readonly tolerance?: number;
  readonly quiet?: boolean;
}

/** Compiles and simulates what was read, with what was assumed, warnings and progress on the notes. */
export async function simulated(
  { scenario, notes }: ScenarioReading,
  options: SimulatedOptions,
  streams: Streams,
): Promise<Run> {
  const parameters = createParameters(scenario.overrides);
  if (options.quiet !== true)
    for (const note of [...notes, ...parameters.warnings]) streams.note(`${note}\n`);
  const model = compileModel(scenario, parameters);
  const progress = options.quiet === true ? noProgress : await openProgress(scenario.days);
  try {
    return simulate(model, {
      ...(options.integrator === undefined ? {} : { integrator: options.integrator }),
      ...(options.tolerance === undefined ? {} : { tolerance: options.tolerance }),
      onDay: (day) => {
        progress.day(day);
      },
    });
  } finally {
    progress.end();
  }
}
