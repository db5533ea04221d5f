// Reads numbers as: evapotranspiration of beds and water
import { INSTANT } from '../base/instant.js';
import { feedKey } from '../model/instance.js';
import type { Model, Regime } from '../model/model.js';
import { openVesselIons } from '../model/water-chemistry.js';
import { waterComponents } from '../processes/components.js';
import type { SourceWater, Timer } from '../scenario/scenario.js';
import { valueOn } from '../scenario/value-on.js';
import type { CropClock } from './crop-clock.js';
import { type Day, openCoefficients, setWeather } from './forcing.js';
import type { Hydraulics, WaterEvent } from './hydraulics.js';
import { concentrationsOf } from './ledger.js';
import { offerOf } from '../scenario/offer.js';
import type { Operation } from './operation.js';

/**
 * Share of the larger of two ionic strengths, of a morning and the one before, beyond which what rates depend on has jumped:
 * water that was all but dry and is filled again does so by three quarters, a weekly dose by less than a third.
 */
const IONS_JUMP = 1 / 3;

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
export class Segments {
  private readonly refresh: ReturnType<typeof openCoefficients>;
  /** The water that each stream from outside was last set to bring. */
  private readonly sourceOf: (SourceWater | undefined)[];
  private readonly aeration: Float64Array;
  private readonly inflow: Float64Array;
  private readonly ionsOf: ReturnType<typeof openVesselIons>;
  private readonly open: number;
  private readonly covered: number;

  constructor(private readonly setting: Setting) {
    const { model, regime } = setting;
    const vesselCount = model.layout.vessels.length;
    this.refresh = openCoefficients(model, regime);
    this.sourceOf = model.streams.map(() => undefined);
    this.aeration = new Float64Array(vesselCount);
    this.inflow = new Float64Array(vesselCount);
    this.ionsOf = openVesselIons(model.parameters);
    this.open = model.parameters.value('water.open-coefficient');
    this.covered = model.parameters.value('water.covered-coefficient');
  }

  /**
   * The morning of a day: its weather, evapotranspiration by the ages of the crops at a time, rations and ions by y.
   * Returns whether the ions of a water are others by far than those held until then: what rates depend on jumps.
   */
  morning(weatherOf: number, time: number, y: Float64Array): boolean {
    const { model, day, crops, operation, hydraulics } = this.setting;
    const { scenario, layout } = model;
    setWeather(model, weatherOf, day);
    let jumped = false;
    for (let vessel = 0; vessel < scenario.vessels.length; vessel++) {
      const held = day.ionic[vessel];
      const ionic = this.ionsOf(y, hydraulics.water.volume[vessel], vessel);
      if (Math.abs(ionic - held) > IONS_JUMP * Math.max(ionic, held)) jumped = true;
      day.ionic[vessel] = ionic;
    }
    scenario.vessels.forEach((vessel, index) => {
      day.evaporation[index] = day.et0 * (this.open * vessel.open + this.covered * vessel.covered);
    });
    day.transpiration.fill(0);
    layout.batches.forEach((batch, index) => {
      const { shelter } = scenario.plantings[batch.planting];
      const left = shelter === undefined ? 1 : valueOn(shelter, scenario.startDate, weatherOf);
      day.transpiration[batch.planting] += left * day.et0 * crops.coefficient(index, time) * batch.area;
    });
    scenario.fish.forEach((_, cohort) => {
      const { mass, number } = layout.fish[cohort];
      const { fed, share } = offerOf(operation.ration[cohort], y[mass], y[number]);
      day.offered[cohort] = { fed: fed * operation.factor[cohort], share: share * operation.factor[cohort] };
    });
    return jumped;
  }

  /** Settles the water for the segment that starts at a time and sets its regime. Returns what the water did. */
  settle(time: number): readonly WaterEvent[] {
    const { model, operation, hydraulics, day } = this.setting;
    const events = hydraulics.settle({
      pumps: model.scenario.pumps.map(({ timer }, pump) => operation.pumpOn[pump] && within(timer, time)),
      evaporation: day.evaporation,
      transpiration: day.transpiration,
      caps: operation.topUpStopped ? operation.caps.map(() => 0) : operation.caps,
      weeklyCaps: operation.weeklyCaps,
      rain: day.rain,
    });
    this.enter(time);
    return events;
  }

  /** Sets the regime of the segment that starts at a time, with the water settled. */
  enter(time: number): void {
    const { model, regime, operation, crops, hydraulics, day } = this.setting;
    const { scenario } = model;
    const { water } = hydraulics;
    regime.time = time;
    const today = Math.floor(time + INSTANT);
    day.bearing.forEach((_, batch) => {
      day.bearing[batch] = crops.bearing(batch, today);
    });
    regime.volume.set(water.volume);
    regime.slope.set(water.slope);
    regime.flow.set(water.flow);
    this.bringWater();
    scenario.vessels.forEach((vessel, index) => {
      this.aeration[index] = operation.aerating[index] ? vessel.aeration : 0;
    });
    const hour = time + INSTANT - Math.floor(time + INSTANT);
    const offers = scenario.fish.map(({ hours }, cohort) => {
      if (hours === undefined) return day.offered[cohort];
      const pace = hour >= hours.from && hour < hours.to ? 1 / (hours.to - hours.from) : 0;
      return { fed: day.offered[cohort].fed * pace, share: day.offered[cohort].share * pace, pace };
    });
    this.refresh(day, this.aeration, this.inflow, offers, operation.feed.map(feedKey), operation.dosing);
  }

  /** The next instant at which a pump timer or the hours of feeding switch (Infinity: none). */
  nextSwitch(time: number): number {
    const { scenario } = this.setting.model;
    const today = Math.floor(time + INSTANT);
    let soonest = Infinity;
    for (const pump of scenario.pumps) soonest = Math.min(soonest, nextSwitch(pump.timer, time));
    for (const { hours } of scenario.fish) {
      if (hours === undefined) continue;
      for (const edge of [today + hours.from, today + hours.to])
        if (edge > time + INSTANT) soonest = Math.min(soonest, edge);
    }
    return soonest;
  }

  /** Finds what flows into each vessel, and what the streams from outside bring. */
  private bringWater(): void {
    const { model, regime, operation } = this.setting;
    const { inflow, sourceOf } = this;
    inflow.fill(0);
    model.streams.forEach(({ to, water: name }, s) => {
      if (to >= 0) inflow[to] += regime.flow[s];
      const water = name === undefined ? undefined : operation.waters.get(name);
      if (water === undefined || water === sourceOf[s]) return;
      sourceOf[s] = water;
      regime.source.set(concentrationsOf(water), s * waterComponents.length);
    });
  }
}
