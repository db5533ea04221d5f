import type { Fault } from '../../errors.js';
import { convert, describeDimension, parseQuantity, type Dimension } from '../../units.js';

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
  oxygen: 'concentration',
  chloride: 'concentration',
  'carbon-dioxide': 'concentration',
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
export function scaleOfSeries(series: string, unit: string): Scale {
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
export function unitsAgree(ofRow: string, ofScale: string): boolean {
  return ofRow === (same[ofScale] ?? ofScale);
}

const shape = /^([+-]?)((?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?) *(.*)$/;

/**
 * Reads a value written as a bare number (then in the unit of the scale) or with a unit; may be below zero.
 * @returns the value in the unit of the scale, or what is wrong with it
 */
export function valueOnScale(text: string, scale: Scale): number | Fault {
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
