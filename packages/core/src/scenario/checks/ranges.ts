import {
  aboveZero,
  type Bound,
  countFrom,
  fromZero,
  numberAbove,
  numberFrom,
  shareBound,
  upTo,
} from '../../base/bounds.js';
import type { Dimension } from '../../base/units.js';
import type { Action, Watched } from '../scenario.js';
import { dimensionOf } from '../measurables.js';

/**
 * What the numbers of a system may be, for its file and for a scenario built in code. Names are those of the fields
 * of a scenario.
 */

/** Most of each that one system has; of actions once repeats are written out. */
export const most = {
  vessels: 5000,
  flows: 20_000,
  pumps: 5000,
  waters: 200,
  groups: 5000,
  rules: 1000,
  conditions: 10,
  dosers: 200,
  actions: 100_000,
  outputs: 1_000_000,
  /** Outputs of all vessels: about a gigabyte is kept. */
  values: 2_000_000,
} as const;

/** Longest run, d: a century. */
const longestRun = 36_525;

/** Most fish in a cohort. */
const manyFish = 10_000_000;

/** The run. */
export const runRanges = /* @__PURE__ */ Object.freeze({
  days: numberFrom(0.001, longestRun),
  every: aboveZero('time'),
  seed: countFrom(0, Number.MAX_SAFE_INTEGER),
} as const);

/** Daily values; where `high` is Infinity there is no most. */
export const dailyRanges = /* @__PURE__ */ Object.freeze({
  /** Water can be followed between freezing and what any fish or nitrifier bears. */
  water: { dimension: 'temperature', low: 0, high: 45 },
  air: { dimension: 'temperature', low: -40, high: 60 },
  et0: { dimension: 'depth-rate', low: 0, high: 0.03 },
  /** ET0 after the factor of a greenhouse, which may be any. */
  et0UnderCover: { dimension: 'depth-rate', low: 0, high: Infinity },
  /** That factor, share of ET0 outdoors. */
  greenhouse: { dimension: 'share', low: 0, high: Infinity },
  rain: { dimension: 'depth-rate', low: 0, high: 2 },
  /** Under lamps day and night more than the brightest day outdoors, 65. */
  light: { dimension: 'light', low: 0, high: 150 },
  sunshine: { dimension: 'time', low: 0, high: 1 },
  radiation: { dimension: 'radiation', low: 0, high: 50 },
  /** Of shade cloth: the share of light that it takes. */
  shade: { dimension: 'share', low: 0, high: 1 },
  /** In air: from less than open air holds to more than people bear. */
  carbonDioxide: { dimension: 'mole-share', low: 2e-4, high: 0.02 },
} as const satisfies Readonly<Record<string, { dimension: Dimension; low: number; high: number }>>);

/** Lime laid in a vessel. */
export const limeRanges = /* @__PURE__ */ Object.freeze({ mass: fromZero('mass') } as const);

/** Share of its oxygen that the air of an aeration gives up. */
export const airRanges = /* @__PURE__ */ Object.freeze({ airShare: shareBound() } as const);

/** Draining that is not resolved: mean water, m3 d-1; in a file `drained` each time and `cycles`. */
export const floodedRanges = /* @__PURE__ */ Object.freeze({ flooded: aboveZero('volume-flow') } as const);
export const floodRanges = /* @__PURE__ */ Object.freeze({
  drained: aboveZero('volume'),
  cycles: aboveZero('rate'),
} as const);

/** The place: up to the highest with water to keep fish in, m. */
export const climateRanges = /* @__PURE__ */ Object.freeze({ altitude: numberFrom(0, 9000) } as const);

/** Dosers: `band` in pH or eq m-3. */
export const doserRanges = /* @__PURE__ */ Object.freeze({
  band: numberAbove(Infinity),
  most: aboveZero('mass-flow'),
} as const);

/** Vessels. */
export const vesselRanges = /* @__PURE__ */ Object.freeze({
  volume: aboveZero('volume'),
  surface: fromZero('area'),
  floor: fromZero('area'),
  open: fromZero('area'),
  covered: fromZero('area'),
  aeration: fromZero('rate'),
  capture: shareBound('below-one'),
  leak: fromZero('volume-flow'),
  exchange: fromZero('volume-flow'),
} as const);

/** The lower outlet of a vessel. */
export const drainRanges = /* @__PURE__ */ Object.freeze({
  rate: aboveZero('volume-flow'),
  to: aboveZero('volume'),
} as const);

