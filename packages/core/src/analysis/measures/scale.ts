import type { Fault } from '../../base/faults.js';
import { nearest } from '../../base/nearest.js';
import { convert, describeDimension, type Dimension, parseQuantity } from '../../base/units.js';
import type { Parameters } from '../../library/parameters.js';
import { rangedOf } from '../../library/ranged-row.js';
import type { Model } from '../../model/model.js';
import { noSeriesNamed } from '../../result/no-series.js';
import type { LimitResult } from '../../result/limits.js';
import { seriesUnits } from '../../result/series.js';
import type { Run } from '../../run/run.js';

/** What the values of a measure are counted in. */
export interface Scale {
  /** As shown, such as `mg N/L`. */
  readonly unit: string;
  /** What else values may be written in; absent: only in `unit`. */
  readonly dimension?: Dimension;
  /** Whether values are differences, which may be below zero. */
  readonly difference?: boolean;
}

const dimensions: Readonly<Record<string, Dimension>> = {
  tan: 'ammonia',
  nitrite: 'nitrite',
  nitrate: 'nitrate',
  'un-ionised-ammonia': 'ammonia',
  alkalinity: 'alkalinity',
  solids: 'concentration',
  'degradable-solids': 'concentration',
  'refractory-solids': 'concentration',
  oxygen: 'concentration',
  chloride: 'concentration',
  calcium: 'calcium',
  'carbon-dioxide': 'concentration',
  conductivity: 'conductivity',
  temperature: 'temperature',
  volume: 'volume',
  'rain-tank': 'volume',
  'rain-tank-spilled': 'volume',
  'fish-mass': 'mass',
  'fish-mean-mass': 'mass',
  feed: 'mass-flow',
  evapotranspiration: 'volume-flow',
  'top-up': 'volume-flow',
  discharge: 'volume-flow',
};

/** The scale of a series such as `nitrate@sump` with its unit. */
function scaleOfSeries(series: string, unit: string): Scale {
  const dimension = dimensions[series.slice(0, series.indexOf('@'))];
  return dimension === undefined ? { unit } : { unit, dimension };
}

/** Units of the tables that are the same as one shown with a series. */
const same: Readonly<Record<string, string>> = {
  'mg/L': 'g/m3',
  'mg N/L': 'g/m3',
  'meq/L': 'eq/m3',
  'mmol/L': 'mol/m3',
};

/** Whether a number of the tables in one unit can be held against a value in another. */
function unitsAgree(ofRow: string, ofScale: string): boolean {
  return ofRow === (same[ofScale] ?? ofScale);
}

const shape = /^([+-]?)((?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?) *(.*)$/;

/**
 * Reads a value written as a bare number (then in the unit of the scale) or with a unit; may be below zero.
 * @returns the value in the unit of the scale, or what is wrong with it
 */
function valueOnScale(text: string, scale: Scale): number | Fault {
  const { unit, dimension, difference } = scale;
  const written =
    unit === '1'
      ? 'a number'
      : dimension === undefined
        ? `a number in ${unit}`
        : describeDimension(dimension);
  const match = shape.exec(text);
  if (match === null)
    return { got: text === '' ? 'nothing' : text, problem: 'not a value', expected: written };
  const [, sign, digits, name] = match;
  const value = (sign === '-' ? -1 : 1) * Number(digits);
  if (!Number.isFinite(value)) return { got: text, problem: 'not a finite number', expected: written };
  if (name === '' || name === unit) return value;
  const step = difference === true && dimension === 'temperature';
  if (dimension === undefined || step)
    return { got: name, problem: 'wrong unit', expected: step ? 'a difference in degC' : written };
  const answer =
    dimension === 'temperature'
      ? convert(value, name, dimension)
      : parseQuantity(`${digits} ${name}`, dimension);
  if ('problem' in answer) return { got: text, ...answer };
  return dimension === 'temperature' || sign !== '-' ? answer.value : -answer.value;
}

/** The scale of a series that is named in a measure, or what is wrong with the name. */
export function scaleOfWord(name: string | undefined, model: Model): Scale | Fault {
  const units = seriesUnits(model);
  const unit = name === undefined ? undefined : units.get(name);
  if (name !== undefined && unit !== undefined) return scaleOfSeries(name, unit);
  return noSeriesNamed(name ?? 'nothing', [...units.keys()]);
}

/** What a measure is held against: a value, or a number of the tables as a run has it. */
export type Level = (parameters: Parameters) => number;

/**
 * Reads `VALUE[ UNIT]`, or the id of a number of the tables such as `fish.nile-tilapia.limit-nitrite`.
 * @param known the numbers there are
 * @returns the level, or what is wrong with it
 */
export function levelOf(text: string, scale: Scale, known: Parameters): Level | Fault {
  if (/^[a-z][a-z0-9-]*(\.[a-z0-9-]+)+$/.test(text)) {
    if (!known.has(text)) {
      const near = nearest(text, known.ids());
      return {
        got: text,
        problem: 'no such number in the tables',
        ...(near === undefined ? {} : { nearest: near }),
      };
    }
    const { unit } = rangedOf(known.number(text));
    if (!unitsAgree(unit, scale.unit))
      return {
        got: `${text}, in ${unit}`,
        problem: 'wrong unit',
        expected: `a number in ${scale.unit}`,
      };
    return (parameters) => parameters.value(text);
  }
  const value = valueOnScale(text, scale);
  return typeof value === 'number' ? () => value : value;
}

/** A measure without its text, or all that is wrong with it. */
export type MeasureReading = (Scale & { of(run: Run): number }) | readonly Fault[];

/** A condition without its text. */
export interface ConditionReading {
  /** Of the margin: that of the measure, or 1 for a share of a limit. */
  readonly unit: string;
  /**
   * Judges a run. Throws NoAnswerError where the run broke off or cannot be judged.
   * @param limits of the run, where they are at hand
   */
  judge(run: Run, limits?: readonly LimitResult[]): Judgement;
}

/** How a run stands to a condition. */
export interface Judgement {
  /** How far the run is from not holding: above 0 holds, below 0 does not. */
  readonly margin: number;
  /** Whether it holds: margin > 0, and for limits also 0 (a limit reached is not passed). */
  readonly holds: boolean;
}
