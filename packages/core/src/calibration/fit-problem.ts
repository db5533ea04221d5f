import { bisectRight } from 'd3-array';
import { calendarDays } from '../base/calendar.js';
import { InputError } from '../base/faults.js';
import { createParameters, type Parameters } from '../library/parameters.js';
import type { WaterLog } from '../log/water-log.js';
import { compileChecked } from '../model/compile.js';
import { openChecked } from '../model/open-model.js';
import type { Extension } from '../model/own.js';
import { simulate } from '../run/stepping.js';
import type { IntegratorFactory } from '../solve/contract.js';
import { rosenbrock } from '../solve/rosenbrock.js';
import type { Run } from '../run/run.js';
import type { ResumableRun } from '../run/run-state.js';
import { trueValue } from '../run/test-kit.js';
import type { Measurable, Scenario } from '../scenario/scenario.js';
import { defaultFree } from './default-free.js';
import { type FitSystem, openScenarios, fittedValuesAt, withoutLogged } from './fitted-system.js';
import { alignedInstruments, type Offset, offsetNote } from './instruments.js';
import { grownOnLog } from './grown-start.js';
import type { Free } from './free-parameter.js';
import { readFree } from './read-free.js';
import { readingError, type ReadingError } from './reading-loss.js';
import { dayOf, type Observation, observationsOf } from './readings.js';
import { type FirstRation, logForcing, type LogForcing, type UnloggedFeed } from './with-log.js';

/** What is looked for in a run: a quantity in a vessel at a time, d. */
export interface Sought {
  readonly reads: Measurable;
  readonly vessel: number;
  readonly time: number;
}

/**
 * What truly stands in a run, on the straight line between its outputs; undefined where the run broke off or a
 * value is not finite. The run must reach every time.
 */
export function predictionsOf(run: Run, sought: readonly Sought[]): Float64Array | undefined {
  if (run.outcome.kind !== 'done') return undefined;
  const { model, samples } = run;
  const times = samples.map(({ time }) => time);
  const at = (sample: number, { reads, vessel }: Sought): number =>
    trueValue(reads, { model, ...samples[sample] }, vessel);
  const values = Float64Array.from(sought, (each) => {
    const before = Math.max(0, bisectRight(times, each.time) - 1);
    const rest = each.time - times[before];
    if (rest <= 0) return at(before, each);
    const after = Math.min(before + 1, samples.length - 1);
    const share = rest / (times[after] - times[before]);
    return at(before, each) * (1 - share) + at(after, each) * share;
  });
  return values.every(Number.isFinite) ? values : undefined;
}

/** What is fitted, and to what. */
export interface FitRequest {
  readonly system: FitSystem;
  readonly log: WaterLog;
  /** As `--free` writes them; none: a usual set. */
  readonly free: readonly string[];
  /** What may vary with its prior, in place of `free`. */
  readonly numbers?: readonly Free[];
  /** Last date of the log that counts; absent: its last. */
  readonly until?: string;
  /** What cycled films have grown on, where a fit says it; absent: the log's first feed. */
  readonly grownOn?: readonly FirstRation[];
  /** Default `last`. */
  readonly unloggedFeed?: UnloggedFeed;
  /**
   * Relative tolerance of the runs; default 3e-3: the log posterior of five vessels and 400 readings is then off by 0.02
   * beside 1e-6, and steps that derivatives promise are kept; at 1e-2 it is off by 0.13 and they are not.
   */
  readonly tolerance?: number;
  /** Called after each run, for a progress bar. */
  readonly onRun?: () => void;
}

/** A system, its log and what may vary, ready to be run. */
export interface FitProblem {
  readonly scenario: Scenario;
  /** Components and processes of the user's own. */
  readonly extension?: Extension;
  readonly parameters: Parameters;
  readonly free: readonly Free[];
  /** Of several instruments as the one in use last would have shown them. */
  readonly observations: readonly Observation[];
  /** The same as they were read. */
  readonly asRead: readonly Observation[];
  /** How much instruments differ. */
  readonly offsets: readonly Offset[];
  /** Last date that counts. */
  readonly until: string;
  /** Length of the runs, d: to the day after the last date and some days on. */
  readonly days: number;
  /** Days that they go on after the last date. */
  readonly ahead: number;
  /** Relative tolerance of the runs. */
  readonly tolerance: number;
  /** What cycled films have grown on in place of the file's rations. */
  readonly grownOn: readonly FirstRation[];
  readonly errorOf: (reads: Measurable) => ReadingError;
  /** The scenario at standard deviates, with the log's feed and temperature. */
  readonly scenarioAt: (at: ArrayLike<number>) => Scenario;
  /** What the log tells of feed and temperature. */
  readonly forcing: LogForcing;
  /** Values looked for in a run at deviates; undefined where the run breaks off. */
  readonly predict: (at: ArrayLike<number>, sought: readonly Sought[]) => Float64Array | undefined;
  /** Runs a scenario, as `scenarioAt` gives one. */
  readonly runOf: (scenario: Scenario) => ResumableRun;
  /** The same of a scenario, as `scenarioAt` gives one, with something changed. */
  readonly predictOf: (scenario: Scenario, sought: readonly Sought[]) => Float64Array | undefined;
  /** What was assumed and left out, one line each. */
  readonly notes: readonly string[];
}

/** What readings of a log are looked for as. */
export function soughtOf(observations: readonly Observation[]): readonly Sought[] {
  return observations.map(({ reading, vessel, time }) => ({ reads: reading.reads, vessel, time }));
}

/** Relative tolerance of the runs of a fit where none is given. */
const usualTolerance = 3e-3;

