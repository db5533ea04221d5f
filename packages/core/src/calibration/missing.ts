import type { Scenario } from '../scenario/scenario.js';
import { group } from 'd3-array';
import { type Counting, seriesKey } from './correlated.js';
import { kitScale } from '../log/kit-scale.js';
import { follow, likeliest } from './returning.js';
import { type FitProblem, soughtOf } from './fit-problem.js';
import { minimise, type Minimum, promisedAt, searchProblem } from './search.js';
import { trusting } from './search-fit.js';
import { answered } from './wanted.js';

/** What may be wrong in a system file or a log, tried in the fit. */
export interface Missing {
  readonly kind: 'discharge' | 'volume' | 'feed';
  /** Share of all water a day for discharge (or a sink of nitrate like it); a factor for volume and feed. */
  readonly size: number;
  /** By how much it raises the log posterior. */
  readonly gain: number;
}

const sizes = {
  discharge: [0.005, 0.015, 0.04],
  volume: [0.6, 0.8, 1.25, 1.6],
  feed: [0.6, 0.8, 1.25, 1.6],
} as const;

const kinds = ['discharge', 'volume', 'feed'] as const;

/** What it must gain to be told of, in log posterior: judgment [P]. */
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
  // The vessel that holds most stands for all: its walls, its water, and where a float or a pump in it stands.
  const largest = scenario.start.reduce((most, each) => (each.volume > most.volume ? each : most)).vessel;
  const drawing = new Set(
    scenario.flows.flatMap((flow) => (flow.kind === 'pumped' && flow.from === largest ? [flow.pump] : [])),
  );
  const { topUp } = scenario;
  return {
    ...scenario,
    vessels: scenario.vessels.map((vessel) =>
      vessel.name === largest ? { ...vessel, volume: vessel.volume * size } : vessel,
    ),
    start: scenario.start.map((each) =>
      each.vessel === largest ? { ...each, volume: each.volume * size } : each,
    ),
    pumps: scenario.pumps.map((pump) =>
      drawing.has(pump.name) ? { ...pump, inlet: pump.inlet * size, restart: pump.restart * size } : pump,
    ),
    ...(topUp !== undefined &&
      scenario.reservoir === largest && { topUp: { ...topUp, level: topUp.level * size } }),
  };
}

/**
 * Log posterior of a fit whose errors are told anew from its own residuals: the kit's, and a distance that wanders, for each
 * quantity and place. How readings counted in the search holds the errors of the fit that failed, and would hide a better one.
 */
function toldBy(problem: FitProblem, at: Float64Array, predicted: ArrayLike<number>): number {
  const indexed = problem.observations.map((observation, i) => ({ observation, i }));
  const prior = at.reduce((sum, each) => sum + (each * each) / 2, 0);
  return [...group(indexed, ({ observation }) => seriesKey(observation)).values()].reduce((sum, own) => {
    const error = problem.errorOf(own[0].observation.reading.reads);
    const scale = kitScale(error);
    const off = own
      .map(({ observation: { reading, time }, i }) => {
        const model = scale.to(predicted[i]);
        return { time, low: scale.to(reading.low) - model, high: scale.to(reading.high) - model };
      })
      .sort((a, b) => a.time - b.time);
    const spoiling = { share: error.outlierShare, spread: error.outlierSpread };
    return sum + follow(off, likeliest(off, 0, spoiling), spoiling).likelihood;
  }, -prior);
}

/** Tries of the numbers that may vary beside a change: few, as the derivatives are those of the fit. */
const again = { ...trusting, most: 0, gain: 0.5 } as const;

/**
 * What would bring a fit nearest to its log, of the things that keepers leave out: most first; none where nothing helps. The
 * numbers that may vary go along, by the derivatives of the fit: what stands in for a thing that is missing would else hide it.
 */
export function missingIn(
  problem: FitProblem,
  best: Minimum,
  counting: readonly Counting[],
): readonly Missing[] {
  const sought = soughtOf(problem.observations);
  const whole = searchProblem(problem, counting);
  const found = toldBy(problem, best.at, best.predicted);
  const lacks = (kind: Missing['kind']): boolean =>
    kind === 'discharge' && problem.scenario.topUp === undefined;
  return kinds
    .filter((kind) => !lacks(kind))
    .flatMap((kind): Missing[] => {
      const tried = sizes[kind].flatMap((size) => {
        const predict = (at: Float64Array): Float64Array | undefined =>
          problem.predictOf(changed(problem.scenarioAt(at), kind, size), sought);
        const predicted = predict(best.at);
        const promised =
          predicted === undefined ? Infinity : promisedAt(whole, best.at, predicted, best.jacobian);
        return predicted === undefined ? [] : [{ size, predict, predicted, promised }];
      });
      if (tried.length === 0) return [];
      const { size, predict, predicted } = tried.reduce((low, each) =>
        each.promised < low.promised ? each : low,
      );
      const { jacobian } = best;
      const end = answered(minimise({ ...whole, predict }, best.at, { ...again, predicted, jacobian }));
      const gain = toldBy(problem, end.at, end.predicted) - found;
      return gain > least ? [{ kind, size, gain }] : [];
    })
    .sort((a, b) => b.gain - a.gain);
}
