// Reads numbers as: summary of a log
import { extent, quantile } from 'd3-array';
import { daysBetween } from '../base/calendar.js';
import { createParameters } from '../library/parameters.js';
import type { Measurable, Scenario } from '../scenario/scenario.js';
import { valueOn } from '../scenario/value-on.js';
import { sum } from '../base/sum.js';
import { measurables } from '../scenario/measurables.js';
import type { LogReading, WaterLog } from './water-log.js';

/** How a quantity was measured in a vessel; `lowest`, `median` and `highest` of the values in internal units. */
export interface LogCourse {
  readonly reads: Measurable;
  readonly vessel: string;
  /** Readings in all. */
  readonly count: number;
  /** Readings that only say less than, or more than. */
  readonly open: number;
  /** Longest time without a reading, d. */
  readonly gap: number;
  readonly lowest: number;
  readonly median: number;
  readonly highest: number;
}

/** What a log holds, and how it fits a system. */
export interface LogSummary {
  readonly courses: readonly LogCourse[];
  /** Days from the first date to the last, both counted. */
  readonly span: number;
  /** `grams` in all, and the number of `days` on which any was written down. */
  readonly feed: { readonly grams: number; readonly days: number };
  /** Nitrogen in that feed at the protein of the system's feed, g; absent without a system. */
  readonly nitrogen?: number;
  /** What does not fit the system, one clause each; empty without a system. */
  readonly doubts: readonly string[];
}

function courseOf(readings: readonly LogReading[]): LogCourse {
  const values = readings.map(({ value }) => value);
  const dates = [...new Set(readings.map(({ date }) => date))].sort();
  const gap = dates.reduce(
    (most, date, i) => (i === 0 ? 0 : Math.max(most, daysBetween(dates[i - 1], date))),
    0,
  );
  const [lowest = Number.NaN, highest = Number.NaN] = extent(values);
  return {
    reads: readings[0].reads,
    vessel: readings[0].vessel,
    count: readings.length,
    open: readings.filter(({ low, high }) => !Number.isFinite(low) || !Number.isFinite(high)).length,
    gap,
    lowest,
    median: quantile(values, 0.5) ?? Number.NaN,
    highest,
  };
}

function grouped(readings: readonly LogReading[]): LogReading[][] {
  const groups = new Map<string, LogReading[]>();
  for (const reading of readings) {
    const key = `${String(measurables.indexOf(reading.reads)).padStart(2, '0')} ${reading.vessel}`;
    groups.set(key, [...(groups.get(key) ?? []), reading]);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, group]) => group);
}

/** Protein of the feeds of a system, weighed by the cohorts alike; undefined without fish. */
function proteinOf({ fish: cohorts }: Scenario): number | undefined {
  return cohorts.length === 0 ? undefined : sum(cohorts.map(({ feed }) => feed.protein)) / cohorts.length;
}

/** Feed a day that the file offers, g; undefined where it depends on the fish. */
function rationOf({ fish: cohorts }: Scenario): number | undefined {
  const masses = cohorts.map(({ ration, number, mass }) =>
    ration.kind === 'mass'
      ? ration.gramsPerDay
      : ration.kind === 'share'
        ? ration.perDay * number * mass
        : undefined,
  );
  return masses.some((mass) => mass === undefined) ? undefined : sum(masses as number[]);
}

function* doubtsOf(
  log: WaterLog,
  scenario: Scenario,
  courses: readonly LogCourse[],
  nitrogen: number,
): Generator<string> {
  const vessels = new Set(scenario.vessels.map(({ name }) => name));
  for (const vessel of new Set(courses.map(({ vessel: name }) => name))) {
    if (!vessels.has(vessel)) yield `the system has no vessel ${vessel}: its readings say nothing of it`;
  }
  const cohorts = new Set(scenario.fish.map(({ name }) => name));
  for (const cohort of new Set(log.feed.map(({ cohort: name }) => name))) {
    if (cohort !== 'all' && !cohorts.has(cohort)) yield `the system has no fish called ${cohort}`;
  }
  const end = scenario.days;
  const from = daysBetween(scenario.startDate, log.from);
  const to = daysBetween(scenario.startDate, log.to);
  if (to < 0 || from > end)
    yield `the log (${log.from} to ${log.to}) lies outside the ${end} days from ${scenario.startDate}`;
  else if (from < 0 || to > end)
    yield `part of the log (${log.from} to ${log.to}) lies outside the ${end} days from ${scenario.startDate}`;
  const days = new Set(log.feed.map(({ date }) => date)).size;
  const ration = rationOf(scenario);
  if (days > 0 && ration !== undefined && ration > 0) {
    const logged = sum(log.feed.map(({ grams }) => grams)) / days;
    if (logged > 1.5 * ration || logged < ration / 1.5)
      yield `feed written down is ${logged.toPrecision(3)} g on a day with feed, the file offers ${ration.toPrecision(3)} g at the start`;
  }
  const volume = sum(scenario.vessels.map((vessel) => vessel.volume));
  for (const { reads, vessel, count } of courses) {
    if (reads !== 'nitrate' || count < 2 || nitrogen === 0) continue;
    const own = log.readings.filter((reading) => reading.reads === reads && reading.vessel === vessel);
    const rise = own[own.length - 1].low - own[0].high;
    if (rise * volume > nitrogen)
      yield `nitrate in ${vessel} rose by more nitrogen (${(rise * volume).toPrecision(3)} g in ${volume.toPrecision(3)} m3) than all feed brought (${nitrogen.toPrecision(3)} g)`;
  }
  for (const { reads, vessel, median } of courses) {
    const cell = scenario.vessels.find(({ name }) => name === vessel);
    if (reads !== 'temperature' || cell === undefined) continue;
    const middle = valueOn(cell.temperature, scenario.startDate, Math.max(0, Math.round((from + to) / 2)));
    if (Math.abs(median - middle) > 4)
      yield `temperature in ${vessel} is about ${median.toPrecision(3)} degC, the file has ${middle.toPrecision(3)} degC`;
  }
}

/** What was measured how often, with its gaps; nitrogen that came with feed; what does not fit the system file. */
export function summaryOfLog(log: WaterLog, scenario?: Scenario): LogSummary {
  const courses = grouped(log.readings).map(courseOf);
  const grams = sum(log.feed.map((each) => each.grams));
  const feed = { grams, days: new Set(log.feed.map(({ date }) => date)).size };
  const span = log.from === '' ? 0 : daysBetween(log.from, log.to) + 1;
  const protein = scenario === undefined ? undefined : proteinOf(scenario);
  if (scenario === undefined) return { courses, span, feed, doubts: [] };
  const nitrogen = grams * (protein ?? 0) * createParameters(scenario.overrides).value('protein.nitrogen');
  const doubts = log.from === '' ? [] : [...doubtsOf(log, scenario, courses, nitrogen)];
  return { courses, span, feed, nitrogen, doubts };
}
