import { group, mean } from 'd3-array';
import type { WaterLog } from '../log/water-log.js';
import type { TimedAction, DailyValue, Scenario } from '../scenario/scenario.js';
import { valueOn } from '../scenario/value-on.js';
import { dayOf } from './readings.js';

/** What was fed on days for which nothing is written: as on the last day with feed, the mean of those days, or nothing. */
export type UnloggedFeed = 'last' | 'mean' | 'none';

/** Feed of a log as actions, and what was assumed. */
interface LoggedFeed {
  /** One action a cohort on each day on which its ration changes. */
  readonly actions: readonly TimedAction[];
  /** Cohorts that the log feeds: what the file says of their rations does not count from `from` on. */
  readonly cohorts: ReadonlySet<string>;
  /** Day of the first feed. */
  readonly from: number;
  readonly notes: readonly string[];
}

/** Share of each cohort in feed that is written down for all, by their rations at the start. */
function sharesOf({ fish: cohorts }: Scenario): ReadonlyMap<string, number> {
  const weights = cohorts.map(({ name, ration, number, mass }): [string, number] => [
    name,
    ration.kind === 'mass'
      ? ration.gramsPerDay
      : number * mass * (ration.kind === 'share' ? ration.perDay : ration.rows[0].perDay),
  ]);
  const total = weights.reduce((sum, [, weight]) => sum + weight, 0);
  return new Map(weights.map(([name, weight]) => [name, total > 0 ? weight / total : 1 / weights.length]));
}

/** Grams by cohort and day, as written. */
function gramsByDay(log: WaterLog, scenario: Scenario, until: string): Map<string, Map<number, number>> {
  const shares = sharesOf(scenario);
  const fed = new Map<string, Map<number, number>>();
  const give = (cohort: string, day: number, grams: number): void => {
    const days = fed.get(cohort) ?? new Map<number, number>();
    days.set(day, (days.get(day) ?? 0) + grams);
    fed.set(cohort, days);
  };
  for (const { cohort, date, grams } of log.feed) {
    const day = dayOf(scenario, date);
    if (date > until || day < 0 || day >= scenario.days) continue;
    if (cohort === 'all') for (const [name, share] of shares) give(name, day, grams * share);
    else if (shares.has(cohort)) give(cohort, day, grams);
  }
  return fed;
}

/** d of first feed that a film has grown on, and how late after the start it may begin to tell of that. Judgment [P]. */
const firstFed = 14;

/** What a group of fish was fed when a log began, by which films that were cycled have grown. */
export interface FirstRation {
  readonly cohort: string;
  /** Feed of the group, g d-1. */
  readonly gramsPerDay: number;
}

/**
 * What a log feeds each group in its first two weeks, g d-1: what a film that was cycled has grown on, as far as a log tells.
 * None where the log's feed begins later than two weeks after the start.
 */
export function firstRations(log: WaterLog, scenario: Scenario, until: string): readonly FirstRation[] {
  const rations: FirstRation[] = [];
  for (const [cohort, days] of gramsByDay(log, scenario, until)) {
    const first = Math.min(...days.keys());
    if (first > firstFed) continue;
    const early = [...days].filter(([day]) => day < first + firstFed);
    const grams = mean(early, ([, each]) => each) ?? 0;
    // Where nothing was fed yet something else has fed the films, as in a file.
    if (grams > 0) rations.push({ cohort, gramsPerDay: grams });
  }
  return rations;
}

/**
 * The feed of a log, from its first day with feed on. After the last date of the log the mean of its last 14 days
 * goes on. Undefined where the log has no feed for this system.
 */
function loggedFeed(
  log: WaterLog,
  scenario: Scenario,
  until: string,
  unlogged: UnloggedFeed,
): LoggedFeed | undefined {
  const fed = gramsByDay(log, scenario, until);
  if (fed.size === 0) return undefined;
  const end = Math.min(dayOf(scenario, until < log.to ? until : log.to), Math.ceil(scenario.days) - 1);
  const actions: TimedAction[] = [];
  // Of all groups alike: a day counts once.
  const assumed = new Set<number>();
  let from = Infinity;
  for (const [cohort, days] of fed) {
    const first = Math.min(...days.keys());
    from = Math.min(from, first);
    const given = [...days.values()].filter((grams) => grams > 0);
    const usual = mean(given) ?? 0;
    const course: number[] = [];
    let last = 0;
    for (let day = first; day <= end; day++) {
      const today = days.get(day);
      if (today !== undefined && today > 0) last = today;
      if (today === undefined) assumed.add(day);
      course.push(today ?? (unlogged === 'last' ? last : unlogged === 'mean' ? usual : 0));
    }
    if (end + 1 < scenario.days) course.push(mean(course.slice(-14)) ?? 0);
    course.forEach((grams, i) => {
      if (i > 0 && grams === course[i - 1]) return;
      const ration = { kind: 'mass', gramsPerDay: grams } as const;
      actions.push({ at: first + i, action: { kind: 'feed', cohort, ration, factor: 1 } });
    });
  }
  const assumption = {
    last: 'as on the last day with feed before',
    mean: 'the mean of the days with feed',
    none: 'nothing',
  };
  const notes =
    assumed.size === 0
      ? []
      : [`feed on ${assumed.size} days for which none is written: ${assumption[unlogged]}`];
  return { actions, cohorts: new Set(fed.keys()), from, notes };
}

