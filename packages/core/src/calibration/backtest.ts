import { ascending, group, mean } from 'd3-array';
import { dateAfter } from '../base/calendar.js';
import { exp, log } from '../base/elementary.js';
import { InputError } from '../base/faults.js';
import { deviate95, normalQuantile } from '../base/normal.js';
import { unitOfMeasurable } from '../scenario/measurables.js';
import type { Measurable } from '../scenario/scenario.js';
import { horizons, shareWithin, type Weights } from './combination.js';
import { seriesKey } from './correlated.js';
import { type FitProblem, openFitProblem, type FitRequest } from './fit-problem.js';
import { eachWay } from './guesses.js';
import { dayOf, type Observation } from './readings.js';
import { rehearse, type Rehearsal } from './rehearse.js';
import { pastFits, slopesAtMiddle } from './search-fit.js';
import { answered } from './wanted.js';
import { shownByKit } from './shown-by-kit.js';

/** How a backtest is made. */
export interface BacktestRequest extends FitRequest {
  /** Days from one forecast to the next. */
  readonly step: number;
  /** Days of log before the first forecast. */
  readonly warmUp: number;
  /** Most fits that are made; between two of them the earlier stands. Default 8. */
  readonly fits?: number;
}

/** How forecasts of a quantity did at one distance; errors are mean absolute ones in the internal unit. */
export interface BacktestScore {
  readonly reads: Measurable;
  readonly vessel: string;
  /** Of the errors; '' for pH. */
  readonly unit: string;
  /** Readings up to so many days ahead, from the day after the horizon before. */
  readonly horizon: number;
  /** Readings judged. */
  readonly count: number;
  /** Of the forecast: the combination, as the kit shows it. */
  readonly forecast: number;
  /** Of the model alone. */
  readonly model: number;
  /** Of the forecast that the last reading stays. */
  readonly last: number;
  /** Of the mean of the last 28 days. */
  readonly month: number;
  /** Mean weights of what the forecast was made of. */
  readonly weights: Weights;
  /** Share of the readings in the band of 50 % of what a kit shows, 0..1: each by as much of it as lies there. */
  readonly in50: number;
  /** The same of the band of 90 %. */
  readonly in90: number;
}

/** A backtest; `failed` counts the forecasts whose run broke off. */
export interface Backtest {
  /** Last date known to each forecast. */
  readonly origins: readonly string[];
  /** Last date known to each fit. */
  readonly fits: readonly string[];
  readonly failed: number;
  readonly scores: readonly BacktestScore[];
  /**
   * Error of the forecast over that of the better of the two simple guesses, as a geometric mean over the scores; absent
   * where no score has both errors above 0.
   */
  readonly overGuess?: number;
  readonly notes: readonly string[];
}

/** A rehearsed forecast with its errors in the internal unit. */
interface Case {
  readonly rehearsal: Rehearsal;
  readonly forecast: number;
  readonly model: number;
  readonly last: number;
  readonly month: number;
}

const monthLong = 28;

/** Errors of a forecast and of the two guesses that need no model, by what was known on its day. */
function caseOf(rehearsal: Rehearsal, own: readonly Observation[], today: number): Case {
  const { observation, middle, scale, model } = rehearsal;
  const { value } = observation.reading;
  const known = own.filter(({ time }) => time < today);
  const last = known[known.length - 1].reading.value;
  const lately = known.filter(({ time }) => time > today - monthLong);
  const shown = shownByKit(
    known.map(({ reading }) => reading),
    scale.from(middle),
  );
  return {
    rehearsal,
    forecast: Math.abs(shown - value),
    model: Math.abs(scale.from(model) - value),
    last: Math.abs(last - value),
    month: Math.abs((mean(lately, ({ reading }) => reading.value) ?? last) - value),
  };
}

