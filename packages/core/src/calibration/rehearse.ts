import { group } from 'd3-array';
import { dateAfter } from '../base/calendar.js';
import {
  combined,
  deviationOf,
  horizonOf,
  type Rehearsed,
  type Weights,
  weightsBy,
  type Widths,
  widthsBy,
} from './combination.js';
import { seriesKey } from './correlated.js';
import { type FitProblem, type FitRequest, openFitProblem, soughtOf } from './fit-problem.js';
import type { Free } from './free-parameter.js';
import {
  cellsOf,
  eachWay,
  type Guessed,
  errorOf as errorOfReading,
  type Guesses,
  guessesAt,
  memoriesOf,
  type PastReading,
} from './guesses.js';
import { type KitScale, kitScale } from '../log/kit-scale.js';
import { type Modelled, modelledAt } from './modelled.js';
import type { Observation } from './readings.js';
import type { Spoiling } from './returning.js';
import { halfStepAt, shownByKit } from './shown-by-kit.js';

/** Days ahead to which forecasts are rehearsed. */
const rehearsedDays = 28;

/** The readings of one quantity in one place up to a day, on the scale of their kit. */
export interface Series {
  readonly key: string;
  readonly scale: KitScale;
  readonly spoiling: Spoiling;
  readonly past: readonly PastReading[];
}

type ErrorOf = FitProblem['errorOf'];

/** What the model has at a place of what was looked for, on the scale of a kit. */
const onScale = (
  scale: KitScale,
  i: number,
  { values, paced }: Pick<Modelled, 'values' | 'paced'>,
): Pick<PastReading, 'model' | 'paced'> => ({
  model: scale.to(values[i]),
  ...(paced && { paced: paced.map((each) => scale.to(each[i])) }),
});

/** The series of some observations with what the model has at each. */
export function seriesOf(
  errorOf: ErrorOf,
  observations: readonly Observation[],
  modelled: Pick<Modelled, 'values' | 'paced'>,
): ReadonlyMap<string, Series> {
  const indexed = observations.map((observation, i) => ({ observation, i }));
  return new Map(
    [...group(indexed, ({ observation }) => seriesKey(observation))].map(([key, own]) => {
      const error = errorOf(own[0].observation.reading.reads);
      const scale = kitScale(error);
      const past = own
        .map(({ observation: { reading, time }, i }): PastReading => ({
          time,
          low: scale.to(reading.low),
          high: scale.to(reading.high),
          value: scale.to(reading.value),
          ...onScale(scale, i, modelled),
        }))
        .sort((a, b) => a.time - b.time);
      const spoiling = { share: error.outlierShare, spread: error.outlierSpread };
      return [key, { key, scale, spoiling, past }];
    }),
  );
}

/** A forecast that was made on a day of the past of a reading that came after. */
export interface Rehearsal extends Rehearsed {
  /** First morning of the forecast, d since the start of the run. */
  readonly today: number;
  readonly observation: Observation;
  /** What the model alone had there, on the scale of the kit. */
  readonly model: number;
  readonly weights: Weights;
  /** The combination, on the scale of the kit. */
  readonly middle: number;
  readonly of50: number;
  readonly of90: number;
  readonly scale: KitScale;
}

/** A day of the past on which a forecast is rehearsed, with the numbers that were known then. */
export interface Origin {
  /** d since the start of the run; the first morning of the forecast is that of the next day. */
  readonly day: number;
  readonly deviates: readonly number[];
}

/** What the model of a day of the past has: at the readings up to it, and at those of the days ahead. */
interface ModelledDay {
  readonly today: number;
  readonly before: readonly Observation[];
  readonly after: readonly Observation[];
  /** At `before`, then at `after`. */
  readonly modelled: Modelled;
}

