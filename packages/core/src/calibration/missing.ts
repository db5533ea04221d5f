import type { Scenario } from '../scenario/scenario.js';
import { countedLoss, type Counting } from './correlated.js';
import { type FitProblem, soughtOf } from './fit-problem.js';
import type { Minimum } from './search.js';

/** What may be wrong in a system file or a log, tried in the fit with all else as it was found. */
export interface Missing {
  readonly kind: 'discharge' | 'volume' | 'feed';
  /** Share of all water a day for discharge (or a sink of nitrate like it); a factor for volume and feed. */
  readonly size: number;
  /** By how much it raises the log likelihood. */
  readonly gain: number;
}

const sizes = {
  discharge: [0.005, 0.015, 0.04],
  volume: [0.6, 0.8, 1.25, 1.6],
  feed: [0.6, 0.8, 1.25, 1.6],
} as const;

/** What it must gain to be told of, in log likelihood: judgment [P]. */
const least = 5;

function changed(scenario: Scenario, kind: keyof typeof sizes, size: number): Scenario {
  if (kind === 'feed') {
    return {
      ...scenario,
      fish: scenario.fish.map((cohort) =>
        cohort.ration.kind === 'mass'
          ? { ...cohort, ration: { ...cohort.ration, gramsPerDay: cohort.ration.gramsPerDay * size } }
          : cohort,
      ),
      actions: scenario.actions.map((each) => {
        const { action } = each;
        if (action.kind !== 'feed' || action.ration?.kind !== 'mass') return each;
        const ration = { ...action.ration, gramsPerDay: action.ration.gramsPerDay * size };
        return { ...each, action: { ...action, ration } };
      }),
    };
  }
  if (kind === 'discharge') {
    const all = scenario.start.reduce((sum, { volume }) => sum + volume, 0);
    return {
      ...scenario,
      vessels: scenario.vessels.map((vessel) =>
        vessel.name === scenario.reservoir ? { ...vessel, exchange: vessel.exchange + size * all } : vessel,
      ),
    };
  }
  // The vessel that holds most stands for all: its walls and its water.
  const largest = scenario.start.reduce((most, each) => (each.volume > most.volume ? each : most));
  if (largest.vessel === scenario.reservoir && scenario.topUp !== undefined) return scenario;
  return {
    ...scenario,
    vessels: scenario.vessels.map((vessel) =>
      vessel.name === largest.vessel ? { ...vessel, volume: vessel.volume * size } : vessel,
    ),
    start: scenario.start.map((each) =>
      each.vessel === largest.vessel ? { ...each, volume: each.volume * size } : each,
    ),
  };
}

/** What would bring a fit nearest to its log, of the things that keepers leave out: most first; none where nothing helps. */
export function missingIn(
  problem: FitProblem,
  best: Minimum,
  counting: readonly Counting[],
): readonly Missing[] {
  const sought = soughtOf(problem.observations);
  const costOf = (predicted: ArrayLike<number>): number =>
    problem.observations.reduce((sum, observation, i) => {
      const error = problem.errorOf(observation.reading.reads);
      return sum + countedLoss(observation, predicted[i], error, counting[i]).value;
    }, 0);
  const found = costOf(best.predicted);
  const known = problem.scenarioAt(best.at);
  return (Object.keys(sizes) as (keyof typeof sizes)[])
    .flatMap((kind) => {
      if (kind === 'discharge' && known.topUp === undefined) return [];
      const tried = sizes[kind].flatMap((size): Missing[] => {
        const scenario = changed(known, kind, size);
        const predicted = scenario === known ? undefined : problem.predictOf(scenario, sought);
        return predicted === undefined ? [] : [{ kind, size, gain: found - costOf(predicted) }];
      });
      if (tried.length === 0) return [];
      const most = tried.reduce((high, each) => (each.gain > high.gain ? each : high));
      return most.gain > least ? [most] : [];
    })
    .sort((a, b) => b.gain - a.gain);
}
