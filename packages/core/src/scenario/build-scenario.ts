// Reads numbers as: scenario built in code
import { monthOf } from '../base/calendar.js';
import { carbonFromPh } from '../chemistry/acid-base.js';
import { oxygenSaturation } from '../chemistry/gases.js';
import { openIonicStrength } from '../chemistry/ions.js';
import { createParameters, type Parameters } from '../library/parameters.js';
import type {
  Cohort,
  DailyValue,
  Planting,
  Ration,
  Scenario,
  StartVessel,
  StartWater,
  Vessel,
} from './scenario.js';
import { valueInMonth } from './value-on.js';

/** A number for all days, or a value by month or day. */
export type Daily = number | DailyValue;

/**
 * Water by what a test kit reads: `pH`, and in mg/L `ammonia`, `nitrite` and `nitrate` (as N), `chloride`, `oxygen` and
 * suspended `solids` (beside them `refractory`, those that hardly break down), `dissolved` organic matter (COD) and
 * `organic-nitrogen` (as N); `calcium` in mmol/L.
 */
export interface WaterGiven extends Partial<Omit<StartWater, 'alkalinity' | 'carbon'>> {
  readonly pH: number;
  /** meq/L. */
  readonly alkalinity: number;
}

/** A vessel and what it holds at the start. What is left out: no surface, floor, open water, aeration; full, without life. */
export interface VesselGiven extends Partial<
  Omit<Vessel, 'temperature' | 'name' | 'volume'> & Omit<StartVessel, 'vessel' | 'water' | 'volume'>
> {
  readonly name: string;
  /** m3 at the standpipe. */
  readonly volume: number;
  /** degC. */
  readonly temperature: Daily;
  readonly water: WaterGiven;
  /** What stands in it at the start, m3; absent: it is full. */
  readonly filled?: number;
}

/** A cohort of fish; its ration as a share of what they weigh, d-1, or in any form; its feed by name. */
export interface CohortGiven extends Omit<Cohort, 'ration' | 'feed'> {
  /** A share of what the fish weigh, d-1, or any other form. */
  readonly ration: number | Ration;
  readonly feed: string | Cohort['feed'];
}

/** A planting: one batch, planted anew at the start and again at each harvest, unless said otherwise. */
export type PlantingGiven = Omit<Planting, 'batches' | 'after' | 'start' | 'age'> &
  Partial<Pick<Planting, 'batches' | 'after' | 'start' | 'age'>>;

/** A scenario by what cannot be left out; everything else is absent, or as a field says. */
export interface ScenarioGiven extends Partial<
  Omit<Scenario, 'days' | 'vessels' | 'fish' | 'plantings' | 'et0' | 'air' | 'start'>
> {
  /** Length, d. */
  readonly days: number;
  /** The last is the reservoir, unless `reservoir` names another. */
  readonly vessels: readonly VesselGiven[];
  readonly fish?: readonly CohortGiven[];
  readonly plantings?: readonly PlantingGiven[];
  /** Reference evapotranspiration, m d-1; absent: none. */
  readonly et0?: Daily;
  /** Air temperature, degC; absent: that of the water. */
  readonly air?: Daily;
}

const daily = (value: Daily): DailyValue => (typeof value === 'number' ? { kind: 'constant', value } : value);

/**
 * Water as it is held, from what a test kit reads: its inorganic carbon follows from pH and alkalinity, and it holds as
 * much oxygen as air at the sea, unless said. Nitrogen, solids and chloride are 0 unless said, calcium goes with
 * alkalinity.
 * @param temperature degC
 * @param parameters the numbers of the tables; absent: ours
 */
export function startWater(
  { pH, alkalinity, ...given }: WaterGiven,
  temperature: number,
  parameters: Parameters = createParameters(),
): StartWater {
  const none = { ammonia: 0, nitrite: 0, nitrate: 0, solids: 0, chloride: 0 };
  const calcium = given.calcium ?? alkalinity * parameters.value('water.calcium-share');
  const rest = { ...none, ...given, calcium };
  const ionic = openIonicStrength(parameters)({ ...rest, alkalinity });
  return {
    ...rest,
    alkalinity,
    carbon: carbonFromPh(parameters, alkalinity, pH, rest.ammonia, temperature, ionic),
    oxygen: given.oxygen ?? oxygenSaturation(parameters, temperature),
  };
}

function startOf(given: VesselGiven, startDate: string, parameters: Parameters): StartVessel {
  const { name, volume, filled = volume, water, temperature } = given;
  const { aob = 0, nob = 0, settled = 0, settledRefractory, grownAt, heterotrophs } = given;
  return {
    ...{ vessel: name, volume: filled, aob, nob, settled },
    water: startWater(water, valueInMonth(daily(temperature), monthOf(startDate, 0), 0), parameters),
    ...(grownAt !== undefined && { grownAt }),
    ...(settledRefractory !== undefined && { settledRefractory }),
    ...(heterotrophs !== undefined && { heterotrophs }),
  };
}

function vesselOf(given: VesselGiven): Vessel {
  const { name, volume, temperature, airShare, drain } = given;
  const { kind = 'vessel', surface = 0, floor = 0, open = 0, covered = 0 } = given;
  const { aeration = 0, capture = 0, leak = 0, exchange = 0 } = given;
  return {
    ...{ name, kind, volume, surface, floor, open, covered, aeration, capture, leak, exchange },
    temperature: daily(temperature),
    ...(airShare !== undefined && { airShare }),
    ...(drain !== undefined && { drain }),
  };
}

function feedOf(feed: CohortGiven['feed'], parameters: Parameters): Cohort['feed'] {
  if (typeof feed !== 'string') return feed;
  const id = `feed.${feed}.protein`;
  // A feed that there is not is refused with the others, by name.
  return { name: feed, protein: parameters.has(id) ? parameters.value(id) : 0 };
}

/**
 * A whole scenario from what cannot be left out: numbers in place of daily values, water by pH and alkalinity, feeds by
 * name. Nothing is checked here: `compileModel` does, with every fault at its path.
 */
export function buildScenario({
  vessels,
  fish: cohorts = [],
  plantings = [],
  ...given
}: ScenarioGiven): Scenario {
  const parameters = createParameters(given.overrides);
  const { et0 = 0, air, startDate = '2026-01-01', ...rest } = given;
  return {
    ...{ title: 'a system', note: '', every: 1, startDate, seed: 1 },
    ...{ waters: [], pumps: [], flows: [], actions: [], rules: [], overrides: [] },
    reservoir: vessels.at(-1)?.name ?? '',
    ...rest,
    et0: daily(et0),
    ...(air !== undefined && { air: daily(air) }),
    vessels: vessels.map(vesselOf),
    start: vessels.map((vessel) => startOf(vessel, startDate, parameters)),
    fish: cohorts.map(({ ration, feed, ...cohort }) => ({
      ...cohort,
      ration: typeof ration === 'number' ? { kind: 'share', perDay: ration } : ration,
      feed: feedOf(feed, parameters),
    })),
    plantings: plantings.map((planting) => ({
      ...{ batches: 1, after: 'replant', start: 'new', age: 0 },
      ...planting,
    })),
  };
}
