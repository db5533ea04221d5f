import { ascending, mean } from 'd3-array';
import { dateAfter } from '../base/calendar.js';
import { openFitProblem, type FitRequest } from './fit-problem.js';
import { minimise } from './search.js';
import { dayOf, type Observation } from './readings.js';
import { covarianceOf, informationOf } from './diagnostics.js';
import { enough, searchProblem } from './search.js';
import { InputError } from '../base/faults.js';
import { createRandom } from '../base/random.js';
import { unitOfMeasurable } from '../scenario/measurables.js';
import type { Measurable } from '../scenario/scenario.js';
import { aheadAt, bandsAt, drawsOf } from './forecast.js';

/** How a backtest is made. */
export interface BacktestRequest extends FitRequest {
  /** Days from one forecast to the next. */
  readonly step: number;
  /** Days of log before the first forecast. */
  readonly warmUp: number;
  /** Draws of the fitted numbers in each forecast. */
  readonly members: number;
  /** Of the draws: a whole number from 0. */
  readonly seed: number;
}

/** How far ahead, d: from the day after the one before to this. */
const horizons = [7, 14, 28] as const;

/** How forecasts of a quantity did at one distance. */
export interface BacktestScore {
  readonly reads: Measurable;
  readonly vessel: string;
  /** Of the errors; '' for pH. */
  readonly unit: string;
  /** Readings up to so many days ahead, from the day after the horizon before. */
  readonly horizon: number;
  /** Readings judged. */
  readonly count: number;
  /** Mean absolute error of the model (middle of its draws), in the internal unit. */
  readonly model: number;
  /** The same of the forecast that the last reading stays. */
  readonly last: number;
  /** The same of the mean of the last 28 days. */
  readonly month: number;
  /** Share of the readings whose interval meets the band of 50 %, 0..1. */
  readonly in50: number;
  /** The same of the band of 90 %. */
  readonly in90: number;
}

/** A backtest; `failed` counts the draws whose run broke off. */
export interface Backtest {
  /** Last date known to each forecast. */
  readonly origins: readonly string[];
  readonly failed: number;
  readonly scores: readonly BacktestScore[];
  readonly notes: readonly string[];
}

interface Case {
  readonly observation: Observation;
  readonly horizon: number;
  readonly model: number;
  readonly last: number;
  readonly month: number;
  readonly in50: boolean;
  readonly in90: boolean;
}

/** The two forecasts that need no model; undefined where the past has no such reading. */
function baselines(
  past: readonly Observation[],
  to: Observation,
  today: number,
): { last: number; month: number } | undefined {
  const own = past
    .filter(({ reading, vessel }) => reading.reads === to.reading.reads && vessel === to.vessel)
    .sort((a, b) => a.time - b.time);
  if (own.length === 0) return undefined;
  const last = own[own.length - 1].reading.value;
  const lately = own.filter(({ time }) => time > today - 28);
  return { last, month: mean(lately, ({ reading }) => reading.value) ?? last };
}

function scored(cases: readonly Case[], nameOf: (vessel: number) => string): readonly BacktestScore[] {
  const keys = [
    ...new Set(
      cases.map(
        ({ observation, horizon }) => `${observation.reading.reads}|${observation.vessel}|${horizon}`,
      ),
    ),
  ];
  return keys
    .map((key): BacktestScore => {
      const own = cases.filter(
        ({ observation, horizon }) => `${observation.reading.reads}|${observation.vessel}|${horizon}` === key,
      );
      const error = (of: 'model' | 'last' | 'month'): number =>
        mean(own, (each) => Math.abs(each[of] - each.observation.reading.value)) ?? Number.NaN;
      const [{ observation, horizon }] = own;
      return {
        reads: observation.reading.reads,
        vessel: nameOf(observation.vessel),
        unit: unitOfMeasurable[observation.reading.reads],
        horizon,
        count: own.length,
        model: error('model'),
        last: error('last'),
        month: error('month'),
        in50: own.filter(({ in50 }) => in50).length / own.length,
        in90: own.filter(({ in90 }) => in90).length / own.length,
      };
    })
    .sort((a, b) => ascending(a.reads, b.reads) || ascending(a.vessel, b.vessel) || a.horizon - b.horizon);
}

/**
 * What forecasts from this log would have been worth: fits to what was known at a day, forecasts the days after with the
 * feed and temperature that were known then, holds the readings against it, and steps on.
 * @throws InputError as openFitProblem does, and where the log is too short for one forecast
 */
export function backtest(request: BacktestRequest): Backtest {
  const { step, warmUp, members, seed, tolerance = 1e-4 } = request;
  const whole = openFitProblem(request);
  const first = Math.max(dayOf(whole.scenario, request.log.from), 0) + warmUp;
  const lastDay = whole.days - 1;
  const origins: string[] = [];
  for (let day = first; day < lastDay; day += step) origins.push(dateAfter(whole.scenario.startDate, day));
  if (origins.length === 0) {
    throw new InputError([
      {
        file: request.log.file,
        problem: 'the log is too short for one forecast',
        expected: `more than ${warmUp} days`,
      },
    ]);
  }
  const random = createRandom(seed);
  let start = new Float64Array(whole.free.length);
  let failed = 0;
  const cases = origins.flatMap((until): Case[] => {
    const known = openFitProblem({ ...request, until, numbers: whole.free }, horizons[2]);
    const today = known.days - known.ahead;
    const coming = whole.observations.filter(({ time }) => time >= today && time <= today + horizons[2] - 1);
    const problem = searchProblem(known);
    const minimum = minimise(problem, start, { gain: enough, most: 20, carryOn: true });
    start = Float64Array.from(minimum.at);
    const { jacobian } = minimum;
    const curvature = Array.from(minimum.predicted, (value, i) => problem.loss(i, value).curvature);
    const covariance = covarianceOf(informationOf(jacobian, curvature));
    const sought = coming.map(({ reading, vessel, time }) => ({ reads: reading.reads, vessel, time }));
    const runs = drawsOf([...minimum.at], covariance, members, random)
      .map((at) => aheadAt(known, at, sought, undefined, tolerance))
      .filter((values) => values !== undefined);
    failed += members - runs.length;
    return coming.flatMap((observation, i): Case[] => {
      const base = baselines(known.observations, observation, today);
      if (base === undefined || runs.length === 0) return [];
      const { reads, low, high } = observation.reading;
      const values = runs.map((each) => each[i]);
      const { truth, reading } = bandsAt(values, known.errorOf(reads), random);
      const [, , middle] = truth;
      const [low90, low50, , high50, high90] = reading;
      const ahead = observation.time - today;
      return [
        {
          observation,
          horizon: horizons.find((horizon) => ahead < horizon) ?? horizons[2],
          model: middle,
          ...base,
          in50: high >= low50 && low <= high50,
          in90: high >= low90 && low <= high90,
        },
      ];
    });
  });
  return {
    origins,
    failed,
    scores: scored(cases, (vessel) => whole.scenario.vessels[vessel].name),
    notes: whole.notes,
  };
}
