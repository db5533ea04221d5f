// Reads numbers as: light on the crops
import { monthOf } from '../base/calendar.js';
import { openAcidBase } from '../chemistry/acid-base.js';
import type { Model } from '../model/model.js';
import type { Regime } from '../model/model.js';
import type { Instance } from '../model/instance.js';
import { scopeTo } from '../model/scope.js';
import { valueInMonth } from '../scenario/value-on.js';
import { pressureShare } from '../weather/penman-monteith.js';
import type { Offer } from '../scenario/offer.js';
import type { Conditions, Process } from '../processes/process.js';
import type { DailyValue } from '../scenario/scenario.js';

/** What holds from the morning of a day on, until something is done: weather, evapotranspiration, rations. Plain data. */
export interface Day {
  /** Of the water and of the air at each vessel, degC. */
  readonly temperature: Float64Array;
  readonly air: Float64Array;
  /** Photosynthetic light on each planting, mol m-2 d-1. */
  readonly light: Float64Array;
  /** Share of the growth of each batch that goes to fruit. */
  readonly bearing: Float64Array;
  /** Carbon dioxide in the air, mol per mol; absent: that of open air. */
  carbonDioxide?: number;
  /** Ionic strength of each vessel that morning, mol L-1, held through the day. */
  readonly ionic: Float64Array;
  /** m d-1. */
  et0: number;
  /** Rain running into the rain tank, m3 d-1. */
  rain: number;
  /** Evaporation of each vessel and transpiration of each planting, m3 d-1. */
  readonly evaporation: Float64Array;
  readonly transpiration: Float64Array;
  /** Feed offered to each cohort. */
  readonly offered: Offer[];
}

const nothing: Offer = { fed: 0, share: 0 };

/** Where nothing is dosed by a doser. */
const noDoser = { most: 0, setPoint: 0, band: 1, sign: 1 };

/** A day with its weather, before anything else of it is worked out. */
export function openDay(model: Model, weatherOf: number): Day {
  const { vessels, plantings, fish: cohorts } = model.scenario;
  const day: Day = {
    temperature: new Float64Array(vessels.length),
    air: new Float64Array(vessels.length),
    light: new Float64Array(plantings.length),
    bearing: new Float64Array(model.layout.batches.length),
    ionic: new Float64Array(vessels.length),
    et0: 0,
    rain: 0,
    evaporation: new Float64Array(vessels.length),
    transpiration: new Float64Array(plantings.length),
    offered: cohorts.map(() => nothing),
  };
  setWeather(model, weatherOf, day);
  return day;
}

/** Sets the weather of a day. */
export function setWeather(model: Model, day: number, into: Day): void {
  const { scenario } = model;
  const month = monthOf(scenario.startDate, day);
  const on = (value: DailyValue): number => valueInMonth(value, month, day);
  const air = scenario.air === undefined ? undefined : on(scenario.air);
  scenario.vessels.forEach((vessel, index) => {
    into.temperature[index] = on(vessel.temperature);
    into.air[index] = air ?? into.temperature[index];
  });
  const light = (): number =>
    scenario.light === undefined ? model.parameters.value('light.outdoors') : on(scenario.light);
  scenario.plantings.forEach((planting, index) => {
    into.light[index] = planting.light === undefined ? light() : on(planting.light);
  });
  if (scenario.carbonDioxide !== undefined) into.carbonDioxide = on(scenario.carbonDioxide);
  into.et0 = on(scenario.et0);
  into.rain = scenario.rainTank === undefined ? 0 : on(scenario.rainTank.rain) * scenario.rainTank.roof;
}

/**
 * For each instance the first one whose coefficients are its own: of the same law, numbers and place, found anew at the same
 * changes. Growth and rest of a population are such.
 */
function twinsOf(instances: readonly Instance[]): Int32Array {
  const known = new Map<Process['coefficients'], Map<string, number>>();
  return Int32Array.from(instances, ({ process, values, vessel, cohort, batch, doser, feed }, j) => {
    const { coefficients, salted, throughFlow } = process;
    const alike = known.get(coefficients) ?? new Map<string, number>();
    known.set(coefficients, alike);
    const place = [salted, throughFlow, vessel, cohort, batch, doser, feed].join();
    const twin = alike.get(place) ?? j;
    alike.set(place, twin);
    return instances[twin].values === values ? twin : j;
  });
}

