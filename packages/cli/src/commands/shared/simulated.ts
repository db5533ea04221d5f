import {
  openModel,
  relativeResidual,
  simulate,
  type Budget,
  type ExtendedReading,
  type OpenModel,
  type ResumableRun,
  type Run,
} from '@leat/core';
import { odex } from '@leat/core/odex';
import { exit, type ExitCode } from '../../terminal/exit.js';
import { noProgress, openProgress } from '../../terminal/progress.js';
import type { Streams } from '../../terminal/streams.js';
import { linesText } from '../../terminal/columns.js';

/** How a scenario is simulated, and whether anything is said of it meanwhile. */
export interface SimulatedOptions {
  readonly integrator?: 'rosenbrock' | 'odex';
  readonly tolerance?: number;
  readonly quiet?: boolean;
}

/** A run, what was assumed for it, and the numbers it used. */
export interface SimulatedRun extends Pick<OpenModel, 'notes' | 'used'> {
  readonly run: ResumableRun;
}

/** Compiles and simulates what was read, with what was assumed, warnings and progress on the notes. */
export async function simulated(
  reading: ExtendedReading,
  options: SimulatedOptions,
  streams: Streams,
): Promise<SimulatedRun> {
  // Our own rows close at any draw, as tests hold; what runs is checked at its own numbers. A user's own rows are drawn for.
  const { model, notes, used } = openModel(reading, reading.extension ? {} : { closureDraws: 0 });
  if (options.quiet !== true) streams.note(linesText(notes));
  const progress = options.quiet === true ? noProgress : await openProgress(reading.scenario.days);
  try {
    const run = simulate(model, {
      ...(options.integrator === 'odex' && { integrator: odex }),
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

/** Largest residual, as a share of throughput, of a balance that holds. */
const tight = 1e-9;

/** What to say of how a run ended, and the code to leave with. */
export interface Ending {
  readonly code: ExitCode;
  /** Empty when all is well. */
  readonly text: string;
}

/**
 * Judges a run: broken off (with the usual reasons and the worst component), or its worst balance not
 * closed (naming quantity and vessel), or done.
 */
export function endingOf(run: Pick<Run, 'outcome'>, worst: Budget): Ending {
  const { outcome } = run;
  if (outcome.kind !== 'done') {
    const where = outcome.worst === undefined ? '' : ` at ${outcome.worst}`;
    const advice = outcome.advice === undefined ? '' : `: ${outcome.advice}`;
    return {
      code: exit.notFinished,
      text: `not finished: ${outcome.kind} on day ${outcome.time}${where}${advice}`,
    };
  }
  const share = relativeResidual(worst);
  if (share <= tight) return { code: exit.done, text: '' };
  return {
    code: exit.balanceBroken,
    text:
      `balance broken: ${worst.quantity} of ${worst.place}: residual ${worst.residual.toExponential(3)} is ` +
      `${share.toExponential(1)} of its throughput (at most ${tight})`,
  };
}
