import type { Model } from '../model/model.js';
import type { Feed, Ration, SourceWater } from '../scenario/scenario.js';

/** How the system is operated now, changed by actions: rations, switches, caps, waters. Plain data. */
export interface Operation {
  readonly ration: Ration[];
  /** Feed given to each cohort is this times the ration. */
  readonly factor: Float64Array;
  readonly feed: Feed[];
  readonly pumpOn: boolean[];
  readonly aerating: boolean[];
  /** Whether each doser runs. */
  readonly dosing: boolean[];
  readonly waters: Map<string, SourceWater>;
  /** Daily and weekly cap of each top-up source, m3. */
  readonly caps: number[];
  readonly weeklyCaps: number[];
  topUpStopped: boolean;
}

/** How a system is operated at the start of a run. */
export function openOperation(model: Model): Operation {
  const { scenario } = model;
  return {
    ration: scenario.fish.map((cohort) => cohort.ration),
    factor: new Float64Array(scenario.fish.length).fill(1),
    feed: scenario.fish.map((cohort) => cohort.feed),
    pumpOn: scenario.pumps.map(() => true),
    aerating: scenario.vessels.map(() => true),
    dosing: (scenario.dosers ?? []).map(() => true),
    waters: new Map(scenario.waters.map((water) => [water.name, water])),
    caps: (scenario.topUp?.sources ?? []).map((source) =>
      source.kind === 'mains' ? source.dailyCap : Infinity,
    ),
    weeklyCaps: (scenario.topUp?.sources ?? []).map((source) =>
      source.kind === 'mains' ? (source.weeklyCap ?? Infinity) : Infinity,
    ),
    topUpStopped: false,
  };
}
