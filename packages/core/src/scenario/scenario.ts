/**
 * The Scenario: what a file says, checked and in one unit system.
 *
 * Units inside Leat: day, m, m2, m3, g, mol, eq, degC; concentrations g m-3 (= mg/L), nitrogen
 * species as g N, alkalinity eq m-3 (= meq/L), inorganic carbon mol m-3 (= mmol/L); shares 0..1.
 */
import type { Override } from '../library/own-row.js';
import type { SavedState } from './saved-state.js';
import type { Action, TimedAction } from './action.js';
import type { Feed, Ration, SourceWater } from './supplies.js';
import type { Doser } from './doser.js';
import type { Prices } from './prices.js';

export type { Action, Doser, Prices, TimedAction };

export type { Feed, Ration, SourceWater } from './supplies.js';

/** A value for each day: one `value` for all, twelve `values` by month from January, or `values` by day of the run. */
export type DailyValue =
  | { readonly kind: 'constant'; readonly value: number }
  | { readonly kind: 'monthly'; readonly values: readonly number[] }
  | { readonly kind: 'daily'; readonly values: readonly number[] };

/** What a vessel is for. The kind gives defaults to what the file leaves out; the processes are the same in all. */
export type VesselKind =
  'fish-tank' | 'settler' | 'screen' | 'biofilter' | 'media-bed' | 'raft-bed' | 'channel' | 'sump' | 'vessel';

/** A well-mixed vessel. */
export interface Vessel {
  readonly name: string;
  readonly kind: VesselKind;
  /** Water volume at the standpipe (for the reservoir: its overflow), m3. */
  readonly volume: number;
  /** Wetted surface for biofilm, m2: walls, media, rafts and roots. */
  readonly surface: number;
  /** Floor on which solids settle, m2 (0: none settle). */
  readonly floor: number;
  /** Open water surface, m2: evaporates and exchanges gas. */
  readonly open: number;
  /** Covered water or wet media surface, m2: evaporates little. */
  readonly covered: number;
  /** Gas transfer by aeration, kLa for oxygen at 20 degC, d-1, on top of the open surface. */
  readonly aeration: number;
  /** Share of its oxygen that its air gives up at 20 degC in water without any, 0..1; absent: 0, as of open air. */
  readonly airShare?: number;
  /** Share of incoming suspended solids caught, 0..<1. */
  readonly capture: number;
  /** Lime laid in: a `kind` of the library, and its `mass` at the start, g of calcium carbonate; absent: none. */
  readonly lime?: { readonly kind: string; readonly mass: number };
  /** Water temperature, degC. */
  readonly temperature: DailyValue;
  /** Steady loss of water out of the system, m3 d-1. */
  readonly leak: number;
  /** Steady discharge for water exchange, m3 d-1. */
  readonly exchange: number;
  /** A second, lower outlet (flood and drain); absent: none. */
  readonly drain?: Drain;
  /** Water that draining lets out and air takes the place of, mean over the day, m3 d-1; absent: none. */
  readonly flooded?: number;
}

/**
 * A lower outlet of `rate`, m3 d-1, that drains a vessel down `to` a volume, m3; water that comes back meets the air that was drawn
 * in. An `outlet` (the default) is always open; a `siphon` starts when water runs over the standpipe, and stops at `to`.
 */
export interface Drain {
  readonly rate: number;
  readonly to: number;
  readonly by?: 'outlet' | 'siphon';
}

/** Repeating on/off clock: on for `on` days, off for `off` days, first switched on at `offset`, d since the start. */
export interface Timer {
  readonly on: number;
  readonly off: number;
  readonly offset: number;
}

/** A pump: all flows that name it start and stop together. */
export interface Pump {
  readonly name: string;
  readonly timer?: Timer;
  /** Volume of the vessel drawn from at which the pump sucks air and trips, m3. */
  readonly inlet: number;
  /** Volume at which it starts again, m3 (> inlet). */
  readonly restart: number;
}

/** Water led from one vessel to another: pumped at a rate, or a share of the overflow. */
export type Flow =
  | {
      readonly kind: 'pumped';
      readonly from: string;
      readonly to: string;
      readonly pump: string;
      /** m3 d-1 while the pump runs. */
      readonly rate: number;
    }
  | {
      readonly kind: 'gravity';
      readonly from: string;
      readonly to: string;
      /** Share of what leaves the vessel by gravity, 0..1; the shares of a vessel sum to 1. */
      readonly share: number;
    };

/** A store of rain with its own water: `capacity` and `volume` at the start, m3. */
export interface RainTank {
  readonly capacity: number;
  readonly volume: number;
  /** Roof area that drains into it, m2, times the runoff share. */
  readonly roof: number;
  /** Rain, m d-1. */
  readonly rain: DailyValue;
  readonly water: string;
}

