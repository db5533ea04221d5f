import { daysBetween } from '../base/calendar.js';
import { sha256 } from '../base/hashes.js';
import type { LogReading, WaterLog } from '../log/water-log.js';
import type { Scenario } from '../scenario/scenario.js';

/** A reading held against a run. */
export interface Observation {
  readonly reading: LogReading;
  /** Place of its vessel among those of the system. */
  readonly vessel: number;
  /** d since the start of the run. */
  readonly time: number;
}

/** Which cell of a log a reading is. */
export const readingKey = ({ row, column }: LogReading): string => `${row}|${column}`;

/** The readings that a run can be held against, and what was left out, one line each. */
export interface Observations {
  readonly all: readonly Observation[];
  readonly notes: readonly string[];
}

/** Days from the start of a scenario to a moment of its log. */
export function dayOf(scenario: Scenario, date: string): number {
  return daysBetween(scenario.startDate, date);
}

/**
 * Readings of a log in the vessels of a system from its start up to a date, that date included. Temperatures are left
 * to the forcing.
 */
export function observationsOf(log: WaterLog, scenario: Scenario, until: string): Observations {
  const vesselOf = new Map(scenario.vessels.map(({ name }, vessel) => [name, vessel]));
  const strange = new Map<string, number>();
  let early = 0;
  let late = 0;
  const all = log.readings.flatMap((reading): Observation[] => {
    if (reading.reads === 'temperature') return [];
    const vessel = vesselOf.get(reading.vessel);
    if (vessel === undefined) {
      strange.set(reading.vessel, (strange.get(reading.vessel) ?? 0) + 1);
      return [];
    }
    const time = dayOf(scenario, reading.date) + reading.hour;
    if (reading.date > until) late += 1;
    else if (time < 0) early += 1;
    else return [{ reading, vessel, time }];
    return [];
  });
  const notes = [...strange].map(
    ([vessel, count]) => `${count} readings in ${vessel}, which this system does not have: left out`,
  );
  if (early > 0) notes.push(`${early} readings before ${scenario.startDate}, where the run starts: left out`);
  if (late > 0) notes.push(`${late} readings after ${until}: left out`);
  return { all, notes };
}

/** Lines of actions that a log and its map tell of, up to a date. */
const doneUntil = ({ actions, added }: WaterLog, until: string): readonly string[] =>
  [...actions.map(({ line }) => line), ...added].filter(
    (line) => (/\d{4}-\d{2}-\d{2}/.exec(line)?.[0] ?? '') <= until,
  );

/**
 * Hash of what was read of a log up to a date, that date included: intervals, feed and when they were, and what was done, by the log
 * or by lines of the map.
 * @param done whether what was done counts: fits of older versions left it out
 */
export function logHash(log: WaterLog, until: string, done = true): string {
  const { readings, feed } = log;
  const facts = readings
    .filter(({ date }) => date <= until)
    .map(({ date, hour, reads, vessel, low, high }) => [
      ...[date, hour, reads, vessel],
      ...[low, high].map(String),
    ]);
  const fed = feed
    .filter(({ date }) => date <= until)
    .map(({ date, cohort, grams }) => [date, cohort, grams]);
  const lines = done ? doneUntil(log, until) : [];
  return sha256(JSON.stringify([facts, fed, ...(lines.length === 0 ? [] : [lines])]));
}
