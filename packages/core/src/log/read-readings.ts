// Reads numbers as: reading of a log
import { dateAfter } from '../base/calendar.js';
import { pow10 } from '../base/elementary.js';
import type { Parameters } from '../library/parameters.js';
import { convert, type QuantityAnswer } from '../base/units.js';
import { serialStart } from './dates.js';
import type { ColumnUse, LogMap } from './log-map.js';
import { dimensionOf } from '../scenario/measurables.js';
import { readCell, saysNothing } from './read-cell.js';
import type { LogReading, Oddity } from './water-log.js';

type Readings = Extract<ColumnUse, { kind: 'readings' }>;

/** Where a cell stands. */
export interface CellPlace {
  readonly date: string;
  readonly hour: number;
  readonly row: number;
  readonly column: string;
}

/** How the numbers of a column are written. */
export interface ColumnWriting {
  /** Most decimals that any plain number of the column has: a 7 among 7.2 and 7.4 is a 7.0. */
  readonly decimals: number;
  /** Whether numbers of the log have a comma. */
  readonly commas: boolean;
}

/** A cell as a reading, or why not; with what is odd about it. */
export interface ReadingAnswer {
  readonly reading?: LogReading;
  readonly oddity?: Omit<Oddity, 'row' | 'column' | 'text'>;
}

/** Smallest thing a column can show, in its unit; undefined where the map does not say. */
function leastOf(use: Readings): number | undefined {
  return use.steps?.find((step) => step > 0) ?? use.resolution;
}

/** Bounds of what a shown value may truly be, in the unit that it is written in. */
function boundsOf(
  value: number,
  use: Pick<Readings, 'steps' | 'resolution'>,
  decimals: number,
): { low: number; high: number; odd?: string } {
  const { steps } = use;
  if (steps === undefined) {
    const half = (use.resolution ?? pow10(-decimals)) / 2;
    return { low: value - half, high: value + half };
  }
  const place = steps.indexOf(value);
  if (place >= 0) {
    return {
      low: place === 0 ? -Infinity : (steps[place - 1] + value) / 2,
      high: place === steps.length - 1 ? Infinity : (steps[place + 1] + value) / 2,
    };
  }
  const above = steps.findIndex((step) => step > value);
  return {
    low: above === 0 ? -Infinity : (steps[above < 0 ? steps.length - 1 : above - 1] ?? -Infinity),
    high: above < 0 ? Infinity : steps[above],
    odd: 'between the steps of the kit',
  };
}

/**
 * Reads one cell of a column of readings into an interval in internal units.
 */
export function readReading(
  text: string,
  use: Readings,
  { decimals, commas }: ColumnWriting,
  place: CellPlace,
  parameters: Parameters,
): ReadingAnswer {
  if (text === '') return {};
  if (saysNothing(text)) return { oddity: { problem: 'no reading', done: 'left out' } };
  const cell = readCell(text, leastOf(use), commas);
  if ('problem' in cell) return { oddity: { problem: cell.problem, done: 'left out' } };
  const dimension = dimensionOf[use.reads];
  const own = cell.unit === '' ? undefined : unitIn(cell.unit, use);
  if (own !== undefined && 'problem' in own) {
    const { problem } = own;
    const named = problem.includes(`"${cell.unit}"`) ? problem : `${problem} ("${cell.unit}")`;
    return { oddity: { problem: named, done: 'left out' } };
  }
  const unit = own?.unit ?? use.unit;
  const inner = (value: number): number => {
    if (!Number.isFinite(value) || dimension === undefined) return value;
    const answer: QuantityAnswer = convert(Math.abs(value), unit, dimension);
    // The unit was checked with the map: the number itself is beyond all measure.
    if ('problem' in answer) return Math.sign(value) * Infinity;
    // Below zero only by half a step of rounding, or a temperature.
    return dimension === 'temperature' ? signedTemperature(value, unit) : Math.sign(value) * answer.value;
  };
  const written = cell.low === cell.high ? cell.low : Number.isFinite(cell.low) ? cell.low : cell.high;
  const beyond = outside(inner(written), use, parameters);
  if (beyond !== undefined)
    return { oddity: asDayNumber(text, place, beyond) ?? slip(written, inner, use, parameters, beyond) };
  const plain = cell.low === cell.high;
  // What is written in another unit was not read off the column's kit: its last place bounds it.
  const bounds = !plain
    ? { low: cell.low, high: cell.high }
    : own?.differs === true
      ? boundsOf(cell.low, {}, cell.decimals ?? 0)
      : boundsOf(cell.low, use, decimals);
  const low = inner(bounds.low);
  const high = inner(bounds.high);
  const middle =
    Number.isFinite(low) && Number.isFinite(high) ? (low + high) / 2 : Number.isFinite(low) ? low : high;
  const odd = [
    cell.odd,
    'odd' in bounds ? bounds.odd : undefined,
    own?.differs === true ? `another unit than the column's (${cell.unit})` : undefined,
  ]
    .filter((part) => part !== undefined)
    .join(', ');
  const reading: LogReading = {
    ...place,
    reads: use.reads,
    vessel: use.vessel,
    low,
    high,
    value: plain ? inner(cell.low) : middle,
    text,
    ...(use.instrument === undefined ? {} : { instrument: use.instrument }),
  };
  return odd === ''
    ? { reading }
    : { reading, oddity: { problem: odd, done: `kept as ${interval(bounds, unit)}` } };
}