/** Top-up of the reservoir by a float valve. Sources are used in the order given. */
export interface TopUp {
  /** Volume of the reservoir at which the float closes, m3. */
  readonly level: number;
  /** Most that the valve lets in, m3 d-1. */
  readonly rate: number;
  readonly sources: readonly TopUpSource[];
}

/** Where water of the float valve comes from: the rain tank, or mains water of a name up to a cap. */
export type TopUpSource =
  | { readonly kind: 'rain-tank' }
  | {
      readonly kind: 'mains';
      readonly water: string;
      /** Most in one day, m3 (Infinity: no cap). */
      readonly dailyCap: number;
      /** Most in one week of seven days, the first from day 0, m3 (absent: no cap). */
      readonly weeklyCap?: number;
    };

/** A group of like fish in one vessel. */
export interface Cohort {
  readonly name: string;
  readonly vessel: string;
  readonly species: string;
  /** 0 where the cohort is stocked later by an action. */
  readonly number: number;
  /** Mean mass, g. */
  readonly mass: number;
  readonly ration: Ration;
  readonly feed: Feed;
  /**
   * Measured feed conversion, g offered per g gained: what comes out for fish as at the start, at their ration, on their feed,
   * in sound water of the temperature for which their upkeep is stated (absent: what the species makes of it).
   */
  readonly feedConversion?: number;
  /** What becomes of fish that die: left in the water to rot (absent: taken out). */
  readonly dead?: 'left';
  /** Hours of the day in which feed is given, as shares of a day [`from`, `to`); absent: all day. */
  readonly hours?: { readonly from: number; readonly to: number };
}

/**
 * An area of one crop in one vessel, in batches of staggered age. A `cut` comes `every` so many days and does `leave` a share
 * (0..1); `seedling` is the dry mass of those planted, g m-2 (else the crop's).
 */
export interface Planting {
  readonly name: string;
  readonly vessel: string;
  readonly crop: string;
  /** Whole area, m2. */
  readonly area: number;
  /** Share of it that the crop shades at full growth, 0..1 (absent: 1): transpiration is in proportion. */
  readonly cover?: number;
  /** How many batches the area is parted into, of equal size. */
  readonly batches: number;
  /** Age at harvest, d since planting. */
  readonly harvest: number;
  /** What happens at harvest age. */
  readonly after: 'replant' | 'empty';
  /** Whether planted at the start: staggered ages, or all new, or bare until an action plants it. */
  readonly start: 'staggered' | 'new' | 'empty';
  /** Age of the oldest batch at the start, d. */
  readonly age: number;
  /** Days between picks of its fruit; absent: it bears none. */
  readonly picks?: number;
  readonly cut?: { readonly every: number; readonly leave: number };
  readonly seedling?: number;
  /** Planting whose plants are set out here once they are of its age at harvest, its oldest batch first; absent: none. */
  readonly tray?: string;
  /** Its own light, mol m-2 d-1, and the share of evapotranspiration left under its own cloth; absent: as of the system. */
  readonly light?: DailyValue;
  readonly shelter?: DailyValue;
}

/**
 * Water at the start in one vessel, in the units of {@link SourceWater}; `solids` are those suspended that break down
 * and `refractory` those that hardly do, g dry m-3; `dissolved` organic matter g COD m-3; `organic-nitrogen` g N m-3;
 * what is absent is 0. Also `ammonia`, `nitrite`, `nitrate`, `alkalinity`, `carbon`, `oxygen`, `chloride`, `calcium`.
 */
export interface StartWater {
  readonly ammonia: number;
  readonly nitrite: number;
  readonly nitrate: number;
  readonly solids: number;
  readonly refractory?: number;
  readonly dissolved?: number;
  readonly 'organic-nitrogen'?: number;
  readonly alkalinity: number;
  readonly carbon: number;
  readonly oxygen: number;
  readonly chloride: number;
  readonly calcium: number;
}

/** State of a vessel at the start. */
export interface StartVessel {
  readonly vessel: string;
  readonly water: StartWater;
  /** Volume, m3 (only the reservoir may start below its full volume). */
  readonly volume: number;
  /** Ammonia oxidisers as a share of the room on the surface, 0..1. */
  readonly aob: number;
  /** Nitrite oxidisers, 0..1 as `aob`. */
  readonly nob: number;
  /**
   * pH of the water that the film has grown in; `fresh` where it is new and has got used to none; absent: that of its
   * water at the start.
   */
  readonly grownAt?: number | 'fresh';
  /** Heterotrophs over the film, g COD per m2 of surface; absent: none. */
  readonly heterotrophs?: number;
  /** Settled solids that break down, g dry. */
  readonly settled: number;
  /** Settled solids that hardly do, g dry; absent: none. */
  readonly settledRefractory?: number;
}

