/** What is done to a system, and when. */
import type { Feed, Ration, SourceWater } from './supplies.js';

/**
 * What an action does. Names of vessels, cohorts, plantings, pumps and waters are resolved.
 *
 * `number` counts fish (where it stands beside `share`, it takes its place); `mass` is the mean mass of a fish stocked,
 * or of a product dosed, g; `share` is the part taken, 0..1, of fish, of a vessel's water or of its settled solids;
 * `relativeMass` the mean mass of the fish graded out over that of all; `factor` what rations are multiplied by;
 * `volume` and the `water` that goes with drained solids, m3; `weeklyCap` as `dailyCap`, m3 in seven days; `biofilm` and
 * `solids` the shares that cleaning takes away; `kills` the share of the biofilm that a medicine kills; `stuns` the share
 * of the nitrifiers awake that is stunned by a bath, or by cleaning that leaves them dry: these come back by themselves.
 */
export type Action =
  | { readonly kind: 'stock'; readonly cohort: string; readonly number: number; readonly mass: number }
  | {
      readonly kind: 'harvest-fish';
      readonly cohort: string;
      readonly share: number;
      readonly number?: number;
    }
  | { readonly kind: 'lose-fish'; readonly cohort: string; readonly share: number; readonly number?: number }
  | {
      readonly kind: 'grade';
      readonly cohort: string;
      readonly share: number;
      readonly relativeMass: number;
      readonly to: string;
    }
  | { readonly kind: 'plant'; readonly planting: string }
  | { readonly kind: 'harvest-crop'; readonly planting: string; readonly replant: boolean }
  | { readonly kind: 'leave-empty'; readonly planting: string }
  | {
      readonly kind: 'feed';
      readonly cohort: string;
      readonly ration?: Ration;
      readonly feed?: Feed;
      readonly factor?: number;
    }
  | {
      readonly kind: 'top-up';
      /** m3 a day. Either cap takes the place of both of every source of mains. */
      readonly dailyCap?: number;
      readonly weeklyCap?: number;
      readonly stopped?: boolean;
    }
  | { readonly kind: 'source-water'; readonly water: string; readonly to: SourceWater }
  | {
      readonly kind: 'change-water';
      readonly vessel: string;
      readonly volume?: number;
      readonly share?: number;
      readonly water: string;
    }
  | {
      readonly kind: 'cart-water';
      readonly volume: number;
      /** Poured into the rain tank (whose water it is), or into the reservoir. */
      readonly into: 'rain-tank' | 'reservoir';
      readonly water: string;
    }
  | { readonly kind: 'dose'; readonly vessel: string; readonly product: string; readonly mass: number }
  | { readonly kind: 'pump'; readonly pump: string; readonly running: boolean }
  | { readonly kind: 'aeration'; readonly vessel: string; readonly running: boolean }
  /** All dosers of a vessel. */
  | { readonly kind: 'control'; readonly vessel: string; readonly running: boolean }
  | {
      readonly kind: 'clean';
      readonly vessel: string;
      readonly biofilm: number;
      readonly solids: number;
      readonly stuns?: number;
    }
  | { readonly kind: 'medicate'; readonly vessel: string; readonly kills: number; readonly stuns?: number }
  | {
      readonly kind: 'drain-solids';
      readonly vessel: string;
      readonly share: number;
      readonly water: number;
    };

/** An action done `at` a time (days since the start); ties keep file order within the order of kinds. */
export interface TimedAction {
  readonly at: number;
  readonly action: Action;
  /** Where it was written, for messages. */
  readonly where?: string;
  /** What it is part of, for the log, such as `power cut`. */
  readonly cause?: string;
  /** Done again and again, by a plan with `every`; absent: once. What reads a run asks it, a run does not. */
  readonly repeats?: true;
}
