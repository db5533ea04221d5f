import { acidBaseConstants } from '../chemistry/acid-base.js';
import type { Model } from '../model/model.js';
import type { Regime } from '../model/regime.js';
import { scopeTo } from '../model/scope.js';
import { monthOf, valueInMonth } from '../scenario/value-on.js';
import type { Offer } from './keeper.js';
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
  const plain = scopeTo(model.parameters, {});
  const keys = model.instances.map(() => new Float64Array(6).fill(Number.NaN));
  const now = new Float64Array(6);
  const lastTemperature = new Float64Array(model.layout.cells.length).fill(Number.NaN);
  return function refresh(
    day: Day,
    aeration: ArrayLike<number>,
    inflow: ArrayLike<number>,
    offers: readonly Offer[],
    feeds: readonly string[],
  ): void {
    for (let cell = 0; cell < lastTemperature.length; cell++) {
      if (day.temperature[cell] === lastTemperature[cell]) continue;
      lastTemperature[cell] = day.temperature[cell];
      regime.constants[cell] = acidBaseConstants(plain, day.temperature[cell]);
    }
    model.instances.forEach((instance, j) => {
      const { cell, cohort, process } = instance;
      const last = keys[j];
      const throughFlow = process.throughFlow ? inflow[cell] : 0;
      const given = cohort >= 0 && (instance.feed === undefined || instance.feed === feeds[cohort]);
      const { fed, share } = given ? offers[cohort] : nothing;
      now[0] = day.temperature[cell];
      now[1] = day.air[cell];
      now[2] = aeration[cell];
      now[3] = throughFlow;
      now[4] = fed;
      now[5] = share;
      if (
        now[0] === last[0] &&
        now[1] === last[1] &&
        now[2] === last[2] &&
        now[3] === last[3] &&
        now[4] === last[4] &&
        now[5] === last[5]
      ) {
        return;
      }
      last.set(now);
      const conditions = conditionsAt(
        model,
        cell,
        day,
        aeration[cell],
        inflow[cell],
        instance.batch,
        fed,
        share,
      );
      regime.coefficients[j].set(process.coefficients(instance.values, conditions));
    });
  };
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