/** Runs the model as it was known on a day of the past; undefined where the run breaks off. */
function modelledOn(
  request: FitRequest,
  numbers: readonly Free[],
  all: readonly Observation[],
  { day, deviates }: Origin,
): ModelledDay | undefined {
  const { scenario } = request.system.read([]);
  const until = dateAfter(scenario.startDate, day);
  const problem = openFitProblem({ ...request, until, numbers }, rehearsedDays);
  const today = problem.days - problem.ahead;
  const after = all.filter(({ time }) => time >= today && time < today + rehearsedDays);
  const modelled = modelledAt(problem, deviates, soughtOf([...problem.observations, ...after]));
  return modelled && { today, before: problem.observations, after, modelled };
}

/** What a forecast of the past is made of. */
type Coming = readonly {
  readonly observation: Observation;
  readonly guessed: Guessed;
  readonly model: number;
  readonly evidence: Guesses;
  readonly series: Series;
}[];

function comingOf(errorOf: ErrorOf, { before, after, modelled }: ModelledDay): Coming {
  const series = seriesOf(errorOf, before, modelled);
  const indexed = after.map((observation, i) => ({ observation, place: before.length + i }));
  return [...group(indexed, ({ observation }) => seriesKey(observation))].flatMap(([key, own]) => {
    const known = series.get(key);
    if (known === undefined) return [];
    const { scale, past, spoiling } = known;
    const times = own.map(({ observation: { time }, place }) => ({
      time,
      ...onScale(scale, place, modelled),
    }));
    const { reads } = own[0].observation.reading;
    const { ahead, evidence } = guessesAt(past, times, spoiling, memoriesOf(reads));
    return ahead.map((guessed, i) => ({
      observation: own[i].observation,
      guessed,
      model: times[i].model,
      evidence,
      series: known,
    }));
  });
}

/**
 * Forecasts as they would have been made on days of the past, each by what was known then: the model's numbers, its feed
 * and temperature, the weights of the ways, and the bands. Those of one series are the history of the next.
 * A forecast is of what the instrument shows that was in use on its day, and is held against what was read.
 */
export function rehearse(
  request: FitRequest,
  { free, asRead, errorOf }: Pick<FitProblem, 'free' | 'asRead' | 'errorOf'>,
  origins: readonly Origin[],
): { readonly rehearsals: readonly Rehearsal[]; readonly failed: number } {
  const made = [...origins]
    .sort((a, b) => a.day - b.day)
    .map((origin) => modelledOn(request, free, asRead, origin))
    .filter((each) => each !== undefined);
  return { rehearsals: rehearsalsOf(errorOf, made), failed: origins.length - made.length };
}

/** Forecasts of days of the past by what the model of each had, in the order of the days. */
function rehearsalsOf(errorOf: ErrorOf, made: readonly ModelledDay[]): readonly Rehearsal[] {
  const rehearsals: Rehearsal[] = [];
  for (const known of made) {
    const { today } = known;
    const histories = group(
      rehearsals.filter(({ time }) => time < today),
      ({ observation }) => seriesKey(observation),
    );
    const bands = new Map<string, Widths>();
    for (const { observation, guessed, model, evidence, series } of comingOf(errorOf, known)) {
      const { scale, past } = series;
      const cells = cellsOf(past);
      const key = seriesKey(observation);
      const history = histories.get(key) ?? [];
      const band = bands.get(key) ?? widthsBy(history, today);
      bands.set(key, band);
      const ahead = observation.time - today;
      const horizon = horizonOf(ahead);
      const weights = weightsBy(evidence, history, horizon, today);
      const middle = combined(guessed, weights);
      const deviation = deviationOf(guessed, weights);
      const widths = band(ahead, deviation, halfStepAt(cells, middle));
      const [low, high] = [scale.to(observation.reading.low), scale.to(observation.reading.high)];
      const figure = scale.to(observation.reading.value);
      rehearsals.push({
        ...widths,
        today,
        time: observation.time,
        horizon,
        ahead,
        errors: eachWay((name) => figure - shownByKit(cells, guessed.guesses[name])),
        combined: errorOfReading(low, high, middle),
        deviation,
        observation,
        model,
        weights,
        middle,
        scale,
      });
    }
  }
  return rehearsals;
}
