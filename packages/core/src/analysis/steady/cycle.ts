import { InputError } from '../../base/faults.js';
import { INSTANT } from '../../base/instant.js';
import { acidBaseConstants } from '../../chemistry/acid-base.js';
import { ownInWater, waterState } from '../../model/layout.js';
import type { Model, Regime } from '../../model/model.js';
import { openRates } from '../../model/rates.js';
import { openVesselIons } from '../../model/water-chemistry.js';
import { waterComponents } from '../../processes/components.js';
import type { Conditions } from '../../processes/process.js';
import { type CropClock, type CropStand, openCropClock } from '../../run/crop-clock.js';
import { conditionsAt, type Day } from '../../run/forcing.js';
import { type Hydraulics, openHydraulics, type WaterEvent, type WaterState } from '../../run/hydraulics.js';
import { Segments } from '../../run/segments.js';
import { startState } from '../../run/start.js';
import type { Scenario } from '../../scenario/scenario.js';
import type { RateSystem } from '../../solve/contract.js';

/** The longest cycle that is looked for, d. */
const LONGEST_PERIOD = 28;

const whole = (turns: number): boolean => Math.abs(turns - Math.round(turns)) < 1e-9 * Math.max(1, turns);

/**
 * The fewest whole days after which every pump timer, ration of the day and ration of the week begins anew.
 * @throws InputError where timers need more than four weeks, and where a bed drains by a siphon, which keeps no time
 */
function cyclePeriod(scenario: Scenario): number {
  const siphons = scenario.vessels.filter(({ drain }) => drain?.by === 'siphon');
  if (siphons.length > 0)
    throw new InputError([
      {
        problem: 'a siphon starts when its bed is full and not by the clock, so no day repeats itself',
        got: siphons.map(({ name }) => name).join(', '),
        expected: '`flood` in place of `drain`: what it drains each time, and how often, in the mean',
      },
    ]);
  const timers = scenario.pumps.flatMap(({ timer }) => (timer === undefined ? [] : [timer]));
  const weekly = (scenario.topUp?.sources ?? []).some(
    (source) => source.kind === 'mains' && Number.isFinite(source.weeklyCap ?? Infinity),
  );
  for (let days = weekly ? 7 : 1; days <= LONGEST_PERIOD; days += weekly ? 7 : 1) {
    if (timers.every(({ on, off }) => whole(days / (on + off)))) return days;
  }
  throw new InputError([
    {
      problem: 'pump timers do not come round together, so no day repeats itself',
      got: timers.map(({ on, off }) => `a clock of ${on + off} d`).join(', '),
      expected: `clocks whose turns fill a day, or at most ${LONGEST_PERIOD} days`,
    },
  ]);
}

/** Ages at which a crop's cycle is looked at. */
const AGES = 200;
const HALVINGS = 50;

/** Mean over the cycle of a crop, from planting to harvest, of what follows from its age; 0 where nothing is planted. */
function meanOverCycle(
  model: Model,
  crops: CropClock,
  batch: number,
  of: (batch: number, time: number) => number,
): number {
  const planted = crops.planted[batch];
  if (Number.isNaN(planted)) return 0;
  const { harvest } = model.scenario.plantings[model.layout.batches[batch].planting];
  let total = 0;
  for (let i = 0; i < AGES; i++) total += of(batch, planted + ((i + 0.5) / AGES) * harvest);
  return total / AGES;
}

/** A clock for a bed whose crops are cut and planted in turn: transpiration and the share to fruit are means over the cycle of each. */
function meanClock(model: Model, crops: CropClock): CropClock {
  const means = (of: (batch: number, time: number) => number): readonly number[] =>
    model.layout.batches.map((_, batch) => meanOverCycle(model, crops, batch, of));
  const coefficients = means((batch, time) => crops.coefficient(batch, time));
  const bearings = means((batch, time) => crops.bearing(batch, time));
  return { ...crops, coefficient: (batch) => coefficients[batch], bearing: (batch) => bearings[batch] };
}

/**
 * The stand of a batch that takes up as much nitrogen a day as it does in the mean from planting to harvest, grown
 * undisturbed: on the way up, before its uptake is greatest.
 */
export function meanStand(model: Model, crops: CropClock, batch: number, conditions: Conditions): CropStand {
  const { harvest } = model.scenario.plantings[model.layout.batches[batch].planting];
  const nitrogen = (age: number): number => crops.stand(batch, age, conditions).taken;
  const step = harvest / AGES;
  const uptake = (age: number): number => (nitrogen(age + step / 2) - nitrogen(age - step / 2)) / step;
  const mean = (nitrogen(harvest) - nitrogen(0)) / harvest;
  const ages = Array.from({ length: AGES }, (_, i) => (i + 0.5) * step);
  const top = ages.find((age) => uptake(age) >= mean) ?? harvest;
  let low = 0;
  let high = top;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (uptake(middle) < mean) low = middle;
    else high = middle;
  }
  return crops.stand(batch, high, conditions);
}

