import { acidBaseConstants } from '../chemistry/acid-base.js';
import type { Model } from '../model/model.js';
import type { Regime } from '../model/model.js';
import { scopeTo } from '../model/scope.js';
import { monthOf, valueInMonth } from '../scenario/value-on.js';
import type { Offer } from './operation.js';
import type { Conditions } from '../processes/process.js';
import type { DailyValue } from '../scenario/scenario.js';

/** What the weather and the keeper make of a day: set at each day boundary. */
export interface Day {
  readonly temperature: Float64Array;
  readonly air: Float64Array;
  /** m d-1. */
  et0: number;
  rain: number;
}

/** Reads the day's weather. */
export function readDay(model: Model, day: number, into: Day): void {
  const { scenario } = model;
  const month = monthOf(scenario.startDate, day);
  const on = (value: DailyValue): number => valueInMonth(value, month, day);
  const air = scenario.air === undefined ? undefined : on(scenario.air);
  scenario.vessels.forEach((vessel, cell) => {
    into.temperature[cell] = on(vessel.temperature);
    into.air[cell] = air ?? into.temperature[cell];
  });
  into.et0 = on(scenario.et0);
  into.rain = scenario.rainTank === undefined ? 0 : on(scenario.rainTank.rain) * scenario.rainTank.roof;
}

const nothing: Offer = { fed: 0, share: 0 };

/** Sets the coefficients of a regime, but only of those instances whose conditions have changed. */
export function openCoefficients(model: Model, regime: Regime) {
  const { instances } = model;
  const plain = scopeTo(model.parameters, {});
  const cells = model.layout.cells.length;
  const last = {
    temperature: newest(cells),
    air: newest(cells),
    aeration: newest(cells),
    inflow: newest(cells),
  };
  const lastFed = newest(instances.length);
  const lastShare = newest(instances.length);
  const changed = new Uint8Array(cells);
  const flowed = new Uint8Array(cells);
  const cellOf = Int32Array.from(instances, ({ cell }) => cell);
  const cohortOf = Int32Array.from(instances, ({ cohort }) => cohort);
  const throughFlow = Uint8Array.from(instances, ({ process }) => (process.throughFlow ? 1 : 0));
  return function refresh(
    day: Day,
    aeration: ArrayLike<number>,
    inflow: ArrayLike<number>,
    offers: readonly Offer[],
    feeds: readonly string[],
  ): void {
    for (let cell = 0; cell < cells; cell++) {
      if (take(last.temperature, cell, day.temperature[cell])) {
        regime.constants[cell] = acidBaseConstants(plain, day.temperature[cell]);
        changed[cell] = 1;
      } else changed[cell] = 0;
      if (take(last.air, cell, day.air[cell])) changed[cell] = 1;
      if (take(last.aeration, cell, aeration[cell])) changed[cell] = 1;
      flowed[cell] = take(last.inflow, cell, inflow[cell]) ? 1 : 0;
    }
    for (let j = 0; j < instances.length; j++) {
      const cell = cellOf[j];
      const cohort = cohortOf[j];
      let stale = changed[cell] === 1 || (flowed[cell] === 1 && throughFlow[j] === 1);
      let offer = nothing;
      if (cohort >= 0) {
        const { feed } = instances[j];
        if (feed === undefined || feed === feeds[cohort]) offer = offers[cohort];
        if (take(lastFed, j, offer.fed)) stale = true;
        if (take(lastShare, j, offer.share)) stale = true;
      }
      if (!stale) continue;
      const { process, values, batch } = instances[j];
      const { fed, share } = offer;
      const conditions = conditionsAt(model, cell, day, aeration[cell], inflow[cell], batch, fed, share);
      regime.coefficients[j].set(process.coefficients(values, conditions));
    }
  };
}

/** Last values, none yet. */
function newest(size: number): Float64Array {
  return new Float64Array(size).fill(Number.NaN);
}

/** Notes a value; whether it is another than before. */
function take(last: Float64Array, index: number, value: number): boolean {
  if (last[index] === value) return false;
  last[index] = value;
  return true;
}

/** Conditions at a place. */
export function conditionsAt(
  model: Model,
  cell: number,
  day: Day,
  aeration: number,
  inflow: number,
  batch: number,
  fed = 0,
  fedShare = 0,
): Conditions {
  const vessel = model.scenario.vessels[cell];
  return {
    temperature: day.temperature[cell],
    air: day.air[cell],
    volume: vessel.volume,
    surface: vessel.surface,
    open: vessel.open,
    floor: vessel.floor,
    capture: vessel.capture,
    aeration,
    inflow,
    fed,
    fedShare,
    area: batch < 0 ? 0 : model.layout.batches[batch].area,
  };
}
