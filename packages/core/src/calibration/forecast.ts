import { deviation } from 'd3-array';
import { Matrix } from 'ml-matrix';
import { quantilesOf } from '../analysis/uncertainty/quantiles.js';
import { dateAfter } from '../base/calendar.js';
import { normalQuantile } from '../base/normal.js';
import { createRandom } from '../base/random.js';
import { createParameters } from '../library/parameters.js';
import { compileChecked } from '../model/compile.js';
import type { ResumableRun } from '../run/run-state.js';
import { simulate } from '../run/stepping.js';
import { type EndState, endStateOf } from '../run/saved.js';
import { unitOfMeasurable } from '../scenario/measurables.js';
import type { TimedAction, Cohort, Measurable, Scenario } from '../scenario/scenario.js';
import { combinedCourse, type DayAhead, type Told } from './combined-course.js';
import { seriesKey } from './correlated.js';
import { rootOf } from './diagnostics.js';
import { type Modelled, modelledAt } from './modelled.js';
import { upTo, type WindowStart } from './window.js';
import { type Origin, rehearse, type Series, seriesOf } from './rehearse.js';
import { dayOf } from './readings.js';
import type { ReadingError } from './reading-loss.js';
import { fitDoubts, type SavedFit } from './fit-file.js';
import {
  type FitProblem,
  type FitRequest,
  openFitProblem,
  predictionsOf,
  type Sought,
  soughtOf,
} from './fit-problem.js';
import {
  type FitSystem,
  type FittedValue,
  settingsOf,
  fittedValuesAt,
  withFittedStart,
  withoutLogged,
} from './fitted-system.js';

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Feed of a cohort as a file has it. */
function feeding({ fish: cohorts, actions }: Scenario, name: string): unknown {
  const cohort = cohorts.find((each: Cohort) => each.name === name);
  const fed = actions.filter(({ action }: TimedAction) => action.kind === 'feed' && action.cohort === name);
  return [cohort?.ration, cohort?.feed, fed.map(({ at, action }) => ({ at, action }))];
}

/**
 * The scenario of a what-if at fitted values. The log's feed and temperature stand for what lies ahead as well, save
 * where the what-if says something of its own about them.
 */
function whatIfAt(
  problem: FitProblem,
  system: FitSystem,
  values: readonly FittedValue[],
  today: number,
): Scenario {
  const { scenario: own, forcing, days } = problem;
  const written = withFittedStart(system.read(settingsOf(values), days).scenario, values);
  const forced = forcing.over({ ...written, every: 1 });
  const fedAnew = new Set(
    written.fish.map(({ name }) => name).filter((name) => !same(feeding(own, name), feeding(written, name))),
  );
  const isFeed = ({ action }: TimedAction): boolean => action.kind === 'feed' && fedAnew.has(action.cohort);
  const rations = written.fish
    .filter(({ name }) => fedAnew.has(name))
    .map(({ name, ration }): TimedAction => ({
      at: today,
      action: { kind: 'feed', cohort: name, ration, factor: 1 },
    }));
  const vessels = forced.vessels.map((vessel, index) => {
    const before = own.vessels.find(({ name }) => name === vessel.name);
    const { temperature } = written.vessels[index];
    return same(before?.temperature, temperature) ? vessel : { ...vessel, temperature };
  });
  return {
    ...forced,
    vessels,
    actions: [
      ...forced.actions.filter((action) => !isFeed(action)),
      ...rations,
      ...written.actions.filter((action) => isFeed(action) && action.at >= today),
    ],
  };
}

/** How a forecast is made. */
export interface ForecastRequest extends Omit<FitRequest, 'free' | 'numbers'> {
  readonly fit: SavedFit;
  /** Days ahead, whole. */
  readonly days: number;
  /** Draws of the numbers; the first is the fit itself. */
  readonly members: number;
  /** Of the draws: a whole number from 0. */
  readonly seed: number;
  /** The system as it is to be from tomorrow on; absent: as it is. */
  readonly whatIf?: FitSystem;
}

/** Shares of the draws that lie below each line of a band: the ends of 90 %, the ends of 50 %, and the middle. */
const bandShares = [0.05, 0.25, 0.5, 0.75, 0.95] as const;

/** Lines of the bands of what is there and of what a kit would show, for each of `bandShares`, in the internal unit. */
interface DrawnBands {
  readonly truth: readonly number[];
  readonly reading: readonly number[];
}

/**
 * The bands of a quantity at one time: the same for a forecast and for the backtest that judges it.
 * @param values one a draw
 * @param error of the kit, drawn once for each of them
 */
export function bandsAt(values: readonly number[], error: ReadingError, random: () => number): DrawnBands {
  const shown = values.map((value) => value + error.deviation(value) * normalDraw(random));
  return { truth: quantilesOf(values, bandShares), reading: quantilesOf(shown, bandShares) };
}

