import { INSTANT } from '../base/instant.js';
import type { Model } from '../model/model.js';
import { openRates, type Rates } from '../model/rates.js';
import type { Ending, Integrator, Tolerance } from '../solve/contract.js';
import { integrators, type IntegratorName } from '../solve/integrators.js';
import { openCropClock } from './crop-clock.js';
import { byKind } from '../scenario/action-kinds.js';
import { clearBatch, grams, perform, plantBatch, type RunState } from './actions.js';
import { conditionsAt, readDay, type Day } from './forcing.js';
import { openHydraulics, type WaterEvent } from './hydraulics.js';
import { openOperation } from './operation.js';
import { openLedger } from './ledger.js';
import { adviceFor } from './run.js';
import { outputTimes } from './sample-buffer.js';
import { openControls } from './controls.js';
import { freshBuffer, type SampleBuffer } from './sample-buffer.js';
import type { Outcome, Run, Sample } from './run.js';
import { startState } from './start.js';
import { openSegments } from './segments.js';
import { absoluteTolerances } from './tolerances.js';

/** How a run is made. */
export interface SimulateOptions {
  /** Default `rosenbrock`. */
  readonly integrator?: IntegratorName;
  /** Relative tolerance; default 1e-5: no series of the demo year then is off by more than about 1e-4. */
  readonly tolerance?: number;
  /** Called at each day boundary with the number of the `day`, from 0, for a progress bar. */
  readonly onDay?: (day: number) => void;
  /** Where the samples are kept; default: in arrays of their own. */
  readonly buffer?: SampleBuffer;
}

/** Changes of the water's state in one day that count as chattering. */
const CHATTER = 2000;

const waterWords: Readonly<Record<WaterEvent['kind'], string>> = {
  'pump-trip': 'sucks air and stops: its vessel is down to the inlet',
  'pump-restart': 'runs again',
  dry: 'ran dry: it loses no more than flows in',
  wet: 'holds water again',
};

/**
 * Runs a model from its start to its end.
 *
 * At each day boundary, in this order: record; harvest what is ripe; rules, by readings of the water as it
 * stands; actions of that instant in the order of `actionOrder`; rations and weather of the day; then integrate. Every instant at which
 * anything jumps (action, pump timer, hours of feeding, a water level reaching a mark) ends a segment.
 * Never throws for numerical trouble: the outcome names it and the run holds what was reached.
 */
export function simulate(model: Model, options: SimulateOptions = {}): Run {
  return simulateWith(model, options, ({ system }, tolerance) =>
    integrators[options.integrator ?? 'rosenbrock'](system, tolerance),
  );
}

