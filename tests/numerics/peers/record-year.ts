import type { Model } from '../../../packages/core/src/model/model.js';
import type { Rates } from '../../../packages/core/src/model/rates.js';
import type { Regime } from '../../../packages/core/src/model/model.js';
import { simulateWith } from '../../../packages/core/src/run/stepping.js';
import type { Integrator } from '../../../packages/core/src/solve/contract.js';
import { integrators } from '../../support/integrators.js';
import { noWork } from '../../../packages/core/src/solve/contract.js';
import { jumpMaps, type Jump } from './jump-maps.js';

/** A segment of constant forcing as it was run. */
interface Segment {
  readonly from: number;
  readonly to: number;
  /** A copy. */
  readonly regime: Regime;
  /** State at its start, after what was posted, and at its end. */
  readonly start: Float64Array;
  readonly end: Float64Array;
  /** What was posted at its start, if it moved any state. */
  readonly jump: Jump | undefined;
}

/** A run taken apart into what any integrator needs to run it again. */
export interface Recording {
  readonly model: Model;
  readonly segments: readonly Segment[];
  /** Number of jumps after which the run's own integrator began again. */
  readonly restarts: number;
}

/** A copy of a regime, which the driver changes from segment to segment. */
function copyRegime(regime: Regime): Regime {
  return {
    time: regime.time,
    volume: regime.volume.slice(),
    slope: regime.slope.slice(),
    flow: regime.flow.slice(),
    source: regime.source.slice(),
    constants: regime.constants.map((constants) => ({ ...constants })),
    coefficients: regime.coefficients.map((coefficients) => coefficients.slice()),
  };
}

/**
 * Runs a model and records each segment of constant forcing and each jump of the state between two.
 * A jump may depend on the state (a share of the sludge is drained): it is kept with its derivative.
 * @throws RangeError when the run does not reach its end.
 */
export function recordYear(model: Model, tolerance: number): Recording {
  const segments: Omit<Segment, 'jump'>[] = [];
  let restarts = 0;
  const run = simulateWith(model, { tolerance }, ({ system, regime }, wanted): Integrator => {
    const inner = integrators.rosenbrock(system, wanted);
    return {
      name: inner.name,
      work: inner.work,
      restart() {
        restarts++;
        inner.restart();
      },
      advance(from, to, y, x, sampling) {
        const start = y.slice();
        const copy = copyRegime(regime);
        const ending = inner.advance(from, to, y, x, sampling);
        segments.push({ from, to, regime: copy, start, end: y.slice() });
        return ending;
      },
    };
  });
  if (run.outcome.kind !== 'done') throw new RangeError(`the run ended with ${JSON.stringify(run.outcome)}`);
  const maps = jumpMaps(segments, (ends) => startsAfter(model, ends));
  return { model, segments: segments.map((segment, i) => ({ ...segment, jump: maps[i] })), restarts };
}

/** The state at the start of each segment when the segments end at given states. */
function startsAfter(model: Model, ends: readonly Float64Array[]): Float64Array[] {
  const starts: Float64Array[] = [];
  replayYear(model, ends, (_, y) => starts.push(y.slice()));
  return starts;
}

/** Runs the driver alone: each segment ends at a given state, and is seen under its forcing before. */
export function replayYear(
  model: Model,
  ends: readonly Float64Array[],
  see: (rates: Rates, y: Float64Array) => void,
): void {
  let next = 0;
  simulateWith(model, {}, (rates): Integrator => ({
    name: 'replay',
    work: noWork(),
    restart: () => undefined,
    advance(_from, _to, y, x, sampling) {
      see(rates, y);
      for (const time of sampling?.times ?? []) sampling?.take(time, y, x);
      y.set(ends[next++]);
      return { kind: 'done' };
    },
  }));
}
