import { openModel, simulate, type OpenModel, type Run, type ScenarioReading } from '@leat/core';
import { noProgress, openProgress } from '../../terminal/progress.js';
import type { Streams } from '../../terminal/streams.js';

/** How a scenario is simulated, and whether anything is said of it meanwhile. */
export interface SimulatedOptions {
  readonly integrator?: 'rosenbrock' | 'odex';
  readonly tolerance?: number;
  readonly quiet?: boolean;
}

/** A run, what was assumed for it, and the numbers it used. */
export interface SimulatedRun extends Pick<OpenModel, 'notes' | 'used'> {
  readonly run: Run;
}

/** Compiles and simulates what was read, with what was assumed, warnings and progress on the notes. */
export async function simulated(
  reading: ScenarioReading,
  options: SimulatedOptions,
  streams: Streams,
): Promise<SimulatedRun> {
  const { model, notes, used } = openModel(reading);
  if (options.quiet !== true) for (const note of notes) streams.note(`${note}\n`);
  const progress = options.quiet === true ? noProgress : await openProgress(reading.scenario.days);
  try {
    const run = simulate(model, {
      ...(options.integrator === undefined ? {} : { integrator: options.integrator }),
      ...(options.tolerance === undefined ? {} : { tolerance: options.tolerance }),
      onDay: (day) => {
        progress.day(day);
      },
    });
    return { run, notes, used };
  } finally {
    progress.end();
  }
}