/** Water that does not repeat itself after so many days never settles. */
const LONGEST = 3000;
/** Volumes are the same again when they differ by less than this share of the vessel. */
const SAME = 1e-9;

/** Segments of one cycle that count as chattering. */
const CHATTER = 20_000;

/** A segment of constant forcing within a cycle. */
export interface CycleSegment {
  /** d from the start of the cycle. */
  readonly from: number;
  readonly to: number;
  readonly volume: Float64Array;
  readonly slope: Float64Array;
  readonly flow: Float64Array;
  readonly coefficients: readonly Float64Array[];
  /** Feed offered, evapotranspiration (m3 d-1) and water in the rain tank. */
  readonly fed: Float64Array;
  readonly rain: number;
}

/** Forcing that repeats itself: the rates of the model and one cycle of segments. */
export interface Cycle {
  readonly system: RateSystem;
  readonly regime: Regime;
  /** d. */
  readonly period: number;
  /** One segment where nothing changes within the cycle. */
  readonly segments: readonly CycleSegment[];
  readonly constant: boolean;
  /** State at the start of the scenario, spread over the volumes at the start of the cycle. */
  readonly start: Float64Array;
  readonly temperature: Float64Array;
  /** Ionic strength of each vessel, mol L-1, by which the constants of the regime were last set (`setIons`). */
  readonly ionic: Float64Array;
  /** The morning of the cycle. */
  readonly day: Day;
  /** What the water did on the way to the cycle, such as a pump that sucked air. */
  readonly events: readonly { readonly kind: string; readonly place: string }[];
}

/** Puts a segment into force. */
export function enter(regime: Regime, segment: CycleSegment): void {
  regime.time = segment.from;
  regime.volume.set(segment.volume);
  regime.slope.set(segment.slope);
  regime.flow.set(segment.flow);
  segment.coefficients.forEach((values, j) => {
    regime.coefficients[j].set(values);
  });
}

/** Ionic strength of each vessel in a state at the start of a cycle, mol L-1. */
export function ionsIn(model: Model, { segments }: Cycle, y: Float64Array): Float64Array {
  const ionsOf = openVesselIons(model.parameters);
  return segments[0].volume.map((volume, vessel) => ionsOf(y, volume, vessel));
}

/**
 * Sets the ionic strength of each vessel of a cycle, mol L-1, and with it the constants of acids and bases, and what salt does to
 * crops and nitrifiers.
 */
export function setIons(
  model: Model,
  { regime, ionic, temperature, segments, day }: Cycle,
  ions: Float64Array,
): void {
  ionic.set(ions);
  ionic.forEach((now, vessel) => {
    regime.constants[vessel] = acidBaseConstants(model.parameters, temperature[vessel], now);
  });
  model.instances.forEach(({ process, values, vessel, batch }, j) => {
    if (!process.salted) return;
    const conditions = conditionsAt(model, vessel, { ...day, ionic }, 0, 0, batch);
    const coefficients = process.coefficients(values, conditions);
    regime.coefficients[j].set(coefficients);
    for (const segment of segments) segment.coefficients[j].set(coefficients);
  });
}

/** Equal but for rounding. */
const equal = (a: ArrayLike<number>, b: ArrayLike<number>): boolean => {
  for (let i = 0; i < a.length; i++)
    if (Math.abs(a[i] - b[i]) > SAME * Math.max(Math.abs(a[i]), Math.abs(b[i]))) return false;
  return true;
};

function isConstant(segments: readonly CycleSegment[]): boolean {
  const [first] = segments;
  return segments.every(
    ({ slope, volume, flow, coefficients }) =>
      slope.every((value, vessel) => Math.abs(value) <= SAME * volume[vessel]) &&
      equal(flow, first.flow) &&
      coefficients.every((values, j) => equal(values, first.coefficients[j])),
  );
}

function neverSettles(model: Model, water: WaterState, before: Float64Array, days: number): InputError {
  const faults = model.layout.vessels
    .map((name, vessel) => ({ name, change: (water.volume[vessel] - before[vessel]) / days }))
    .filter(({ change }, vessel) => Math.abs(change) > SAME * model.scenario.vessels[vessel].volume);
  const litres = (volume: number): string => `${Number((volume * 1000).toPrecision(3))} L/d`;
  return new InputError([
    {
      problem: 'the water never settles, so no steady state can be',
      got:
        faults.length === 0
          ? 'the rain tank changes from day to day'
          : faults.map(({ name, change }) => `${name} changes by ${litres(change)}`).join(', '),
      expected: 'a top-up that makes good what the water loses',
    },
  ]);
}

function chatters(): InputError {
  return new InputError([
    {
      problem: 'the water switches thousands of times a day, so no steady state can be found',
      expected: 'a pump whose restart level is well above its inlet',
    },
  ]);
}

/** The forcing of a day of weather at work on water that has not yet come to repeat itself. */
interface Forcing {
  readonly model: Model;
  readonly regime: Regime;
  readonly hydraulics: Hydraulics;
  readonly segments: Segments;
  /** Feed offered to each cohort, g d-1. */
  readonly fed: Float64Array;
  /** What the water did so far, by kind and place. */
  readonly events: Map<string, WaterEvent>;
}

