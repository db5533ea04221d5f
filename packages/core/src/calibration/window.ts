import { exp, log } from '../base/elementary.js';
import { deviate95 } from '../base/normal.js';
import { endStateOf } from '../run/saved.js';
import type { Run } from '../run/run.js';
import type { ResumableRun } from '../run/run-state.js';
import type { Measurable, Scenario } from '../scenario/scenario.js';
import type { SavedState } from '../scenario/saved-state.js';
import { countedLoss, countingOf } from './correlated.js';
import type { Observation } from './readings.js';
import { type FitProblem, predictionsOf, type Sought, soughtOf } from './fit-problem.js';
import { differences, differenceStep, enough, minimise, type Minimum, type Problem } from './search.js';
import { answered } from './wanted.js';

/** d of readings that the state of today is fitted to, and how many of them it takes at least. Judgment [P]. */
const window = { days: 56, least: 6 } as const;

/**
 * Groups of a state that are moved together, with what is read of them: both films, ammonia and nitrite, and all that breaks
 * down. Nitrate is not among them: nothing feeds on it within weeks, and its level is followed as it is read.
 */
const groups = [
  { components: ['aob'], grows: true },
  { components: ['nob'], grows: true },
  { components: ['tan'], reads: 'ammonia' },
  { components: ['nitrite'], reads: 'nitrite' },
  {
    components: ['solids', 'refractory', 'dissolved', 'organic-nitrogen', 'settled', 'settled-refractory'],
  },
] as const satisfies readonly {
  readonly components: readonly string[];
  readonly reads?: Measurable;
  readonly grows?: true;
}[];

/**
 * Standard deviations of the logarithm of what stands at the beginning of a window beside what the long fit has there. A film
 * is uncertain by a factor of 2 (90 %), and by a share of how often it has doubled since the start, as its rates are. Judgment [P].
 */
const spreads = { film: log(2) / deviate95, grown: 0.25, water: 0.6, stocks: log(2) / deviate95 } as const;

/** By how much kits are first taken to err more than they do. Judgment [P]. */
const coarsely = 4;

/** What one search hands on to the next. */
const near = ({ jacobian, predicted }: Minimum): Pick<Minimum, 'jacobian' | 'predicted'> => ({
  jacobian,
  predicted,
});

const read: readonly Measurable[] = ['ammonia', 'nitrite', 'nitrate'];

/** Where a run through a log is begun anew, and with what: standard deviates of the groups of its state. */
export interface WindowStart {
  /** d since the start of the run. */
  readonly day: number;
  /** A state of that day, of any draw of the numbers, as the window has it. */
  readonly moved: (state: SavedState) => SavedState;
}

/** The readings that a window holds, and the long fit's runs up to it and from it on. */
export interface OpenWindow {
  /** d since the start of the run. */
  readonly day: number;
  readonly observations: readonly Observation[];
  readonly before: ResumableRun;
  /** The long fit's own run from there to the end. */
  readonly after: ResumableRun;
}

/** A state whose groups are moved by standard deviates. */
function movedBy(
  state: SavedState,
  deviates: ArrayLike<number>,
  spreadOf: readonly number[],
  floorOf: readonly number[],
): SavedState {
  const place = new Map<string, number>(
    groups.flatMap(({ components }, g) => components.map((component) => [component, g] as const)),
  );
  const { memory: _, morning: __, ...rest } = state;
  return {
    ...rest,
    states: state.states.map((each) => {
      const g = place.get(each.component);
      if (g === undefined || deviates[g] === 0) return each;
      const times = exp(spreadOf[g] * deviates[g]);
      const volume = state.volumes[each.place] ?? 0;
      // What the kit cannot tell from nothing is no bound: more of it may come to stand there.
      const floor = times > 1 ? (times - 1) * floorOf[g] * volume : 0;
      return { ...each, amount: each.amount * times + floor };
    }),
  };
}

/** How much of a component a run holds in all, at an output; -1 is the last. */
export function heldIn({ model, samples }: Run, component: string, sample: number): number {
  const { y } = samples[sample < 0 ? samples.length + sample : sample];
  return model.layout.states.reduce((sum, each, i) => sum + (each.component === component ? y[i] : 0), 0);
}

/** A scenario up to a day, without what is done then or later. */
export const upTo = (scenario: Scenario, days: number): Scenario => ({
  ...scenario,
  days,
  actions: scenario.actions.filter(({ at }) => at < days),
});

