import type { RandomState } from '../base/random.js';
import type { Feed, Ration, SourceWater } from './supplies.js';

/** What actions have changed of how a system is operated; all else stands as its scenario says. */
export interface SavedOperation {
  /** Of cohorts. */
  readonly rations: Readonly<Record<string, Ration>>;
  /** Times the ration that is given, by cohort. */
  readonly factors: Readonly<Record<string, number>>;
  readonly feeds: Readonly<Record<string, Feed>>;
  /** Pumps that are switched off, and vessels whose aeration is. */
  readonly pumpsOff: readonly string[];
  readonly airOff: readonly string[];
  /** Vessels whose dosers are switched off. */
  readonly dosersOff: readonly string[];
  readonly waters: Readonly<Record<string, SourceWater>>;
  readonly topUpStopped: boolean;
}

/**
 * What a source of the float valve has given `today` and `thisWeek`, and how its `dailyCap` and `weeklyCap` were changed,
 * m3; null: no cap.
 */
export interface SavedSource {
  /** Name of its water; that of the rain tank is `rain-tank`. */
  readonly name: string;
  readonly today: number;
  readonly thisWeek: number;
  readonly dailyCap?: number | null;
  readonly weeklyCap?: number | null;
}

/** How a rule stood: how many `times` it has acted, and in how many readings in a row it took `turns` between on and off. */
export interface SavedRule {
  /** What it says, as the reader has it: a rule that says the same is the same. */
  readonly rule: string;
  readonly active: boolean;
  /** When it last acted, d; null: never. */
  readonly last: number | null;
  readonly times: number;
  readonly turns: number;
  readonly chatters: boolean;
  readonly random: RandomState;
}

/**
 * What was found in the morning of the day: feed offered to each cohort, `fed` g d-1 and a `share` of what it weighs
 * d-1, `evaporation` of each vessel and
 * `transpiration` of each planting, m3 d-1.
 */
export interface SavedMorning {
  readonly evaporation: Readonly<Record<string, number>>;
  /** Ionic strength of each vessel, mol L-1. */
  readonly ionic: Readonly<Record<string, number>>;
  readonly offered: Readonly<Record<string, { readonly fed: number; readonly share: number }>>;
  readonly transpiration: Readonly<Record<string, number>>;
}

/**
 * What the numerical methods go on from, for the same last places: the `natural` and the `opening` step, d, and of pH the
 * `hydrogen` ions with their `origin` and `slope`, mol m-3; numbers that are not finite are null.
 */
export interface SavedMemory {
  readonly natural?: number;
  readonly opening: number | null;
  readonly refusedBefore: boolean;
  readonly hydrogen: readonly (number | null)[];
  readonly origin: readonly (number | null)[];
  readonly slope: readonly (number | null)[];
}

/** A state that a run was saved in, by the names of its places: all that its future depends on. */
export interface SavedState {
  /** When, d since the first start. */
  readonly time: number;
  /** Calendar date on which it was saved, ISO 8601. */
  readonly date: string;
  /** Water in each vessel, m3. */
  readonly volumes: Readonly<Record<string, number>>;
  /** Water in the rain tank, m3. */
  readonly rainTank: number;
  /** Each `amount`, in the unit of its component, by component and place (vessel, cohort, batch of a planting). */
  readonly states: readonly { readonly component: string; readonly place: string; readonly amount: number }[];
  /** Age of each batch that is planted, d. */
  readonly ages: Readonly<Record<string, number>>;
  /** Species of each cohort, and crop of each batch. */
  readonly species: Readonly<Record<string, string>>;
  readonly crops: Readonly<Record<string, string>>;
  readonly operation: SavedOperation;
  /** Pumps that have sucked air and stand still, and vessels that have run dry. */
  readonly tripped: readonly string[];
  readonly parched: readonly string[];
  /** Beds whose siphon runs; absent: none. */
  readonly siphoning?: readonly string[];
  /** Dosers that gave their most and did not hold, each as `HOLD@VESSEL SIGN`. */
  readonly spent: readonly string[];
  /** In the order of the float valve. */
  readonly sources: readonly SavedSource[];
  readonly rules: readonly SavedRule[];
  /** Absent: the run begins on another day than it was saved on. */
  readonly morning?: SavedMorning;
  readonly memory?: SavedMemory;
}
