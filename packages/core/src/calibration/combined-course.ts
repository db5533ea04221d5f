import { deviate95, normalQuantile } from '../base/normal.js';
import { hypot } from '../base/trigonometry.js';
import type { Measurable } from '../scenario/scenario.js';
import {
  combined,
  deviationOf,
  horizons,
  type Rehearsed,
  type Weights,
  weightsBy,
  widthsBy,
} from './combination.js';
import { cellsOf, eachWay, guessesAt, memoriesOf, type ModelledTime } from './guesses.js';
import type { Series } from './rehearse.js';
import { halfStepAt } from './shown-by-kit.js';

/** Days ahead at which the weights of each of `horizons` hold; between them they go over evenly. */
const centres = [3.5, 10.5, 21] as const;

/** Where a day ahead lies between two centres. */
function between(ahead: number): { readonly before: number; readonly share: number } {
  const last = centres.length - 1;
  if (ahead <= centres[0]) return { before: 0, share: 0 };
  if (ahead >= centres[last]) return { before: last - 1, share: 1 };
  const before = centres.findIndex((centre, i) => ahead < centres[i + 1] && ahead >= centre);
  return { before, share: (ahead - centres[before]) / (centres[before + 1] - centres[before]) };
}

/** What a forecast of one quantity in one place is made of at one of `horizons`. */
export interface Told {
  /** Days ahead. */
  readonly horizon: number;
  readonly weights: Weights;
  /** Forecasts of the past that the weights and bands rest on, beside how the readings went from one to the next. */
  readonly rehearsed: number;
}

/** Lines of the bands of a day: 5, 25, 50, 75 and 95 %, in the internal unit. */
export interface DayLines {
  readonly truth: readonly number[];
  readonly reading: readonly number[];
}

/** A day ahead with what the model has there, and by how much a what-if changes it, on the scale of the kit. */
export interface DayAhead extends ModelledTime {
  readonly change: number;
  /** Standard deviation of the change over the draws of the numbers. */
  readonly unsure: number;
}

const halfTurn = normalQuantile(0.75);

/** A half width without the error of the kit, which is 1; at least a third of what the kit shows. */
const without = (width: number, turns: number): number =>
  Math.sqrt(Math.max(width * width - turns * turns, (width / 3) * (width / 3)));

/** No kit shows less than nothing, and there is none: a line below it stands at 0. */
const free = new Set<Measurable>(['pH', 'alkalinity']);

/**
 * The forecast of one quantity in one place: a combination of ways weighted by what each was worth in the past of this
 * log, with bands by the errors that the combination has shown; a what-if adds the model's change.
 * @param history forecasts of its past
 */
export function combinedCourse(
  { scale, past, spoiling }: Series,
  reads: Measurable,
  days: readonly DayAhead[],
  today: number,
  history: readonly Rehearsed[],
): { readonly lines: readonly DayLines[]; readonly told: readonly Told[] } {
  const { ahead: guessed, evidence } = guessesAt(past, days, spoiling, memoriesOf(reads));
  const cells = cellsOf(past);
  const widthsOf = widthsBy(history, today);
  const told = horizons.map((horizon, place) => ({
    horizon,
    weights: weightsBy(evidence, history, place, today),
    rehearsed: history.filter((each) => each.horizon === place).length,
  }));
  const lines = days.map(({ time, change, unsure }, day): DayLines => {
    const { before, share } = between(time - today);
    const mixed = (of: (place: number) => number): number =>
      of(before) * (1 - share) + of(before + 1) * share;
    const weights = eachWay((name) => mixed((place) => told[place].weights[name]));
    const middle = combined(guessed[day], weights) + change;
    const deviation = deviationOf(guessed[day], weights);
    const step = halfStepAt(cells, middle);
    const widths = widthsOf(time - today, deviation, step);
    const of50 = hypot(widths.of50, halfTurn * unsure);
    const of90 = hypot(widths.of90, deviate95 * unsure);
    const at = (scaled: number): number => {
      const value = scale.from(scaled);
      return free.has(reads) ? value : Math.max(0, value);
    };
    const drawn = (half: number, whole: number): readonly number[] =>
      [-whole, -half, 0, half, whole].map((off) => at(middle + off));
    return {
      reading: drawn(of50, of90),
      truth: drawn(without(of50, halfTurn), without(of90, deviate95)),
    };
  });
  return { lines, told };
}