/** A quantity in the days ahead. */
export interface ForecastCourse {
  /**
   * What the forecast was made of, at each distance: the level of the readings with none, half or all of the model's change,
   * weighed by what each was worth in the past of this log. None where the log has no reading of it: then it is the model alone.
   */
  readonly told: readonly Told[];
  readonly reads: Measurable;
  readonly vessel: string;
  /** Of the values; '' for pH. */
  readonly unit: string;
  /**
   * For each day the values below which 5, 25, 50, 75 and 95 % of the draws lie: what is there, in the internal unit.
   */
  readonly truth: readonly (readonly number[])[];
  /** The same of what a kit would show, its error drawn too. */
  readonly reading: readonly (readonly number[])[];
}

/** What is to be expected. */
export interface Forecast {
  /** First morning of the forecast, the day after the last date of the log. */
  readonly from: string;
  readonly dates: readonly string[];
  /** Draws that the bands are made of. */
  readonly members: number;
  /** Draws whose run broke off; they are not in the bands. */
  readonly failed: number;
  readonly courses: readonly ForecastCourse[];
  readonly notes: readonly string[];
}

const forecastable: readonly Measurable[] = ['ammonia', 'nitrite', 'nitrate', 'pH', 'alkalinity', 'oxygen'];

/** A standard normal draw. */
function normalDraw(random: () => number): number {
  return normalQuantile(Math.min(Math.max(random(), 1e-12), 1 - 1e-12));
}

/** Deviates drawn from a fit; the first is the fit itself. */
function drawsOf(
  middle: readonly number[],
  covariance: Matrix,
  members: number,
  random: () => number,
): readonly Float64Array[] {
  const root = rootOf(covariance);
  return Array.from({ length: members }, (_, member) => {
    const draw = middle.map(() => (member === 0 ? 0 : normalDraw(random)));
    return Float64Array.from(
      middle,
      (each, j) => each + draw.reduce((sum, z, k) => sum + root.get(j, k) * z, 0),
    );
  });
}

function run(scenario: Scenario, { extension }: FitProblem, tolerance: number): ResumableRun {
  const options = { closureDraws: 0, ...(extension && { extension }) };
  return simulate(compileChecked(scenario, createParameters(scenario.overrides), options), { tolerance });
}

/** The state at a day of a scenario that is known up to it; undefined where its run breaks off. */
function stateOn(known: Scenario, day: number, problem: FitProblem, tolerance: number): EndState | undefined {
  const past = run(upTo(known, day), problem, tolerance);
  return past.outcome.kind === 'done' ? endStateOf(past) : undefined;
}

/** Values looked for in the days ahead, at deviates; undefined where a run breaks off. */
function aheadAt(
  problem: FitProblem,
  at: Float64Array,
  sought: readonly Sought[],
  { whatIf, start }: { readonly whatIf: FitSystem | undefined; readonly start: WindowStart | undefined },
  tolerance: number,
): Float64Array | undefined {
  const today = problem.days - problem.ahead;
  const known = problem.scenarioAt(at);
  const before = start && stateOn(known, start.day, problem, tolerance);
  if (start !== undefined && before === undefined) return undefined;
  const begun = start && before ? { ...known, saved: start.moved(before) } : known;
  const saved = stateOn(begun, today, problem, tolerance);
  if (saved === undefined) return undefined;
  const coming =
    whatIf === undefined ? known : whatIfAt(problem, whatIf, fittedValuesAt(problem.free, at), today);
  return predictionsOf(run({ ...coming, saved }, problem, tolerance), sought);
}

/** Days between forecasts of the past, and how many of them are made at most: judgment [P]. */
const rehearsals = { every: 14, most: 26 } as const;

/** Days of the past on which forecasts are rehearsed, with the numbers that were known then. */
function originsOf({ past = [] }: SavedFit, problem: FitProblem): readonly Origin[] {
  const known = past.map(({ until, deviates }) => ({ day: dayOf(problem.scenario, until), deviates }));
  const first = known[0]?.day ?? Infinity;
  const last = problem.days - problem.ahead - 8;
  const every = Math.max(rehearsals.every, (last - first) / rehearsals.most);
  const origins: Origin[] = [];
  for (let day = first; day <= last; day += every) {
    const whole = Math.round(day);
    origins.push({ day: whole, deviates: known.filter((each) => each.day <= whole).at(-1)?.deviates ?? [] });
  }
  return origins;
}

/** What a fitted system does in the days ahead by the draws of its numbers, and as it is fitted. */
interface Ahead {
  /** A row a draw, of the system as it is to be. */
  readonly runs: readonly Float64Array[];
  /** The same draws of the system as it is; the same rows where nothing changes. */
  readonly plain: readonly Float64Array[];
  readonly failed: number;
  /** Whether the fit itself is the first of them. */
  readonly whole: boolean;
}

function aheadOf(
  problem: FitProblem,
  draws: readonly Float64Array[],
  sought: readonly Sought[],
  start: WindowStart | undefined,
  { whatIf, tolerance = 1e-3, onRun }: ForecastRequest,
): Ahead {
  const pairs = draws.flatMap((at, draw) => {
    onRun?.();
    const changed = aheadAt(problem, at, sought, { whatIf, start }, tolerance);
    const plain =
      whatIf === undefined ? changed : aheadAt(problem, at, sought, { whatIf: undefined, start }, tolerance);
    return changed === undefined || plain === undefined ? [] : [{ draw, changed, plain }];
  });
  return {
    runs: pairs.map(({ changed }) => changed),
    plain: pairs.map(({ plain }) => plain),
    failed: draws.length - pairs.length,
    whole: pairs[0]?.draw === 0,
  };
}