/** What a person can measure in the water of a vessel; ammonia is total ammonia nitrogen (TAN). */
export type Measurable =
  'ammonia' | 'nitrite' | 'nitrate' | 'pH' | 'alkalinity' | 'oxygen' | 'temperature' | 'chloride' | 'volume';

/**
 * What a rule may read: what a kit measures in water, electrical conductivity as estimated from the ions, the mean mass of
 * the fish of a group, and the water in the rain tank.
 */
export type Watched = Measurable | 'conductivity' | 'fish-mass' | 'rain-tank';

/** How readings are taken. */
export interface TestKit {
  /** Days from one reading to the next, whole, the first on day 0. */
  readonly every: number;
  /** Readings are whole multiples of this; absent: as fine as can be. */
  readonly resolution?: number;
  /** Standard `deviation` of a reading: as a share of the true value, or in its unit; absent: none. */
  readonly error?: { readonly kind: 'relative' | 'absolute'; readonly deviation: number };
}

/** A reading beyond a `level`, in the internal unit of what is read. */
export interface RuleCondition {
  readonly read: Watched;
  /** The vessel whose water is read; of `fish-mass` the group of fish; of `rain-tank` nothing: ''. */
  readonly vessel: string;
  readonly side: 'above' | 'below';
  /** In the internal unit of what is read. */
  readonly level: number;
  /** Where the reading must get to before the rule lets go; absent: back to the level itself. */
  readonly until?: number;
  /** How it is read; the days of reading are those of the rule. */
  readonly kit: TestKit;
}

/** Something done when a reading passes a level, or all or any of several do. */
export interface Rule extends RuleCondition {
  /**
   * Further conditions, read on the same days. `all`: the rule acts when every one holds and lets go when one is past its
   * `until`; `any`: it acts when one holds and lets go when every one is past its.
   */
  readonly also?: { readonly how: 'all' | 'any'; readonly conditions: readonly RuleCondition[] };
  readonly doing: readonly Action[];
  /** Done when the rule lets go. */
  readonly undoing: readonly Action[];
  /** Whether the action is done once and then stands until the rule lets go, rather than again at each reading. */
  readonly stands: boolean;
  /** Least time from one doing to the next, d. */
  readonly wait: number;
  /** Most doings in a run (Infinity: no limit). */
  readonly most: number;
}

/** A system and what is done to it: everything that decides a run, but for the numbers of the tables. */
export interface Scenario {
  readonly title: string;
  readonly note: string;
  /** Length, d. */
  readonly days: number;
  /** Output step, d. */
  readonly every: number;
  /** Calendar date of day 0, ISO 8601 yyyy-mm-dd (for monthly values). */
  readonly startDate: string;
  /** Reference evapotranspiration over the water and crops, m d-1 (greenhouse factor applied). */
  readonly et0: DailyValue;
  /** Photosynthetic light on the crops, mol m-2 d-1, cover, cloth and lamps reckoned in; absent: `light.outdoors`. */
  readonly light?: DailyValue;
  /** Air temperature for crops, degC; absent: the vessel's water temperature. */
  readonly air?: DailyValue;
  /** Carbon dioxide in the air over the water, mol per mol; absent: that of open air. */
  readonly carbonDioxide?: DailyValue;
  /** Height above the sea, m; absent: 0. */
  readonly altitude?: number;
  readonly waters: readonly SourceWater[];
  readonly vessels: readonly Vessel[];
  /** Name of the vessel that takes all change of level. */
  readonly reservoir: string;
  readonly pumps: readonly Pump[];
  readonly flows: readonly Flow[];
  readonly topUp?: TopUp;
  readonly rainTank?: RainTank;
  readonly fish: readonly Cohort[];
  readonly plantings: readonly Planting[];
  readonly start: readonly StartVessel[];
  /** A state to go on from, at its time, in place of `start`, stock and stands. */
  readonly saved?: SavedState;
  readonly actions: readonly TimedAction[];
  readonly rules: readonly Rule[];
  /** Dosers that hold pH or alkalinity; absent: none. */
  readonly dosers?: readonly Doser[];
  /** What things cost and fetch: no part of the run; absent: no account is given. */
  readonly prices?: Prices;
  /** Seed of whatever is drawn in the run. */
  readonly seed: number;
  readonly overrides: readonly Override[];
}

/**
 * Name of one `batch` of a planting of so many `batches`, numbered from 0: the planting's own when it is the only
 * one.
 */
export function batchName(planting: string, batches: number, batch: number): string {
  return batches === 1 ? planting : `${planting}#${batch + 1}`;
}
