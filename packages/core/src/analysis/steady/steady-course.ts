import type { Model } from '../../model/model.js';
import { absoluteTolerances } from '../../run/tolerances.js';
import type { Run, Sample } from '../../run/run.js';
import type { RateSystem } from '../../solve/contract.js';
import { rosenbrock } from '../../solve/rosenbrock.js';
import { enter, type Cycle, type CycleStretch } from './cycle.js';

/** Least length of the course, d: the longest averaging time of a limit. */
const MONTH = 30;
const HOUR = 1 / 24;
const TOLERANCE = 1e-9;

/**
 * A month of a state that lasts, as a run tells it, so that series, limits and measures read it like any other:
 * a sample a day where it is constant, one an hour (and at each jump) where it repeats. Integrated, not assumed:
 * what did not come back would be seen.
 */
export function steadyCourse(model: Model, cycle: Cycle, system: RateSystem, from: Float64Array): Run {
  const { layout, streams, rows } = model;
  const y = Float64Array.from(from);
  const x = new Float64Array(system.rates);
  const carried = new Float64Array(streams.length);
  const samples: Sample[] = [];
  const integrator = rosenbrock(system, {
    relative: TOLERANCE,
    absolute: absoluteTolerances(model, TOLERANCE),
  });
  const take = (
    stretch: CycleStretch,
    since: number,
    time: number,
    atY: Float64Array,
    atX: Float64Array,
  ): void => {
    samples.push({
      time,
      y: Float64Array.from(atY),
      x: Float64Array.from(atX.subarray(0, rows.length)),
      volume: stretch.volume.map((volume, cell) => volume + stretch.slope[cell] * since),
      carried: carried.map((volume, s) => volume + stretch.flow[s] * since),
      rain: stretch.rain,
      spilled: 0,
      posted: 0,
      temperature: cycle.temperature,
      fed: stretch.fed,
      evapotranspiration: streams.reduce(
        (sum, stream, s) =>
          stream.kind === 'evaporation' || stream.kind === 'transpiration' ? sum + stretch.flow[s] : sum,
        0,
      ),
    });
  };
  const step = cycle.constant ? 1 : HOUR;
  take(cycle.stretches[0], 0, 0, y, x);
  for (let begun = 0; begun < MONTH; begun += cycle.period) {
    for (const stretch of cycle.stretches) {
      enter(cycle.regime, stretch);
      const length = stretch.to - stretch.from;
      const inside = Array.from({ length: Math.ceil(stretch.to / step) }, (_, i) => i * step).filter(
        (time) => time > stretch.from + 1e-9 && time < stretch.to - 1e-9,
      );
      integrator.restart();
      integrator.advance(stretch.from, stretch.to, y, x, {
        times: inside,
        take: (at, atY, atX) => {
          take(stretch, at - stretch.from, begun + at, atY, atX);
        },
      });
      take(stretch, length, begun + stretch.to, y, x);
      stretch.flow.forEach((flow, s) => (carried[s] += flow * length));
    }
  }
  return {
    model,
    outcome: { kind: 'done', time: samples[samples.length - 1].time },
    samples,
    postings: [],
    events: [],
    ages: new Float64Array(layout.batches.length).fill(Number.NaN),
    work: { ...integrator.work },
    integrator: integrator.name,
    tolerance: TOLERANCE,
  };
}
