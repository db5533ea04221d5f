import { drawParameters } from '../../packages/core/src/library/parameters.js';
import { names } from '../../packages/core/src/library/names.js';
import type { Values } from '../../packages/core/src/library/values.js';
import { scopeTo } from '../../packages/core/src/model/scope.js';
import type { Conditions, Process, Variable } from '../../packages/core/src/processes/process.js';

/** Draws of the tables as seen from a place with a species, a crop, a feed, a product and lime. */
export function drawnValues(random: () => number): Values {
  const pick = (list: readonly string[]): string => list[Math.floor(random() * list.length)];
  return scopeTo(drawParameters(random), {
    species: pick(names('fish')),
    crop: pick(names('crop').filter((name) => name !== 'general')),
    feed: { name: pick(names('feed')), protein: 0.25 + 0.2 * random() },
    product: pick(names('dose')),
    lime: pick(names('lime')),
  });
}

/** Conditions somewhere in the range of use. */
export function drawnConditions(random: () => number): Conditions {
  const between = (low: number, high: number): number => low + (high - low) * random();
  return {
    temperature: between(5, 35),
    air: between(5, 35),
    volume: between(0.2, 5),
    surface: between(1, 300),
    open: between(0.1, 10),
    floor: between(0.1, 10),
    capture: between(0.05, 0.95),
    aeration: between(1, 300),
    airShare: between(0, 0.1),
    carbonDioxide: between(3e-4, 2e-3),
    pressure: between(0.7, 1),
    inflow: between(1, 100),
    fed: between(1, 500),
    fedShare: between(0.001, 0.05),
    pace: between(1, 12),
    area: between(0.5, 20),
    light: between(0, 60),
    bearing: random() < 0.5 ? 0 : between(0.3, 0.7),
    ionic: between(0, 0.08),
    most: between(1, 100),
    setPoint: between(0.5, 9),
    band: between(1, 4),
    sign: random() < 0.5 ? 1 : -1,
    flooded: between(50, 250),
  };
}

/** Ends of the ranges in which variables move. */
const highest: Readonly<Record<Variable, number>> = {
  tan: 20,
  nitrite: 30,
  nitrate: 300,
  solids: 100,
  refractory: 100,
  dissolved: 50,
  'organic-nitrogen': 10,
  alkalinity: 8,
  carbon: 8,
  oxygen: 12,
  chloride: 500,
  calcium: 4,
  pH: 9,
  ammonia: 3,
  'carbon-dioxide': 1,
  saturation: 4,
  aob: 50,
  nob: 50,
  acclimation: 7,
  awake: 1,
  heterotrophs: 200,
  settled: 2000,
  'settled-refractory': 2000,
  calcite: 50,
  'crop-mass': 5000,
  'crop-nitrogen': 250,
  'fish-mass': 50_000,
  'fish-number': 500,
  'fish-fat': 10_000,
  'fish-dead': 5000,
  'fish-dead-fat': 1000,
};

/**
 * Values of the variables of a process: anywhere in their ranges, or, with `near`, that share of them
 * (pH keeps between 5 and 9, the flank of a film between 3 and 7; a crop keeps nitrogen of 2-6 % of its mass).
 */
export function drawnPoint(process: Process, random: () => number, near = 1): Float64Array {
  const mass = highest['crop-mass'] * random() * near;
  return Float64Array.from(process.reads, (variable) => {
    if (variable === 'pH') return 5 + 4 * random();
    if (variable === 'acclimation') return 3 + 4 * random();
    if (variable === 'crop-mass') return mass;
    if (variable === 'crop-nitrogen') return mass * (0.02 + 0.04 * random());
    return highest[variable] * random() * near;
  });
}