/** The days ahead of one place, on the scale of its kit: what the fit has, and what a what-if changes. */
function daysAhead(
  { runs, plain }: Ahead,
  paced: readonly Float64Array[] | undefined,
  { scale }: Series,
  first: number,
  days: number,
  today: number,
): readonly DayAhead[] {
  return Array.from({ length: days + 1 }, (_, day): DayAhead => {
    const place = first + day;
    const changes = runs.map((values, i) => scale.to(values[place]) - scale.to(plain[i][place]));
    return {
      time: today + day,
      model: scale.to(plain[0][place]),
      ...(paced && { paced: paced.map((each) => scale.to(each[place])) }),
      change: changes[0],
      unsure: deviation(changes) ?? 0,
    };
  });
}

/** What the state of today rests on, one line each. */
function stateNotes(modelled: Modelled | undefined, from: string): readonly string[] {
  if (modelled?.paced !== undefined)
    return [
      'a start-up: nitrite oxidisers may come up slower than the fit has it, until your nitrite falls; weighed by your readings',
    ];
  return modelled?.start === undefined
    ? []
    : [`goes on from the films, the water and the stocks that your readings since ${from} support`];
}

/**
 * What a fitted system will do, from the state at the end of the log. What the log has readings of is foretold by a
 * combination of habit and of the model's change, weighted by what each was worth in the log's past; all else by the model alone,
 * for each draw of the fitted numbers by its own run through the log. The log's late feed and temperature go on, or a
 * what-if is laid over them, of which the model's change counts. The notes say where the fit was made of another system, or
 * of another log.
 * @throws InputError as openFitProblem does
 */
export function forecast(request: ForecastRequest): Forecast {
  const { fit, days, members, seed } = request;
  const { grownOn } = fit;
  const plainRequest = { ...request, free: [], numbers: fit.numbers, ...(grownOn && { grownOn }) };
  const problem = openFitProblem(plainRequest, days);
  const vessels = [...new Set(problem.observations.map(({ vessel }) => vessel))].sort((a, b) => a - b);
  const places = vessels.flatMap((vessel) => forecastable.map((reads) => ({ reads, vessel })));
  const today = problem.days - problem.ahead;
  const sought = places.flatMap((place) =>
    Array.from({ length: days + 1 }, (_, day) => ({ ...place, time: today + day })),
  );
  const random = createRandom(seed);
  const middle = fit.numbers.map(({ deviate }) => deviate);
  const draws = drawsOf(middle, new Matrix(fit.covariance.map((row) => [...row])), members, random);
  const { observations } = problem;
  const modelled = modelledAt(problem, middle, [...soughtOf(observations), ...sought]);
  const ahead = aheadOf(problem, draws, sought, modelled?.start, request);
  const series = modelled && seriesOf(problem.errorOf, observations, modelled);
  const paced = modelled?.paced?.map((each) => each.subarray(observations.length));
  const origins = originsOf(fit, problem);
  const past = rehearse(plainRequest, problem, origins).rehearsals;
  const courses = places.map(({ reads, vessel }, p): ForecastCourse => {
    const first = p * (days + 1);
    const own = series?.get(`${reads}|${vessel}`);
    const history = past.filter(({ observation }) => seriesKey(observation) === own?.key);
    const made =
      own === undefined || ahead.runs.length === 0
        ? {
            told: [],
            lines: Array.from({ length: days + 1 }, (_, day) =>
              bandsAt(
                ahead.runs.map((values) => values[first + day]),
                problem.errorOf(reads),
                random,
              ),
            ),
          }
        : combinedCourse(own, reads, daysAhead(ahead, paced, own, first, days, today), today, history);
    return {
      told: made.told,
      reads,
      vessel: problem.scenario.vessels[vessel].name,
      unit: unitOfMeasurable[reads],
      truth: made.lines.map(({ truth }) => truth),
      reading: made.lines.map(({ reading }) => reading),
    };
  });
  const from = dateAfter(problem.until, 1);
  return {
    from,
    dates: Array.from({ length: days + 1 }, (_, day) => dateAfter(from, day)),
    members: ahead.runs.length,
    failed: ahead.failed,
    courses,
    notes: [
      ...problem.notes,
      ...stateNotes(modelled, dateAfter(problem.scenario.startDate, modelled?.start?.day ?? 0)),
      ...(ahead.whole || ahead.runs.length === 0
        ? []
        : [
            'warning: the run of the fit itself breaks off in the days ahead: another draw of its numbers stands for it',
          ]),
      ...(origins.length > 0
        ? []
        : [
            'warning: this fit holds no fits to the past: no forecast of it was rehearsed, and weights and bands rest on how the readings went alone',
          ]),
      ...fitDoubts(fit, {
        scenario: withoutLogged(request.system.read([]).scenario, request.system),
        log: request.log,
        until: problem.until,
      }),
    ],
  };
}