/** Lets the water run through one cycle from a day on. */
function runCycle(
  { regime, hydraulics, segments, fed, events }: Forcing,
  first: number,
  period: number,
): CycleSegment[] {
  const { water } = hydraulics;
  const made: CycleSegment[] = [];
  const end = first + period;
  let time = first;
  hydraulics.newDay(time);
  while (time < end) {
    for (const event of segments.settle(time)) events.set(`${event.kind} ${event.place}`, event);
    const jump = Math.min(end, Math.floor(time + INSTANT) + 1, segments.nextSwitch(time));
    const mark = time + hydraulics.untilMark();
    const to = Math.min(mark, jump);
    made.push({
      from: time - first,
      to: to - first,
      volume: Float64Array.from(water.volume),
      slope: Float64Array.from(water.slope),
      flow: Float64Array.from(water.flow),
      coefficients: regime.coefficients.map((values) => values.slice()),
      fed,
      rain: water.rain,
    });
    if (made.length > CHATTER) throw chatters();
    hydraulics.advance(mark < jump ? hydraulics.untilMark() : to - time);
    time = to;
    if (time < end && Math.abs(time - Math.round(time)) < INSTANT) {
      time = Math.round(time);
      hydraulics.newDay(time);
    }
  }
  return made;
}

/** Lets the water run until its volumes repeat themselves, and gives the cycle in which they did. */
function untilRepeated(forcing: Forcing, period: number): readonly CycleSegment[] {
  const { water } = forcing.hydraulics;
  const { scenario } = forcing.model;
  let before = Float64Array.from(water.volume);
  for (let first = 0; first < LONGEST; first += period) {
    before = Float64Array.from(water.volume);
    const { rain } = water;
    const made = runCycle(forcing, first, period);
    const again =
      before.every(
        (volume, vessel) => Math.abs(water.volume[vessel] - volume) <= SAME * scenario.vessels[vessel].volume,
      ) && Math.abs(water.rain - rain) <= SAME * (scenario.rainTank?.capacity ?? 1);
    if (again) return made;
  }
  throw neverSettles(forcing.model, water, before, period);
}

/** Puts the mean stand of each batch that is planted in place of the one at the start. */
function standAtMean(model: Model, clock: CropClock, day: Day, start: Float64Array): void {
  model.layout.batches.forEach((batch, index) => {
    if (Number.isNaN(clock.planted[index])) return;
    const conditions = conditionsAt(model, batch.vessel, day, 0, 0, index);
    const stand = meanStand(model, clock, index, conditions);
    start[batch.mass] = stand.mass;
    start[batch.nitrogen] = stand.nitrogen;
    if (batch.fruit >= 0) start[batch.fruit] = stand.fruit;
  });
}

/**
 * The forcing of one day of weather, repeated: no actions, no rules, fish at their stock at the start, crops at their
 * age at the start or at the mean of their cycle. The water runs until its volumes repeat.
 * @throws InputError when the water never repeats itself, or pump timers do not within weeks
 */
export function openCycle(model: Model, weatherDay: number, cropsAre: 'mean' | 'as-at-start'): Cycle {
  const { scenario, layout } = model;
  const { system, regime } = openRates(model);
  const { y: start, water, operation, day, planted } = startState(model, weatherDay);
  const hydraulics = openHydraulics(model, water);
  const clock = openCropClock(model, planted);
  if (cropsAre === 'mean') standAtMean(model, clock, day, start);
  const crops = cropsAre === 'mean' ? meanClock(model, clock) : clock;
  const filled = Float64Array.from(water.volume);
  const segments = new Segments({ model, regime, operation, crops, hydraulics, day });
  segments.morning(weatherDay, 0, start);
  const period = cyclePeriod(scenario);
  const events = new Map<string, WaterEvent>();
  const fed = Float64Array.from(
    day.offered,
    (offer, cohort) => offer.fed + offer.share * start[layout.fish[cohort].mass],
  );
  const made = untilRepeated({ model, regime, hydraulics, segments, fed, events }, period);
  const constant = isConstant(made);
  // Concentrations at the start stay what they are; amounts follow the volumes of the cycle.
  for (let vessel = 0; vessel < layout.vessels.length; vessel++) {
    for (const component of waterComponents) {
      start[waterState(vessel, component)] *= made[0].volume[vessel] / filled[vessel];
    }
    for (const { states } of ownInWater(layout))
      start[states[vessel]] *= made[0].volume[vessel] / filled[vessel];
  }
  return {
    system,
    regime,
    period,
    constant,
    start,
    segments: constant ? [{ ...made[0], to: period, slope: new Float64Array(layout.vessels.length) }] : made,
    temperature: Float64Array.from(day.temperature),
    ionic: Float64Array.from(day.ionic),
    day,
    events: [...events.values()],
  };
}