/** What the window asks of a problem. */
type Windowed = Pick<
  FitProblem,
  | 'scenarioAt'
  | 'runOf'
  | 'predictOf'
  | 'errorOf'
  | 'observations'
  | 'days'
  | 'ahead'
  | 'scenario'
  | 'tolerance'
>;

/** Opens the window of the last weeks; undefined where it holds too few readings, or the run up to it breaks off. */
export function openWindow(problem: Windowed, at: ArrayLike<number>): OpenWindow | undefined {
  const today = problem.days - problem.ahead;
  const day = Math.max(1, Math.round(today - window.days));
  const observations = problem.observations.filter(
    ({ time, reading }) => time >= day && time < today && read.includes(reading.reads),
  );
  if (observations.length < window.least) return undefined;
  const known = problem.scenarioAt(at);
  const before = problem.runOf(upTo(known, day));
  if (before.outcome.kind !== 'done') return undefined;
  return { day, observations, before, after: problem.runOf({ ...known, saved: endStateOf(before) }) };
}

/**
 * The state of some weeks ago that the readings since then support: the long fit's own, with its films, its water and its
 * stocks moved as little as the readings ask for. Its numbers stay; a few runs of the window alone.
 * @returns undefined where its runs break off
 */
export function windowStart(
  problem: Windowed,
  at: ArrayLike<number>,
  { day, observations, before, after }: OpenWindow,
): WindowStart | undefined {
  const { errorOf } = problem;
  const today = problem.days - problem.ahead;
  const known = problem.scenarioAt(at);
  const state = endStateOf(before);
  const grown = (component: string): number => {
    const [first, last] = [heldIn(before, component, 0), heldIn(before, component, -1)];
    return first > 0 && last > 0 ? Math.abs(log(last / first)) : 0;
  };
  const spreadOf = groups.map((group): number => {
    if ('grows' in group) {
      const share = spreads.grown * grown(group.components[0]);
      return Math.sqrt(spreads.film * spreads.film + share * share);
    }
    return 'reads' in group ? spreads.water : spreads.stocks;
  });
  const floorOf = groups.map((group) => ('reads' in group ? errorOf(group.reads).deviation(0) : 0));
  const moved = (deviates: ArrayLike<number>) => (from: SavedState) =>
    movedBy(from, deviates, spreadOf, floorOf);
  const short = upTo(known, Math.ceil(today));
  const sought = soughtOf(observations);
  const of = {
    predict: (deviates: Float64Array) =>
      problem.predictOf({ ...short, saved: moved(deviates)(state) }, sought),
  };
  const first = predictionsOf(after, sought);
  // How errors go on from day to day is told from what the long fit misses here.
  const counting = countingOf(observations, errorOf, first);
  const searchWith = (times: number): Problem => ({
    ...of,
    size: groups.length,
    loss: (i, predicted) => {
      const { wider, weight } = counting[i];
      const counted = { wider: times * wider, weight };
      return countedLoss(observations[i], predicted, errorOf(observations[i].reading.reads), counted);
    },
    jacobian: (where, predicted) => differences(of, where, predicted, () => differenceStep, false),
    prior: true,
  });
  const options = { gain: enough, most: 2, carryOn: true, proofs: 0 } as const;
  try {
    // As if kits were coarse first, as a fit does: readings far from the model else count as spoilt and pull at nothing.
    const coarse = answered(
      minimise(searchWith(coarsely), new Float64Array(groups.length), {
        ...options,
        ...(first && { predicted: first }),
      }),
    );
    const { at: found } = answered(minimise(searchWith(1), coarse.at, { ...options, ...near(coarse) }));
    return { day, moved: moved(found) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return undefined;
  }
}

/** Values looked for in a run that goes on at a day as another: before it by one, from it on as the other has them. */
export function predictThrough(
  sought: readonly Sought[],
  { day, before }: Pick<OpenWindow, 'day' | 'before'>,
  late: (sought: readonly Sought[]) => Float64Array | undefined,
): Float64Array | undefined {
  const a = predictionsOf(
    before,
    sought.filter(({ time }) => time < day),
  );
  const b = late(sought.filter(({ time }) => time >= day));
  if (a === undefined || b === undefined) return undefined;
  let [i, j] = [0, 0];
  return Float64Array.from(sought, ({ time }) => (time < day ? a[i++] : b[j++]));
}
