import { readLog, readLogMap, csvTable, createRandom, dateAfter, type WaterLog } from '@leat/core';
import { normalQuantile } from '../../packages/core/src/base/normal.js';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import { compileModel } from '../../packages/core/src/model/compile.js';
import { simulate } from '../../packages/core/src/run/stepping.js';
import { predictionsOf } from '../../packages/core/src/calibration/fit-problem.js';
import { readingError } from '../../packages/core/src/calibration/reading-loss.js';
import type { TimedAction, Measurable, Scenario } from '../../packages/core/src/scenario/scenario.js';

/** A column of an invented log: what a kit shows of a quantity in a vessel, in internal units. */
export interface InventedColumn {
  readonly reads: Measurable;
  readonly vessel: string;
  /** Values that the kit can show; absent: whole multiples of `resolution`. */
  readonly steps?: readonly number[];
  readonly resolution?: number;
  /** Share of days on which it is read. */
  readonly often: number;
}

/** How a log is invented. */
export interface Invention {
  readonly seed: number;
  readonly days: number;
  readonly columns: readonly InventedColumn[];
  /** Feed written down on a day, g; undefined: none is written. */
  readonly feed?: (day: number) => number;
  readonly temperature?: (day: number) => number;
  /** Share of readings that are spoilt: a reading of another spread (8 times the kit's). */
  readonly spoilt: number;
}

const units: Readonly<Record<string, string>> = {
  ammonia: 'mg N/L',
  nitrite: 'mg N/L',
  nitrate: 'mg N/L',
  alkalinity: 'meq/L',
  oxygen: 'mg/L',
};

const nameOf = ({ reads, vessel }: InventedColumn): string => `${reads} ${vessel}`;

/**
 * The map of an invented log.
 * @param system what stands before the names of its columns where one file holds the logs of several systems
 */
export function inventedMap(columns: readonly InventedColumn[], vessel: string, system = ''): string {
  return [
    'date: { column: Date, order: day-month-year }',
    'columns:',
    ...columns.map((column) => {
      const { reads, steps, resolution } = column;
      const unit = reads === 'pH' ? '' : `, unit: ${units[reads]}`;
      const kit =
        steps !== undefined
          ? `, steps: [${steps.join(', ')}]`
          : resolution
            ? `, resolution: ${resolution}`
            : '';
      return `  ${system}${nameOf(column)}: { reads: ${reads}, in: ${column.vessel}${unit}${kit} }`;
    }),
    `  ${system}Feed: { feed: all, unit: g }`,
    `  ${system}Temp: { reads: temperature, in: ${vessel}, unit: degC }`,
    '',
  ].join('\n');
}

function shown(column: InventedColumn, value: number): string {
  const { steps, resolution = 0.1 } = column;
  if (steps === undefined) {
    const decimals = Math.max(0, Math.ceil(-Math.log10(resolution) - 1e-9));
    return Math.max(0, Math.round(value / resolution) * resolution).toFixed(decimals);
  }
  return String(
    steps.reduce((near, step) => (Math.abs(step - value) < Math.abs(near - value) ? step : near)),
  );
}

/** A log of a scenario as a keeper with kits would write it: errors of the kit, its steps, gaps, spoilt readings. */
export function inventedLog(scenario: Scenario, invention: Invention): string {
  const { seed, days, columns, spoilt } = invention;
  const random = createRandom(seed);
  const deviate = (): number => normalQuantile(Math.min(Math.max(random(), 1e-12), 1 - 1e-12));
  const { feed: fed, temperature: warmth } = invention;
  const each = Array.from({ length: days + 1 }, (_, day) => day);
  const shares = scenario.fish.map(({ ration }) => (ration.kind === 'mass' ? ration.gramsPerDay : 1));
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const kept: Scenario = {
    ...scenario,
    vessels: scenario.vessels.map((vessel) =>
      warmth === undefined ? vessel : { ...vessel, temperature: { kind: 'daily', values: each.map(warmth) } },
    ),
    actions: [
      ...scenario.actions,
      ...(fed === undefined
        ? []
        : each.flatMap((day) =>
            scenario.fish.map(({ name }, c): TimedAction => {
              const ration = { kind: 'mass', gramsPerDay: (fed(day) * shares[c]) / whole } as const;
              return { at: day, action: { kind: 'feed', cohort: name, ration } };
            }),
          )),
    ],
  };
  const run = simulate(
    compileModel({ ...kept, every: 1, days: days + 1 }, createParameters(scenario.overrides), {
      closureDraws: 0,
    }),
  );
  const vesselOf = new Map(scenario.vessels.map(({ name }, vessel) => [name, vessel]));
  const parameters = createParameters();
  const courses = columns.map(({ reads, vessel }) =>
    predictionsOf(
      run,
      Array.from({ length: days }, (_, time) => ({ reads, vessel: vesselOf.get(vessel) ?? -1, time })),
    ),
  );
  const rows = Array.from({ length: days }, (_, day) => {
    const [year, month, date] = dateAfter(scenario.startDate, day).split('-');
    const readings = columns.map((column, i) => {
      const course = courses[i];
      if (course === undefined) throw new Error(`the run ended with ${JSON.stringify(run.outcome)}`);
      const read = random() < column.often;
      const wide = random() < spoilt ? 8 : 1;
      const error = readingError(parameters, column.reads).deviation(course[day]) * wide * deviate();
      return read ? shown(column, course[day] + error) : '';
    });
    const feed = invention.feed === undefined ? '' : String(invention.feed(day));
    const warm = invention.temperature === undefined ? '' : invention.temperature(day).toFixed(1);
    return [`${date}/${month}/${year}`, ...readings, feed, warm].join(',');
  });
  return `${[['Date', ...columns.map(nameOf), 'Feed', 'Temp'].join(','), ...rows].join('\n')}\n`;
}

/** Logs of several systems over the same days as one file: the columns of each after its name. */
export function joinedLogs(logs: readonly { readonly system: string; readonly text: string }[]): string {
  const parts = logs.map(({ system, text }) => {
    const [header, ...rows] = text
      .trim()
      .split('\n')
      .map((line) => line.split(','));
    return [header.map((name, i) => (i === 0 ? name : `${system}${name}`)), ...rows];
  });
  const lines = parts[0].map(([date], row) => [date, ...parts.flatMap((part) => part[row].slice(1))]);
  return `${lines.map((cells) => cells.join(',')).join('\n')}\n`;
}

/** An invented log, read as any log is. */
export function readInvented(text: string, map: string): WaterLog {
  const table = csvTable(text, 'log.csv');
  return readLog(table, readLogMap(map, 'map.yaml', table));
}