function scoreOf(own: readonly Case[], nameOf: (vessel: number) => string): BacktestScore {
  const [
    {
      rehearsal: { observation, horizon },
    },
  ] = own;
  const average = (of: (each: Case) => number): number => mean(own, of) ?? Number.NaN;
  const within = (
    {
      rehearsal: {
        observation: { reading },
        scale,
        middle,
        of50,
        of90,
      },
    }: Case,
    half: 50 | 90,
  ): number => {
    const [low, high] = [scale.to(reading.low), scale.to(reading.high)];
    return half === 50
      ? shareWithin(low, high, middle, of50, normalQuantile(0.75))
      : shareWithin(low, high, middle, of90, deviate95);
  };
  return {
    reads: observation.reading.reads,
    vessel: nameOf(observation.vessel),
    unit: unitOfMeasurable[observation.reading.reads],
    horizon: horizons[horizon],
    count: own.length,
    forecast: average(({ forecast }) => forecast),
    model: average(({ model }) => model),
    last: average(({ last }) => last),
    month: average(({ month }) => month),
    weights: eachWay((name) => average(({ rehearsal }) => rehearsal.weights[name])),
    in50: average((each) => within(each, 50)),
    in90: average((each) => within(each, 90)),
  };
}

/** Error of the forecast over that of the better simple guess, as a geometric mean. */
function overBetterGuess(scores: readonly BacktestScore[]): number | undefined {
  const ratios = scores.map(({ forecast, last, month }) => forecast / Math.min(last, month));
  const average = mean(
    ratios.filter((ratio) => Number.isFinite(ratio) && ratio > 0),
    (ratio) => log(ratio),
  );
  return average === undefined ? undefined : exp(average);
}

/** How forecasts of the past did, by quantity, place and distance. */
function scoresOf(
  observations: readonly Observation[],
  rehearsals: readonly Rehearsal[],
  nameOf: (vessel: number) => string,
): readonly BacktestScore[] {
  const series = group(
    [...observations].sort((a, b) => a.time - b.time),
    seriesKey,
  );
  const cases = rehearsals.map((rehearsal) =>
    caseOf(rehearsal, series.get(seriesKey(rehearsal.observation)) ?? [], rehearsal.today),
  );
  const cells = group(
    cases,
    ({ rehearsal: { observation, horizon } }) => `${seriesKey(observation)}|${horizon}`,
  );
  return [...cells.values()]
    .map((own) => scoreOf(own, nameOf))
    .sort((a, b) => ascending(a.reads, b.reads) || ascending(a.vessel, b.vessel) || a.horizon - b.horizon);
}

/** Fits to the past, from derivatives at the middle of the priors on. */
function* fitsOnTheWay(request: FitRequest, whole: FitProblem, days: readonly number[]) {
  return yield* pastFits(request, whole, yield* slopesAtMiddle(whole), days);
}

/**
 * What forecasts from this log would have been worth: fits to what was known at a day, forecasts the days after with the
 * feed and temperature that were known then, by ways weighted by what each was worth up to then, holds the readings
 * against it, and steps on.
 * @throws InputError as openFitProblem does, and where the log is too short for one forecast
 */
export function backtest(request: BacktestRequest): Backtest {
  const { step, warmUp, fits: most = 8 } = request;
  const whole = openFitProblem(request);
  const first = Math.max(dayOf(whole.scenario, request.log.from), 0) + warmUp;
  const lastDay = whole.days - 1;
  const days: number[] = [];
  for (let day = first; day < lastDay; day += step) days.push(day);
  if (days.length === 0) {
    throw new InputError([
      {
        file: request.log.file,
        problem: 'the log is too short for one forecast',
        expected: `more than ${warmUp} days`,
      },
    ]);
  }
  const every = Math.ceil(days.length / most);
  const fitted = answered(
    fitsOnTheWay(
      request,
      whole,
      days.filter((_, i) => i % every === 0),
    ),
  );
  const prior = whole.free.map(() => 0);
  const origins = days.map((day) => ({
    day,
    deviates: fitted.filter(({ until }) => dayOf(whole.scenario, until) <= day).at(-1)?.deviates ?? prior,
  }));
  const { rehearsals, failed } = rehearse(request, whole, origins);
  const scores = scoresOf(whole.asRead, rehearsals, (vessel) => whole.scenario.vessels[vessel].name);
  const overGuess = overBetterGuess(scores);
  return {
    origins: days.map((day) => dateAfter(whole.scenario.startDate, day)),
    fits: fitted.map(({ until }) => until),
    failed,
    scores,
    ...(overGuess === undefined ? {} : { overGuess }),
    notes: whole.notes,
  };
}