/** The clock of a pump; `offset` is of a file, which knows nothing from before the run. */
export const timerRanges = /* @__PURE__ */ Object.freeze({
  on: aboveZero('time'),
  off: aboveZero('time'),
  offset: fromZero('time'),
} as const);

/** Pumps. */
export const pumpRanges = /* @__PURE__ */ Object.freeze({
  inlet: fromZero('volume'),
  restart: fromZero('volume'),
} as const);

/** Flows: `rate` of a pumped one, `share` of one by gravity. */
export const flowRanges = /* @__PURE__ */ Object.freeze({
  turnover: aboveZero('rate'),
  rate: aboveZero('volume-flow'),
  share: shareBound(),
} as const);

/** The float valve. */
export const topUpRanges = /* @__PURE__ */ Object.freeze({
  level: aboveZero('volume'),
  rate: aboveZero('volume-flow'),
} as const);

/** Caps of a supply. */
export const capRanges = /* @__PURE__ */ Object.freeze({
  dailyCap: fromZero('volume'),
  weeklyCap: fromZero('volume'),
} as const);

/** The rain tank. */
export const rainTankRanges = /* @__PURE__ */ Object.freeze({
  capacity: aboveZero('volume'),
  volume: fromZero('volume'),
  roof: fromZero('area'),
} as const);

/** Water from outside; without `carbon` in a file, where pH stands in its place. */
export const waterRanges = /* @__PURE__ */ Object.freeze({
  ammonia: fromZero('ammonia'),
  nitrite: fromZero('nitrite'),
  nitrate: fromZero('nitrate'),
  alkalinity: fromZero('alkalinity'),
  carbon: numberFrom(0, Infinity),
  oxygen: fromZero('concentration'),
  chloride: fromZero('concentration'),
  calcium: fromZero('calcium'),
} as const);

/** Water at the start. */
export const startWaterRanges = /* @__PURE__ */ Object.freeze({
  ...waterRanges,
  solids: fromZero('concentration'),
} as const);

/**
 * What a file may write of water: more cannot be meant. A scenario built in code may hold what no water does, as an
 * experiment of thought with food without end; that it is outside what the model knows is told of its runs.
 */
export const writtenWaterRanges = /* @__PURE__ */ Object.freeze({
  ammonia: upTo('ammonia', 5000, 'raw manure and leachate hold less'),
  nitrite: upTo('nitrite', 5000, 'no water of fish or plants holds a thousandth of it'),
  nitrate: upTo('nitrate', 20_000, 'stock solutions for hydroponics hold no more'),
  alkalinity: upTo('alkalinity', 1000, 'a tenth of it is a strong lye'),
  oxygen: upTo('concentration', 500, 'pure oxygen at the pressure of air makes a tenth of it'),
  chloride: upTo('concentration', 220_000, 'water is full of salt there'),
  calcium: upTo('calcium', 7000, 'water is full of salt there'),
  solids: upTo('concentration', 100_000, 'thick sludge holds no more'),
} as const);

/** Organic matter in water at the start that may be absent. */
export const startOrganicRanges = /* @__PURE__ */ Object.freeze({
  refractory: fromZero('concentration'),
  dissolved: fromZero('concentration'),
  'organic-nitrogen': fromZero('concentration'),
} as const);

/** The rest of what a vessel holds at the start. */
export const startRanges = /* @__PURE__ */ Object.freeze({
  volume: aboveZero('volume'),
  aob: shareBound(),
  nob: shareBound(),
  settled: fromZero('mass'),
} as const);

/** What a vessel may hold at the start and may not: settled solids that hardly break down, heterotrophs in g COD per m2. */
export const startBesideRanges = /* @__PURE__ */ Object.freeze({
  settledRefractory: fromZero('mass'),
  heterotrophs: numberFrom(0, 1000),
} as const);

/** pH of the water that a film has grown in. */
export const grownRange = numberFrom(3, 11);

/** Rations: a mass or a share a day, and a row of a table. */
export const rationRanges = /* @__PURE__ */ Object.freeze({
  gramsPerDay: fromZero('mass-flow'),
  perDay: fromZero('share-rate'),
  mass: fromZero('mass'),
} as const);

/** Feeds. */
export const feedRanges = /* @__PURE__ */ Object.freeze({ protein: shareBound() } as const);

