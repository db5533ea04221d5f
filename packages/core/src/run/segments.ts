// Reads numbers as: evapotranspiration of beds and water
import { INSTANT } from '../base/instant.js';
import { feedKey } from '../model/instance.js';
import type { Model, Regime } from '../model/model.js';
import { waterComponents } from '../processes/components.js';
import type { SourceWater, Timer } from '../scenario/scenario.js';
import type { CropClock } from './crop-clock.js';
import { type Day, openCoefficients, readDay } from './forcing.js';
import type { Hydraulics, WaterEvent } from './hydraulics.js';
import { concentrationsOf } from './ledger.js';
import { type Operation, type Offer, offerOf } from './operation.js';

/** Whether a clock is in its on-phase; no clock is always on. On-phases are half-open [on, off). */
export function within(timer: Timer | undefined, time: number): boolean {
  if (timer === undefined) return true;
  return phase(timer, time) < timer.on;
}

/** The next instant after a time at which a clock switches; Infinity without one. */
export function nextSwitch(timer: Timer | undefined, time: number): number {
  if (timer === undefined) return Infinity;
  const since = phase(timer, time);
  return time + (since < timer.on ? timer.on : timer.on + timer.off) - since;
}

/** Time since the clock last switched on, d; the moment of a switch belongs to what follows it. */
function phase(timer: Timer, time: number): number {
  const period = timer.on + timer.off;
  const turns = (time - timer.offset) / period;
  const since = (turns - Math.floor(turns)) * period;
  if (period - since <= INSTANT) return 0;
  return Math.abs(since - timer.on) <= INSTANT ? timer.on : since;
}

/** What a segment of constant forcing is set from. */
interface Setting {
  readonly model: Model;
  readonly regime: Regime;
  readonly operation: Operation;
  readonly crops: CropClock;
  readonly hydraulics: Hydraulics;
  readonly day: Day;
}

/** Sets the forcing of one segment after another. */
export interface Segments {
  /** Feed offered to each cohort on this day. */
  readonly offered: readonly Offer[];
  /** The morning of a day: its weather, evapotranspiration by the ages of the crops at a time, rations by the stock in y. */
  morning(weatherOf: number, time: number, y: Float64Array): void;
  /** Sets the regime of the segment that starts at a time. Returns what the water did. */
  settle(time: number): readonly WaterEvent[];
  /** The next instant at which a pump timer or the hours of feeding switch (Infinity: none). */
  nextSwitch(time: number): number;
}

/** Opens the forcing of a model over the working parts of a run. */
export function openSegments({ model, regime, operation, crops, hydraulics, day }: Setting): Segments {
  const { scenario, layout, streams } = model;
  const vesselCount = layout.vessels.length;
  const refresh = openCoefficients(model, regime);
  const offered: Offer[] = scenario.cohorts.map(() => ({ fed: 0, share: 0 }));
  /** The water that each stream from outside was last set to bring. */
  const sourceOf: (SourceWater | undefined)[] = streams.map(() => undefined);
  const aeration = new Float64Array(vesselCount);
  const inflow = new Float64Array(vesselCount);
  const evaporation = new Float64Array(vesselCount);
  const transpiration = new Float64Array(scenario.plantings.length);
  const open = model.parameters.value('water.open-coefficient');
  const covered = model.parameters.value('water.covered-coefficient');

  function morning(weatherOf: number, time: number, y: Float64Array): void {
    readDay(model, weatherOf, day);
    scenario.vessels.forEach((vessel, index) => {
      evaporation[index] = day.et0 * (open * vessel.open + covered * vessel.covered);
    });
    transpiration.fill(0);
    layout.batches.forEach((batch, index) => {
      transpiration[batch.planting] += day.et0 * crops.coefficient(index, time) * batch.area;
    });
    scenario.cohorts.forEach((_, cohort) => {
      const { mass, number } = layout.fish[cohort];
      const { fed, share } = offerOf(operation.ration[cohort], y[mass], y[number]);
      offered[cohort] = { fed: fed * operation.factor[cohort], share: share * operation.factor[cohort] };
    });
  }

  function settle(time: number): readonly WaterEvent[] {
    const events = hydraulics.settle({
      pumps: scenario.pumps.map((pump, index) => operation.pumpOn[index] && within(pump.timer, time)),
      evaporation,
      transpiration,
      caps: operation.topUpStopped ? operation.caps.map(() => 0) : operation.caps,
      weeklyCaps: operation.weeklyCaps,
      rain: day.rain,
    });
    regime.time = time;
    regime.volume.set(hydraulics.volume);
    regime.slope.set(hydraulics.slope);
    regime.flow.set(hydraulics.flow);
    inflow.fill(0);
    streams.forEach((stream, s) => {
      if (stream.to >= 0) inflow[stream.to] += hydraulics.flow[s];
      const water = stream.water === undefined ? undefined : operation.waters.get(stream.water);
      if (water === undefined || water === sourceOf[s]) return;
      sourceOf[s] = water;
      regime.source.set(concentrationsOf(water), s * waterComponents.length);
    });
    scenario.vessels.forEach((vessel, index) => {
      aeration[index] = operation.aerating[index] ? vessel.aeration : 0;
    });
    const hour = time + INSTANT - Math.floor(time + INSTANT);
    const offers = scenario.cohorts.map(({ hours }, cohort) => {
      if (hours === undefined) return offered[cohort];
      const times = hour >= hours.from && hour < hours.to ? 1 / (hours.to - hours.from) : 0;
      return { fed: offered[cohort].fed * times, share: offered[cohort].share * times };
    });
    refresh(day, aeration, inflow, offers, operation.feed.map(feedKey));
    return events;
  }

  function next(time: number): number {
    const today = Math.floor(time + INSTANT);
    let soonest = Infinity;
    for (const pump of scenario.pumps) soonest = Math.min(soonest, nextSwitch(pump.timer, time));
    for (const { hours } of scenario.cohorts) {
      if (hours === undefined) continue;
      for (const edge of [today + hours.from, today + hours.to])
        if (edge > time + INSTANT) soonest = Math.min(soonest, edge);
    }
    return soonest;
  }

  return { offered, morning, settle, nextSwitch: next };
}
