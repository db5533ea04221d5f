import type { Model } from '../../../packages/core/src/model/model.js';
import type { Run } from '../../../packages/core/src/run/run.js';
import { simulate, simulateWith } from '../../../packages/core/src/run/stepping.js';
import type { Integrator } from '../../../packages/core/src/solve/contract.js';
import { integrators } from '../../support/integrators.js';
import type { Recording } from '../../numerics/peers/record-year.js';
import type { Contestant, Measurement } from './contestant.js';
import { patience } from './did-not-finish-error.js';
import { odexStates } from './odex-states.js';

/** Tolerances of the default integrator, and of its method in C. */
export const TOLERANCES = [1e-3, 1e-4, 1e-5, 1e-6, 1e-7];
const WARM = 2;
const TIMES = 3;

const daysOf = (run: Run): Float64Array => Float64Array.from(run.samples.slice(1).flatMap(({ y }) => [...y]));

interface Timed {
  readonly run: Run;
  readonly milliseconds: number;
}

/** Time that this process has had of the processors, its helper threads included, ms. */
function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Runs to warm up, then as often as asked. */
function often(times: number, warm: number, once: () => Timed): readonly Timed[] {
  for (let i = 0; i < warm; i++) once();
  return Array.from({ length: times }, once);
}

function measured(tolerance: number, runs: readonly Timed[]): Measurement {
  const { run } = runs[0];
  if (run.outcome.kind !== 'done') throw new Error(`the run ended with ${JSON.stringify(run.outcome)}`);
  return {
    tolerance,
    milliseconds: runs.map(({ milliseconds }) => milliseconds),
    days: daysOf(run),
    work: { ...run.work },
  };
}

function timed(once: () => Run): Timed {
  const began = processorTime();
  const run = once();
  return { run, milliseconds: processorTime() - began };
}

/** Only the calls of the integrator, without forcing, postings and samples. */
function integrationOnly(model: Model, tolerance: number): Timed {
  let milliseconds = 0;
  const run = simulateWith(model, { tolerance }, ({ system }, wanted): Integrator => {
    const inner = integrators.rosenbrock(system, wanted);
    return {
      name: inner.name,
      work: inner.work,
      restart: () => {
        inner.restart();
      },
      advance(from, to, y, x, sampling) {
        const began = processorTime();
        const ending = inner.advance(from, to, y, x, sampling);
        milliseconds += processorTime() - began;
        return ending;
      },
    };
  });
  return { run, milliseconds };
}

/** The library's own integrators, run through `simulate` with forcing, postings, extents and samples; and odex on the states alone. */
export function ourContestants(recording: Recording): readonly Contestant[] {
  const { model } = recording;
  const jacobian = `exact Jacobian from the rates, sparse LU; ${String(model.rows.length)} extents integrated besides the states`;
  return [
    {
      name: 'Leat',
      forcing: 'as it is run',
      given: `the whole of simulate, default integrator: ${jacobian}`,
      tolerances: TOLERANCES,
      slow: false,
      measure: (tolerance) =>
        measured(
          tolerance,
          often(TIMES, WARM, () => timed(() => simulate(model, { tolerance }))),
        ),
    },
    {
      name: 'Leat, integration alone',
      forcing: 'as it is run',
      given: `calls of the default integrator only: ${jacobian}`,
      tolerances: TOLERANCES,
      slow: false,
      measure: (tolerance) =>
        measured(
          tolerance,
          often(TIMES, WARM, () => integrationOnly(model, tolerance)),
        ),
    },
    {
      name: 'odex',
      forcing: 'restart',
      given: 'by itself on the states alone, explicit: no Jacobian; its step kept from segment to segment',
      tolerances: [1e-8],
      slow: true,
      measure: (tolerance) => {
        const began = processorTime();
        const result = odexStates(recording, tolerance);
        return { tolerance, milliseconds: [processorTime() - began], ...result };
      },
    },
    {
      name: 'odex in Leat',
      forcing: 'as it is run',
      given:
        'the whole of simulate, explicit: no Jacobian; asked for a thousandth of the tolerance, as Leat asks it',
      tolerances: [1e-5],
      slow: true,
      measure: (tolerance) =>
        measured(
          tolerance,
          often(1, 0, () =>
            timed(() => simulate(model, { tolerance, integrator: integrators.odex, onDay: patience() })),
          ),
        ),
    },
  ];
}