/** Days whose mean stands for what comes after the last reading. */
const lately = 14;

interface Point {
  readonly day: number;
  readonly value: number;
}

/** Value on the line between points, held flat before the first; undefined after the last. */
function onLine(points: readonly Point[], day: number): number | undefined {
  const after = points.findIndex((point) => point.day >= day);
  if (after < 0) return undefined;
  if (after === 0 || points[after].day === day) return points[after].value;
  const [a, b] = [points[after - 1], points[after]];
  return a.value + ((day - a.day) / (b.day - a.day)) * (b.value - a.value);
}

/**
 * Water temperature of every vessel by day as the log has it. Between readings the line; after the last what the file
 * says, moved by the mean distance of the last 14 days with a reading. A vessel without a thermometer follows the file,
 * moved as the others are on the mean. Undefined where the log has no temperatures.
 */
function loggedTemperature(
  log: WaterLog,
  scenario: Scenario,
  until: string,
): readonly DailyValue[] | undefined {
  const readings = log.readings.filter(
    ({ reads, date, low, high }) =>
      reads === 'temperature' && date <= until && Number.isFinite(low) && Number.isFinite(high),
  );
  const days = Math.ceil(scenario.days) + 1;
  const file = scenario.vessels.map(({ temperature }) =>
    Array.from({ length: days }, (_, day) => valueOn(temperature, scenario.startDate, day)),
  );
  const measured = scenario.vessels.map(({ name }, index): number[] | undefined => {
    const own = readings.filter(({ vessel }) => vessel === name);
    if (own.length === 0) return undefined;
    const points = [...group(own, ({ date }) => dayOf(scenario, date))]
      .map(([day, all]): Point => ({ day, value: mean(all, ({ value }) => value) ?? 0 }))
      .sort((a, b) => a.day - b.day);
    const last = points.slice(-lately).filter(({ day }) => day >= 0 && day < days);
    const moved = mean(last, ({ day, value }) => value - file[index][day]) ?? 0;
    return file[index].map((value, day) => onLine(points, day) ?? value + moved);
  });
  const known = measured.flatMap((values, vessel) => (values === undefined ? [] : [vessel]));
  if (known.length === 0) return undefined;
  return file.map((own, vessel): DailyValue => {
    const values =
      measured[vessel] ??
      own.map((value, day) => value + (mean(known, (k) => (measured[k]?.[day] ?? 0) - file[k][day]) ?? 0));
    return { kind: 'daily', values };
  });
}

/** Lays what a log tells of feed and temperature over a scenario. */
export interface LogForcing {
  readonly over: (scenario: Scenario) => Scenario;
  /** What was assumed, one line each. */
  readonly notes: readonly string[];
}

/**
 * What a log tells of feed and temperature, up to a date, to be laid over a scenario or over the same with other
 * numbers. Rations that the file's own actions set for a cohort the log feeds do not count from the log's first feed on.
 */
export function logForcing(
  log: WaterLog,
  scenario: Scenario,
  until: string,
  unlogged: UnloggedFeed,
): LogForcing {
  const feed = loggedFeed(log, scenario, until, unlogged);
  const temperature = loggedTemperature(log, scenario, until);
  const warm = new Map(temperature?.map((each, vessel) => [scenario.vessels[vessel].name, each]));
  const overruled = ({ at, action }: Scenario['actions'][number]): boolean =>
    feed !== undefined &&
    action.kind === 'feed' &&
    feed.cohorts.has(action.cohort) &&
    at >= feed.from &&
    (action.ration !== undefined || action.factor !== undefined);
  const dropped = scenario.actions.filter(overruled).length;
  return {
    over: (given) => ({
      ...given,
      vessels: given.vessels.map((vessel) => {
        const logged = warm.get(vessel.name);
        return logged === undefined ? vessel : { ...vessel, temperature: logged };
      }),
      actions: [...given.actions.filter((action) => !overruled(action)), ...(feed?.actions ?? [])],
    }),
    notes: [
      ...(feed === undefined ? ['no feed is written down: the rations of the file stand'] : feed.notes),
      ...(dropped === 0
        ? []
        : [`${dropped} actions of the file that set a ration: the log's feed stands instead`]),
      ...(temperature === undefined ? ['no temperature is written down: that of the file stands'] : []),
    ],
  };
}
