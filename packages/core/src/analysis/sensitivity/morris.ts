import { deviation, mean } from 'd3-array';
import { createRandom } from '../../library/random.js';

/** Points at which to work out an outcome: uniform numbers (0..1), one for each input. */
export type Points = readonly Float64Array[];

/** How one input moved the outcome in a screening; in the unit of the outcome per whole range of the input. */
export interface ElementaryEffects {
  /** Mean of the sizes: how much the input matters. */
  readonly muStar: number;
  /** Mean with sign. */
  readonly mu: number;
  /** Standard deviation: how much that depends on the others, or on where. NaN for fewer than two. */
  readonly sigma: number;
  /** Effects that could be worked out. */
  readonly effects: number;
}

/** Levels of the grid, at the middles of four strata, so that no input is at the very end of its range. */
const levels = [1 / 8, 3 / 8, 5 / 8, 7 / 8];
const step = 1 / 2;

function shuffled(count: number, random: () => number): number[] {
  const order = Array.from({ length: count }, (_, i) => i);
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    [order[i], order[j]] = [order[j], order[i]];
  }
  return order;
}

/**
 * Trajectories of M. D. Morris, "Factorial sampling plans for preliminary computational experiments",
 * Technometrics 33 (1991): from a random point of a grid of four levels, each input in turn, in a random
 * order, goes half its range up or down. Each of the `trajectories` takes `inputs` + 1 points, one after the other;
 * `seed` is that of their random places and orders.
 */
export function morrisDesign(inputs: number, trajectories: number, seed: number): Points {
  const random = createRandom(seed);
  return Array.from({ length: trajectories }, () => {
    const at = Float64Array.from({ length: inputs }, () => levels[Math.floor(random() * levels.length)]);
    const points = [Float64Array.from(at)];
    for (const input of shuffled(inputs, random)) {
      at[input] += at[input] < step ? step : -step;
      points.push(Float64Array.from(at));
    }
    return points;
  }).flat();
}

/**
 * Elementary effects from the outcomes at the points of a design (mu* after Campolongo, Cariboni and
 * Saltelli 2007). Outcomes that are NaN (a run that broke off) leave out the two effects they belong to.
 */
export function elementaryEffects(points: Points, outcomes: ArrayLike<number>): readonly ElementaryEffects[] {
  const inputs = points[0].length;
  const found = Array.from({ length: inputs }, (): number[] => []);
  for (let i = 1; i < points.length; i++) {
    if (i % (inputs + 1) === 0) continue;
    const input = points[i].findIndex((u, each) => u !== points[i - 1][each]);
    const effect = (outcomes[i] - outcomes[i - 1]) / (points[i][input] - points[i - 1][input]);
    if (!Number.isNaN(effect)) found[input].push(effect);
  }
  return found.map((effects) => ({
    muStar: mean(effects, Math.abs) ?? Number.NaN,
    mu: mean(effects) ?? Number.NaN,
    sigma: deviation(effects) ?? Number.NaN,
    effects: effects.length,
  }));
}