/** Cohorts. */
export const cohortRanges = /* @__PURE__ */ Object.freeze({
  number: countFrom(0, manyFish),
  mass: aboveZero('mass'),
  feedConversion: numberAbove(100),
} as const);

/** Most that can be meant, whatever stands beside it: reasons are told with the fault. */
export const absurd = {
  /** g of fish per m3 of water. */
  stocking: 500_000,
  /** g of feed a day per g of fish. */
  ration: 2,
  /** g of one fish. */
  fish: 300_000,
  /** g of a product dosed at once per m3. */
  dose: 200_000,
} as const;

/** Plantings. */
export const plantingRanges = /* @__PURE__ */ Object.freeze({
  area: aboveZero('area'),
  cover: shareBound(),
  batches: countFrom(1, 60),
  harvest: aboveZero('time'),
  age: fromZero('time'),
  picks: aboveZero('time'),
  /** Fresh mass of a seedling in a file, g; dry mass of all in a scenario, g m-2. */
  seedling: aboveZero('mass'),
} as const);

/** Plants set out in the whole area of a planting. */
export const plantsRange = /* @__PURE__ */ countFrom(1, 1e7);

/** Crops that are cut to grow again. */
export const cutRanges = /* @__PURE__ */ Object.freeze({
  every: aboveZero('time'),
  leave: shareBound('below-one'),
} as const);

/** Number of fish where some are meant. */
const someFish = countFrom(1, manyFish);

/** Actions, by kind. */
export const actionRanges = /* @__PURE__ */ Object.freeze({
  stock: { number: someFish, mass: aboveZero('mass') },
  'harvest-fish': { share: shareBound(), number: someFish },
  'lose-fish': { share: shareBound(), number: someFish },
  grade: { share: shareBound(), relativeMass: numberFrom(0.1, 10) },
  plant: {},
  'harvest-crop': {},
  'leave-empty': {},
  feed: { factor: numberFrom(0, 10) },
  'top-up': capRanges,
  'source-water': {},
  'change-water': { volume: aboveZero('volume'), share: shareBound() },
  'cart-water': { volume: aboveZero('volume') },
  dose: { mass: aboveZero('mass') },
  pump: {},
  aeration: {},
  control: {},
  clean: { biofilm: shareBound(), solids: shareBound(), stuns: shareBound() },
  medicate: { kills: shareBound(), stuns: shareBound() },
  'drain-solids': { share: shareBound(), water: fromZero('volume') },
} as const satisfies Readonly<Record<Action['kind'], Readonly<Record<string, Bound>>>>);

/** Rules: `wait` where one is written (0 in a scenario: none), and `most`. */
export const ruleRanges = /* @__PURE__ */ Object.freeze({
  wait: aboveZero('time'),
  most: countFrom(1, 100_000),
} as const);

/** Test kits: whole days between readings, and steps of the scale. */
export const kitRanges = /* @__PURE__ */ Object.freeze({
  every: countFrom(1, Infinity),
  resolution: numberAbove(Infinity),
} as const);

/** Errors of a test kit: a share of the reading, or in its unit. */
export const errorRanges = /* @__PURE__ */ Object.freeze({
  relative: numberAbove(1),
  absolute: numberAbove(Infinity),
} as const);

/** A state saved by a run. */
export const savedRanges = /* @__PURE__ */ Object.freeze({
  volume: aboveZero('volume'),
  rainTank: fromZero('volume'),
  age: fromZero('time'),
  time: fromZero('time'),
  /** The day that a run goes on from, where it is another. */
  day: countFrom(0, longestRun),
  factor: numberFrom(0, Infinity),
  amount: numberFrom(-Infinity, Infinity),
} as const);

/** pH as it may be asked for. */
const phScale = numberFrom(0, 14);

/** A level of something that is read. */
export function levelRange(read: Watched): Bound {
  const dimension = dimensionOf[read];
  return dimension === undefined ? phScale : fromZero(dimension);
}

/** Words that a field may hold. */
export const words = {
  vesselKind: [
    'fish-tank',
    'settler',
    'screen',
    'biofilter',
    'media-bed',
    'raft-bed',
    'channel',
    'sump',
    'vessel',
  ],
  drainedBy: ['outlet', 'siphon'],
  afterHarvest: ['replant', 'empty'],
  plantingStart: ['staggered', 'new', 'empty'],
  deadFish: ['left'],
  cartedInto: ['rain-tank', 'reservoir'],
} as const;