/**
 * RODAS whose steps go on over what happens to the water: where that makes them too long, error control finds it. In a run
 * through a log, whose feed and temperature are others every day, beginning anew takes more than half of all steps.
 */
const goingOn: IntegratorFactory = (system, tolerance, options) => {
  const inner = rosenbrock(system, tolerance, options);
  return {
    name: inner.name,
    work: inner.work,
    ...(inner.memory && { memory: inner.memory }),
    restart: () => undefined,
    advance: (from, to, y, x, outputs) => inner.advance(from, to, y, x, outputs),
  };
};

const nitrogen: readonly Measurable[] = ['ammonia', 'nitrite', 'nitrate'];

function logFault(log: WaterLog, scenario: Scenario, until: string): InputError | undefined {
  const { file } = log;
  if (log.from === '') return new InputError([{ file, problem: 'an empty log: no row has a date' }]);
  if (calendarDays(until) === undefined || until < log.from) {
    return new InputError([
      {
        file,
        problem: 'no row of the log is left up to the last date that counts',
        got: until,
        expected: `a date from ${log.from} to ${log.to}`,
      },
    ]);
  }
  const end = dayOf(scenario, until);
  if (end < 0 || dayOf(scenario, log.from) > scenario.days) {
    return new InputError([
      {
        file,
        problem: `the log lies outside the run of the system file: nothing in it can be held against the model`,
        got: `${log.from} to ${until}`,
        expected: `dates in the ${scenario.days} days from start-date ${scenario.startDate}`,
      },
    ]);
  }
  return undefined;
}

function* warningsOf(observations: readonly Observation[]): Generator<string> {
  if (!observations.some(({ reading }) => nitrogen.includes(reading.reads)))
    yield 'warning: no reading of ammonia, nitrite or nitrate: the log tells nothing of how nitrogen turns over';
  for (const reads of nitrogen) {
    const own = observations.filter(({ reading }) => reading.reads === reads);
    if (own.length > 1 && own.every(({ reading }) => reading.value <= 0 || reading.low === -Infinity))
      yield `warning: all ${own.length} readings of ${reads} are zero or below what the kit shows: they only bound it`;
  }
}

/**
 * Makes a fit ready: reads the system for as long as the log goes, takes from the log feed, temperature and readings, and
 * reads what may vary.
 * @param ahead days that the runs go on after the last date
 * @throws InputError where the log is empty, of another time, or holds no reading of this system, and where a free
 *   number is none
 */
export function openFitProblem(request: FitRequest, ahead = 0): FitProblem {
  const { log, tolerance = usualTolerance } = request;
  const whole = request.system.read([]).scenario;
  const until = request.until !== undefined && request.until < log.to ? request.until : log.to;
  const fault = logFault(log, whole, until);
  if (fault !== undefined) throw fault;
  const days = dayOf(whole, until) + 1 + ahead;
  const { system, grownOn, notes: grown } = grownOnLog(request.system, log, until, request.grownOn);
  const base = system.read([], days);
  const lastDay = dayOf(whole, until);
  const scenario: Scenario = withoutLogged({ ...base.scenario, every: 1 }, system, lastDay + 1);
  const { all: asRead, notes: left } = observationsOf(log, scenario, until);
  if (asRead.length === 0) {
    throw new InputError([
      {
        file: log.file,
        problem: 'no reading in the log is of this system and within its run: there is nothing to fit to',
        expected: `readings in ${scenario.vessels.map(({ name }) => name).join(', ')}, from ${scenario.startDate} on`,
      },
    ]);
  }
  const forcing = logForcing(log, scenario, until, request.unloggedFeed ?? 'last');
  const opened = openChecked({ ...base, scenario: forcing.over(scenario) });
  // Which numbers are read shows in a run; where what may vary is given, none is needed.
  const { parameters } =
    request.numbers === undefined ? simulate(opened.model, { tolerance }).model : opened.model;
  const used = opened.used();
  const errorOf = (reads: Measurable): ReadingError => readingError(parameters, reads);
  const { observations, offsets } = alignedInstruments(asRead, errorOf);
  const names = request.free.length > 0 ? request.free : defaultFree(scenario, parameters, used);
  const free = request.numbers ?? readFree(names, scenario, parameters);
  const unread =
    request.numbers === undefined
      ? free.filter(({ kind, name }) => kind === 'number' && !used.includes(name))
      : [];
  const scenarios = openScenarios(system, base, days, lastDay + 1);
  const scenarioAt = (at: ArrayLike<number>): Scenario =>
    forcing.over({ ...scenarios(fittedValuesAt(free, at)), every: 1 });
  const runOf = (built: Scenario): ResumableRun => {
    const options = { closureDraws: 0, ...(base.extension && { extension: base.extension }) };
    const run = simulate(compileChecked(built, createParameters(built.overrides), options), {
      tolerance,
      integrator: goingOn,
    });
    request.onRun?.();
    return run;
  };
  return {
    scenario,
    ...(base.extension && { extension: base.extension }),
    parameters,
    free,
    observations,
    asRead,
    offsets,
    until,
    days,
    ahead,
    tolerance,
    grownOn,
    errorOf,
    scenarioAt,
    forcing,
    runOf,
    predict: (at, sought) => predictionsOf(runOf(scenarioAt(at)), sought),
    predictOf: (built, sought) => predictionsOf(runOf(built), sought),
    notes: [
      ...left,
      ...offsets.map(offsetNote),
      ...forcing.notes,
      ...grown,
      ...unread.map(({ name }) => `warning: nothing in this system reads ${name}: it stays at its prior`),
      ...warningsOf(observations),
      ...(days - ahead > whole.days
        ? [
            `the log goes on after the ${whole.days} days of the file: the run is made ${days - ahead} days long`,
          ]
        : []),
    ],
  };
}