/**
 * The unit written in a cell: the column's own where it says no more than that (`ppm` in a column of mg N/L); ppm of
 * alkalinity in a column of degrees or equivalents is counted as calcium carbonate, as kits print it.
 */
function unitIn(written: string, use: Readings): { unit: string; differs: boolean } | { problem: string } {
  const dimension = dimensionOf[use.reads];
  if (dimension === undefined) {
    return /^(?:ph|su)$/i.test(written) ? { unit: '', differs: false } : { problem: 'pH has no unit' };
  }
  if (/^(?:ppm|mg\/l)$/i.test(written) && dimension !== 'temperature' && dimension !== 'volume') {
    if (dimension === 'alkalinity' && !/CaCO3/i.test(use.unit))
      return { unit: 'mg/L as CaCO3', differs: true };
    return { unit: use.unit, differs: false };
  }
  const answer = convert(1, written, dimension);
  if ('problem' in answer) return { problem: answer.problem };
  const same = convert(1, use.unit, dimension);
  return { unit: written, differs: !('value' in same) || same.value !== answer.value };
}

function signedTemperature(value: number, unit: string): number {
  const answer = convert(value, unit, 'temperature');
  return 'value' in answer ? answer.value : Number.NaN;
}

/** Why a value cannot be, or undefined. */
function outside(value: number, use: Readings, parameters: Parameters): string | undefined {
  const lowest = parameters.value(`log.${use.reads}.lowest`);
  const highest = parameters.value(`log.${use.reads}.highest`);
  if (value < lowest) return `no ${use.reads} is so low`;
  return value > highest || Number.isNaN(value) ? `no ${use.reads} is so high` : undefined;
}

/** A value that cannot be and is the number that a spreadsheet has for a day of about the year of its row: `1-2` typed, or a date. */
function asDayNumber(
  text: string,
  { date }: CellPlace,
  problem: string,
): NonNullable<ReadingAnswer['oddity']> | undefined {
  const day = /^\d{5}$/.test(text) ? dateAfter(serialStart, Number(text)) : undefined;
  if (day === undefined || Math.abs(Number(day.slice(0, 4)) - Number(date.slice(0, 4))) > 1) return undefined;
  const typed = readCell(day, undefined);
  const meant = 'problem' in typed ? '' : `; write ${typed.low}-${typed.high} if that was typed`;
  return { problem: `${problem}; to a spreadsheet it is the day ${day}`, done: `left out${meant}` };
}

/** A value that cannot be: left out, with the likely slip where one place of the point mends it. */
function slip(
  written: number,
  inner: (value: number) => number,
  use: Readings,
  parameters: Parameters,
  problem: string,
): NonNullable<ReadingAnswer['oddity']> {
  const mended = [written / 10, written / 100].find(
    (value) => outside(inner(value), use, parameters) === undefined,
  );
  const meant =
    mended === undefined || written < 0 ? '' : `; write ${Number(mended.toPrecision(12))} if that was meant`;
  return { problem, done: `left out${meant}` };
}

function interval({ low, high }: { low: number; high: number }, unit: string): string {
  const digits = (value: number): string => String(Number(value.toPrecision(6)));
  const of = unit === '' ? '' : ` ${unit}`;
  if (low === -Infinity) return `at most ${digits(high)}${of}`;
  if (high === Infinity) return `at least ${digits(low)}${of}`;
  return `${digits(low)} to ${digits(high)}${of}`;
}

/** The kit that a column is read with on a date. */
export function instrumentOn(use: Readings, date: string): Readings {
  const change = use.changes?.filter(({ from }) => from <= date).at(-1);
  if (change === undefined) return use;
  const { kind, reads, vessel } = use;
  const { unit, steps, resolution, instrument = change.from } = change;
  return {
    ...{ kind, reads, vessel, unit, instrument },
    ...(steps === undefined ? {} : { steps }),
    ...(resolution === undefined ? {} : { resolution }),
  };
}

/** Readings that tell a step, and steps that are looked for, in the unit of the column. */
const stepsSought = { least: 20, sizes: [100, 50, 20, 10, 5, 2, 1, 0.5, 0.25, 0.2, 0.1] } as const;

/** Columns whose numbers are all whole multiples of a step that the map does not give: their readings are less exact. */
export function coarseSteps(readings: readonly LogReading[], { columns, header }: LogMap): readonly Oddity[] {
  return [...columns].flatMap(([column, use]): Oddity[] => {
    if (
      use.kind !== 'readings' ||
      use.reads === 'temperature' ||
      use.steps !== undefined ||
      use.changes !== undefined
    )
      return [];
    const own = readings.filter(
      (reading) => reading.column === column && /^\d+(?:[.,]\d+)?$/.test(reading.text),
    );
    const values = own.map(({ text }) => Number(text.replace(',', '.')));
    const decimals = own.reduce((most, { text }) => Math.max(most, text.split(/[.,]/)[1]?.length ?? 0), 0);
    const taken = use.resolution ?? pow10(-decimals);
    const isMultiple = (value: number, size: number): boolean =>
      Math.abs(value / size - Math.round(value / size)) < 1e-6;
    const size = stepsSought.sizes.find(
      (each) =>
        each > 1.5 * taken &&
        values.filter((value) => isMultiple(value, each)).length >= 0.97 * values.length,
    );
    if (size === undefined || values.length < stepsSought.least || new Set(values).size < 3) return [];
    const problem = `steps are really ${size}: ${own.length} readings`;
    const done = `read as exact to ${taken}; with resolution: ${size} in the map they are not`;
    return [{ row: header, column, text: column, problem, done }];
  });
}