/** As `simulate`, with an integrator of the caller's: one that records, replays or times each segment. */
export function simulateWith(
  model: Model,
  options: SimulateOptions,
  openIntegrator: (rates: Rates, tolerance: Tolerance) => Integrator,
): Run {
  const { scenario, layout, streams } = model;
  const tolerance = options.tolerance ?? 1e-5;
  const name = options.integrator ?? 'rosenbrock';
  const rates = openRates(model);
  const { regime } = rates;
  const absolute = absoluteTolerances(model, tolerance);
  const integrator = openIntegrator(rates, { relative: tolerance, absolute });
  const hydraulics = openHydraulics(model);
  const operation = openOperation(model);
  const crops = openCropClock(model);
  const vesselCount = layout.vessels.length;
  const day: Day = {
    temperature: new Float64Array(vesselCount),
    air: new Float64Array(vesselCount),
    et0: 0,
    rain: 0,
  };
  readDay(model, 0, day);
  const y = startState(model, crops, day, hydraulics.volume);
  const x = new Float64Array(model.rows.length);
  const ledger = openLedger(model, y);
  const bench: RunState = {
    model,
    y,
    ledger,
    operation,
    crops,
    hydraulics,
    seedling: (batch) =>
      crops.stand(batch, 0, conditionsAt(model, layout.batches[batch].vessel, day, 0, 0, batch)),
  };
  const followControls = openControls(bench, day.temperature);
  const segments = openSegments({ model, regime, operation, crops, hydraulics, day });
  const samples: Sample[] = [];
  const { buffer = freshBuffer } = options;
  const vapour = streams.flatMap(({ kind }, s) =>
    kind === 'evaporation' || kind === 'transpiration' ? [s] : [],
  );
  const actions = [...scenario.actions].sort((a, b) => a.at - b.at || byKind(a.action, b.action));
  let nextAction = 0;
  const times = outputTimes(scenario.days, scenario.every);

  function copy(values: Float64Array): Float64Array {
    const kept = buffer.array(values.length);
    kept.set(values);
    return kept;
  }

  /** Values that have moved along straight lines for some time. */
  function along(values: Float64Array, slope: Float64Array, since: number): Float64Array {
    const moved = buffer.array(values.length);
    for (let i = 0; i < moved.length; i++) moved[i] = values[i] + slope[i] * since;
    return moved;
  }

  /** Feed offered to each cohort. */
  function fedAt(atY: Float64Array): Float64Array {
    const offered = buffer.array(segments.offered.length);
    segments.offered.forEach(({ fed, share }, cohort) => {
      offered[cohort] = fed + share * atY[layout.fish[cohort].mass];
    });
    return offered;
  }

  function sample(time: number, atY: Float64Array, atX: Float64Array, sinceSegment: number): void {
    samples.push({
      time,
      y: copy(atY),
      x: copy(atX),
      volume: along(hydraulics.volume, hydraulics.slope, sinceSegment),
      carried: along(hydraulics.carried, hydraulics.flow, sinceSegment),
      rain: hydraulics.rain + hydraulics.rainSlope * sinceSegment,
      spilled: hydraulics.spilled + hydraulics.spillSlope * sinceSegment,
      posted: ledger.postings.length,
      temperature: copy(day.temperature),
      fed: fedAt(atY),
      evapotranspiration: vapour.reduce((sum, s) => sum + hydraulics.flow[s], 0),
    });
  }

  function harvestRipe(time: number): boolean {
    let any = false;
    layout.batches.forEach((batch, index) => {
      if (!crops.ripe(index, time)) return;
      const planting = scenario.plantings[batch.planting];
      any = true;
      const stand = clearBatch(bench, index);
      if (planting.after === 'replant') plantBatch(bench, index, time);
      ledger.say(
        time,
        'harvest',
        batch.name,
        `${grams(stand?.mass ?? 0)} dry, ${planting.after === 'replant' ? 'replanted' : 'left empty'}`,
      );
    });
    return any;
  }

  /** Sets the regime of the segment that starts at a time; true when the water did something. */
  function settle(time: number): boolean {
    const events = segments.settle(time);
    for (const event of events) ledger.say(time, event.kind, event.place, waterWords[event.kind]);
    return events.length > 0;
  }

  /** The next instant at which the forcing jumps. */
  function nextJump(time: number): number {
    const today = Math.floor(time + INSTANT);
    let next = Math.min(today + 1, scenario.days);
    if (nextAction < actions.length) next = Math.min(next, actions[nextAction].at);
    return Math.min(next, segments.nextSwitch(time));
  }

  function act(time: number): boolean {
    const from = nextAction;
    while (nextAction < actions.length && actions[nextAction].at <= time + INSTANT) {
      perform(bench, actions[nextAction++].action, time);
    }
    return nextAction > from;
  }

  let time = 0;
  let output = 0;
  let changes = 0;
  let outcome: Outcome | undefined;
  const finish = (ending: Exclude<Ending, { kind: 'done' }>): Outcome => {
    const state = ending.worst >= 0 ? layout.states[ending.worst] : undefined;
    return {
      kind: ending.kind,
      time: ending.time,
      ...(state && { worst: `${state.component}@${state.place}` }),
      advice: adviceFor(ending.kind),
    };
  };

  harvestRipe(0);
  followControls(0);
  act(0);
  segments.morning(0, 0, y);
  settle(0);
  while (output < times.length && times[output] <= INSTANT) {
    sample(times[output], y, x, 0);
    output++;
  }
  while (outcome === undefined && time < scenario.days - INSTANT) {
    const jump = nextJump(time);
    const mark = time + hydraulics.untilMark();
    const atMark = mark < jump;
    const to = atMark ? mark : jump;
    const from = time;
    const wanted: number[] = [];
    while (output + wanted.length < times.length && times[output + wanted.length] < to - INSTANT) {
      wanted.push(times[output + wanted.length]);
    }
    const ending: Ending =
      to > from
        ? integrator.advance(from, to, y, x, {
            times: wanted,
            take: (at, atY, atX) => {
              sample(at, atY, atX, at - from);
            },
          })
        : { kind: 'done' };
    output += wanted.length;
    if (ending.kind !== 'done') {
      hydraulics.advance(ending.time - from);
      time = ending.time;
      outcome = finish(ending);
      break;
    }
    hydraulics.advance(atMark ? hydraulics.untilMark() : to - from);
    time = to;
    outcome = belowZero(model, y, absolute, time);
    if (output < times.length && times[output] <= time + INSTANT) sample(times[output++], y, x, 0);
    if (outcome !== undefined || time >= scenario.days - INSTANT) break;
    let jumped = false;
    const boundary = Math.abs(time - Math.round(time)) <= INSTANT;
    if (boundary) {
      time = Math.round(time);
      changes = 0;
      hydraulics.newDay(time);
      options.onDay?.(time);
      jumped = harvestRipe(time);
      if (followControls(time)) jumped = true;
    }
    const acted = act(time);
    if (boundary || acted) segments.morning(Math.floor(time + INSTANT), time, y);
    // After a true jump the old step is far too long: begin again with a small one.
    if (settle(time) || acted || jumped) integrator.restart();
    if (atMark && ++changes > CHATTER) {
      outcome = { kind: 'chattering', time, advice: adviceFor('chattering') };
    }
  }
  // What was reached when a run breaks off is told, whatever time it was.
  if (outcome !== undefined && samples[samples.length - 1].time < outcome.time) sample(time, y, x, 0);
  return {
    model,
    outcome: outcome ?? { kind: 'done', time: scenario.days },
    samples,
    postings: ledger.postings,
    events: ledger.events,
    ages: crops.planted.map((planted) => time - planted),
    work: { ...integrator.work },
    integrator: name,
    tolerance,
  };
}

/** A state more than ten tolerances below zero is an error; alkalinity may truly be negative. */
function belowZero(model: Model, y: Float64Array, absolute: Float64Array, time: number): Outcome | undefined {
  for (let s = 0; s < y.length; s++) {
    const { component, place } = model.layout.states[s];
    if (component === 'alkalinity' || !(y[s] < -10 * absolute[s])) continue;
    return {
      kind: 'negative-state',
      time,
      worst: `${component}@${place}`,
      advice: adviceFor('negative-state'),
    };
  }
  return undefined;
}
