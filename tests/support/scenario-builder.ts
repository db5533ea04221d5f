import { carbonFromPh } from '../../packages/core/src/chemistry/acid-base.js';
import { openIonicStrength } from '../../packages/core/src/chemistry/ions.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import type {
  Cohort,
  DailyValue,
  Flow,
  Planting,
  Scenario,
  SourceWater,
  StartVessel,
  StartWater,
  Vessel,
} from '../../packages/core/src/scenario/scenario.js';

/** A value that never changes. */
export function constant(value: number): DailyValue {
  return { kind: 'constant', value };
}

const parameters = createParameters();
const ionsOf = openIonicStrength(parameters);

/** Water of a given alkalinity (meq/L) and pH at 20 degC, without nitrogen unless stated. */
export function stillWater(alkalinity: number, pH: number, other: Partial<StartWater> = {}): StartWater {
  const water = {
    ammonia: 0,
    nitrite: 0,
    nitrate: 0,
    solids: 0,
    alkalinity,
    oxygen: 8,
    chloride: 50,
    calcium: 0,
    ...other,
  };
  const carbon = carbonFromPh(parameters, alkalinity, pH, water.ammonia, 20, ionsOf(water));
  return { carbon, ...water };
}

/** A source water. */
export function sourceWater(name: string, other: Partial<StartWater> = {}): SourceWater {
  const { ammonia, nitrite, nitrate, alkalinity, carbon, oxygen, chloride, calcium } = stillWater(
    2,
    7.8,
    other,
  );
  return { name, ammonia, nitrite, nitrate, alkalinity, carbon, oxygen, chloride, calcium };
}

/** A bare vessel at 20 degC: no surface, no floor, closed to the air. A channel by name: in it any area of plants may root. */
export function vessel(name: string, volume: number, other: Partial<Vessel> = {}): Vessel {
  return {
    name,
    kind: 'channel',
    volume,
    surface: 0,
    floor: 0,
    open: 0,
    covered: 0,
    aeration: 0,
    capture: 0,
    temperature: constant(20),
    leak: 0,
    exchange: 0,
    ...other,
  };
}

/** Start of a vessel: full, of still water, without biofilm or sludge. */
export function startOf(vessel: Vessel, other: Partial<StartVessel> = {}): StartVessel {
  return {
    vessel: vessel.name,
    water: stillWater(2, 7.5),
    volume: vessel.volume,
    aob: 0,
    nob: 0,
    settled: 0,
    ...other,
  };
}

/** A scenario of given vessels, the last of them the reservoir; everything else absent unless stated. */
export function scenarioOf(vessels: readonly Vessel[], other: Partial<Scenario> = {}): Scenario {
  return {
    title: 'test',
    note: '',
    days: 10,
    every: 1,
    startDate: '2027-03-01',
    et0: constant(0),
    waters: [sourceWater('mains')],
    vessels,
    reservoir: vessels[vessels.length - 1].name,
    pumps: [],
    flows: [],
    fish: [],
    plantings: [],
    start: vessels.map((vessel) => startOf(vessel)),
    actions: [],
    rules: [],
    seed: 1,
    overrides: [],
    ...other,
  };
}

/** A float that keeps a volume with mains water, as fast as need be. */
export function float(level: number, rate = 1000): NonNullable<Scenario['topUp']> {
  return { level, rate, sources: [{ kind: 'mains', water: 'mains', dailyCap: Infinity }] };
}

/** A pump named `main` that hardly ever trips. */
export const mainPump = { name: 'main', inlet: 0.05, restart: 0.1 };

/** Water pumped by the main pump, m3 d-1. */
export function pumped(from: string, to: string, rate: number): Flow {
  return { kind: 'pumped', from, to, pump: 'main', rate };
}

/** Water that runs on by gravity. */
export function gravity(from: string, to: string, share = 1): Flow {
  return { kind: 'gravity', from, to, share };
}

/** Nile tilapia on a 32 % feed. */
export function tilapia(name: string, vessel: string, other: Partial<Cohort> = {}): Cohort {
  return {
    name,
    vessel,
    species: 'nile-tilapia',
    number: 100,
    mass: 100,
    ration: { kind: 'share', perDay: 0.015 },
    feed: { name: 'grower-32', protein: 0.32 },
    ...other,
  };
}

/** A planting of one batch, new at the start, never ripe in a short run. */
export function planting(
  name: string,
  vessel: string,
  crop: string,
  area: number,
  other: Partial<Planting> = {},
): Planting {
  return {
    name,
    vessel,
    crop,
    area,
    batches: 1,
    harvest: 1000,
    after: 'replant',
    start: 'new',
    age: 0,
    ...other,
  };
}
