import {
  csvTable,
  daysBetween,
  guessLogMap,
  type Measurable,
  readLog,
  readLogMap,
  type Run,
  seriesOf,
  type WaterLog,
} from '@leat/core';
import { blankLogMap, type LogColumns } from './blank-log.js';
import type { SystemNames } from './small-system.js';

/** A reading as a point of a picture: day of the run, value, and what the kit left open. */
export interface LogPoint {
  readonly t: number;
  readonly v: number;
  readonly low: number;
  readonly high: number;
}

/**
 * Reads a log in CSV: one with the columns of this edition's blank log by their map, another by one guessed from its header.
 * Throws InputError with what is wrong with it.
 */
export function logOf(csv: string, names: SystemNames, columns: LogColumns): WaterLog {
  const table = csvTable(csv, 'log.csv');
  const header = csv.slice(0, csv.search(/\r?\n|$/)).split(',');
  const { tank, filter, bed, sump, fish } = names;
  const map = header.includes(columns.date)
    ? blankLogMap(columns, names, header)
    : guessLogMap(table, { vessels: [tank, filter, bed, sump], cohorts: [fish] }).text;
  return readLog(table, readLogMap(map, 'map.yaml', table));
}

/** Readings of one quantity on the days of a run. */
export function logPoints(log: WaterLog, reads: Measurable, startDate: string): readonly LogPoint[] {
  return log.readings
    .filter((reading) => reading.reads === reads)
    .map(({ date, hour, value, low, high }) => ({
      t: daysBetween(startDate, date) + hour,
      ...{ v: value, low, high },
    }));
}

/** How far a run is from readings, root mean square; a run inside what a kit's step leaves open is not off at all. */
export function misfit(run: Run, series: string, points: readonly LogPoint[]): number {
  const course = seriesOf(run, series);
  const end = run.samples[run.samples.length - 1].time;
  const off = points
    .filter(({ t }) => t >= 0 && t <= end)
    .map(({ t, low, high }) => {
      const value = course.at(t);
      return value < low ? low - value : Math.max(0, value - high);
    });
  return off.length === 0
    ? Number.NaN
    : Math.sqrt(off.reduce((sum, each) => sum + each * each, 0) / off.length);
}