/** Sets the coefficients of a regime, but only of those instances whose conditions have changed. */
export function openCoefficients(model: Model, regime: Regime) {
  const { instances } = model;
  const dosers = model.scenario.dosers ?? [];
  const plain = scopeTo(model.parameters, {});
  const vesselCount = model.layout.vessels.length;
  const constantsOf = Array.from({ length: vesselCount }, () => openAcidBase(plain));
  const pressure = pressureOver(model);
  const twins = twinsOf(instances);
  const last = newestOf(vesselCount);
  const [lastFed, lastShare, lastMost, lastLight, lastBearing] = Array.from({ length: 5 }, () =>
    newest(instances.length),
  );
  const [changed, salted, flowed] = Array.from({ length: 3 }, () => new Uint8Array(vesselCount));
  return function refresh(
    day: Day,
    aeration: ArrayLike<number>,
    inflow: ArrayLike<number>,
    offers: readonly Offer[],
    feeds: readonly string[],
    dosing: readonly boolean[],
  ): void {
    /** Found anew, or as its twin's were. */
    const found = (j: number, offer: Offer, most: number): ArrayLike<number> => {
      if (twins[j] !== j) return regime.coefficients[twins[j]];
      const { process, values, vessel, batch, doser = -1 } = instances[j];
      const [air, flow, rise] = [aeration[vessel], inflow[vessel], regime.slope[vessel]];
      const conditions = conditionsAt(model, vessel, day, air, flow, batch, offer, pressure, rise);
      return process.coefficients(values, doser < 0 ? conditions : { ...conditions, ...dosers[doser], most });
    };
    for (let vessel = 0; vessel < vesselCount; vessel++) {
      changed[vessel] = take(last.temperature, vessel, day.temperature[vessel]) ? 1 : 0;
      salted[vessel] = take(last.ionic, vessel, day.ionic[vessel]) ? 1 : 0;
      if (salted[vessel] === 1 || changed[vessel] === 1)
        regime.constants[vessel] = constantsOf[vessel](day.temperature[vessel], day.ionic[vessel]);
      if (take(last.air, vessel, day.air[vessel])) changed[vessel] = 1;
      if (day.carbonDioxide !== undefined && take(last.carbonDioxide, vessel, day.carbonDioxide))
        changed[vessel] = 1;
      if (take(last.aeration, vessel, aeration[vessel])) changed[vessel] = 1;
      flowed[vessel] = take(last.inflow, vessel, inflow[vessel]) ? 1 : 0;
      if (take(last.rise, vessel, regime.slope[vessel])) flowed[vessel] = 1;
    }
    for (let j = 0; j < instances.length; j++) {
      const { process, vessel, cohort, batch, doser = -1, feed } = instances[j];
      let stale =
        changed[vessel] === 1 ||
        (salted[vessel] === 1 && process.salted === true) ||
        (flowed[vessel] === 1 && process.throughFlow === true);
      let offer = nothing;
      if (cohort >= 0) {
        if (feed === undefined || feed === feeds[cohort]) offer = offers[cohort];
        if (take(lastFed, j, offer.fed)) stale = true;
        if (take(lastShare, j, offer.share)) stale = true;
      }
      const most = doser >= 0 && dosing[doser] ? dosers[doser].most / dosers[doser].products.length : 0;
      if (doser >= 0 && take(lastMost, j, most)) stale = true;
      if (batch >= 0 && take(lastLight, j, day.light[model.layout.batches[batch].planting])) stale = true;
      if (batch >= 0 && take(lastBearing, j, day.bearing[batch])) stale = true;
      if (!stale) continue;
      const numbers = found(j, offer, most);
      const into = regime.coefficients[j];
      for (let i = 0; i < into.length; i++) into[i] = numbers[i];
    }
  };
}

/** Last values, none yet. */
function newest(size: number): Float64Array {
  return new Float64Array(size).fill(Number.NaN);
}

/** What the vessels were last at, none yet. */
function newestOf(vesselCount: number) {
  return {
    temperature: newest(vesselCount),
    ionic: newest(vesselCount),
    air: newest(vesselCount),
    carbonDioxide: newest(vesselCount),
    aeration: newest(vesselCount),
    inflow: newest(vesselCount),
    rise: newest(vesselCount),
  };
}

/** Notes a value; whether it is another than before. */
function take(last: Float64Array, index: number, value: number): boolean {
  if (last[index] === value) return false;
  last[index] = value;
  return true;
}

/** Pressure of the air over a system, atm. */
function pressureOver({ parameters, scenario: { altitude = 0 } }: Model): number {
  return pressureShare(parameters, altitude);
}

type Writable<T> = { -readonly [K in keyof T]: T[K] };

/** Conditions at a place. A bed that drains by its outlet and is filled again meets the air of the room that water takes. */
export function conditionsAt(
  model: Model,
  index: number,
  day: Pick<Day, 'temperature' | 'air' | 'light' | 'bearing' | 'ionic' | 'carbonDioxide'>,
  aeration: number,
  inflow: number,
  batch: number,
  { fed, share, pace = 1 }: Offer = nothing,
  pressure = pressureOver(model),
  rise = 0,
): Conditions {
  const { vessels } = model.scenario;
  const vessel = vessels[index];
  const conditions: Writable<Conditions> = {
    temperature: day.temperature[index],
    air: day.air[index],
    volume: vessel.volume,
    surface: vessel.surface,
    open: vessel.open,
    floor: vessel.floor,
    capture: vessel.capture,
    flooded: vessel.flooded ?? (vessel.drain === undefined ? 0 : Math.max(0, rise)),
    aeration,
    airShare: vessel.airShare ?? 0,
    pressure,
    inflow,
    fed,
    fedShare: share,
    pace,
    area: batch < 0 ? 0 : model.layout.batches[batch].area,
    bearing: batch < 0 ? 0 : day.bearing[batch],
    ionic: day.ionic[index],
    light: batch < 0 ? 0 : day.light[model.layout.batches[batch].planting],
    ...noDoser,
  };
  if (day.carbonDioxide !== undefined) conditions.carbonDioxide = day.carbonDioxide;
  return conditions;
}
