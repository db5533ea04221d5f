import { wholePower } from './elementary.js';
import { degreeOfHardness } from './hardness.js';
import { nearest } from './nearest.js';

/** What a quantity measures, and so what it may be written in. */
export type Dimension =
  | 'length'
  | 'area'
  | 'volume'
  | 'mass'
  | 'time'
  | 'temperature'
  | 'volume-flow'
  | 'mass-flow'
  | 'depth-rate'
  | 'rate'
  | 'share'
  | 'share-rate'
  | 'mole-share'
  | 'concentration'
  | 'ammonia'
  | 'nitrite'
  | 'nitrate'
  | 'alkalinity'
  | 'radiation'
  | 'light'
  | 'speed'
  | 'calcium'
  | 'conductivity';

/** A unit against the internal one: internal = value x factor + offset. */
interface Unit {
  readonly factor: number;
  readonly offset: number;
}

interface DimensionText {
  /** Named in messages: `a volume`. */
  readonly name: string;
  /** Shown in messages and to editors. */
  readonly examples: readonly [string, ...string[]];
  /** What the internal unit is called. */
  readonly internal: string;
}

/** What is wrong with a written quantity. */
export interface QuantityFault {
  readonly problem: string;
  readonly expected: string;
  readonly nearest?: string;
}

/** A quantity (`value`) in the internal unit, or what is wrong with it. */
export type QuantityAnswer = { readonly value: number } | QuantityFault;

const texts: Record<Dimension, DimensionText> = {
  length: { name: 'a length', examples: ['1.2 m', '40 cm', '16 in'], internal: 'm' },
  area: { name: 'an area', examples: ['12 m2', '130 ft2'], internal: 'm2' },
  volume: { name: 'a volume', examples: ['1.8 m3', '450 L', '110 gal'], internal: 'm3' },
  mass: { name: 'a mass', examples: ['40 g', '1.5 kg', '3 lb'], internal: 'g' },
  time: { name: 'a time', examples: ['30 d', '6 h', '2 weeks'], internal: 'd' },
  temperature: { name: 'a temperature', examples: ['24 degC', '75 degF'], internal: 'degC' },
  'volume-flow': { name: 'a flow of water', examples: ['2 m3/h', '30 L/min', '120 L/d'], internal: 'm3/d' },
  'mass-flow': { name: 'a mass a day', examples: ['80 g/d', '1.2 kg/d'], internal: 'g/d' },
  'depth-rate': { name: 'a depth of water a day', examples: ['5 mm/d', '0.2 in/d'], internal: 'm/d' },
  rate: { name: 'a rate', examples: ['3 1/h', '40 1/d'], internal: '1/d' },
  share: { name: 'a share', examples: ['60 %', '0.6'], internal: '1' },
  'share-rate': { name: 'a share a day', examples: ['1.5 %/d', '15 g/kg/d'], internal: '1/d' },
  'mole-share': { name: 'a share of the air', examples: ['420 ppm', '0.08 %'], internal: 'mol/mol' },
  concentration: { name: 'a concentration', examples: ['40 mg/L', '40 g/m3'], internal: 'g/m3' },
  ammonia: { name: 'an ammonia nitrogen', examples: ['0.5 mg N/L', '0.6 mg/L as NH4'], internal: 'g N/m3' },
  nitrite: { name: 'a nitrite nitrogen', examples: ['0.2 mg N/L', '0.7 mg/L as NO2'], internal: 'g N/m3' },
  nitrate: { name: 'a nitrate nitrogen', examples: ['20 mg N/L', '90 mg/L as NO3'], internal: 'g N/m3' },
  alkalinity: {
    name: 'an alkalinity',
    examples: ['100 mg/L as CaCO3', '5.6 dKH', '2 meq/L'],
    internal: 'eq/m3',
  },
  radiation: { name: 'a solar radiation', examples: ['20 MJ/m2/d', '230 W/m2'], internal: 'MJ/m2/d' },
  light: {
    name: 'a photosynthetic light of a day',
    examples: ['17 mol/m2/d', '200 umol/m2/s'],
    internal: 'mol/m2/d',
  },
  speed: { name: 'a speed', examples: ['2 m/s', '7 km/h'], internal: 'm/s' },
  calcium: {
    name: 'a calcium',
    examples: ['40 mg/L', '100 mg/L as CaCO3', '1 mmol/L'],
    internal: 'mol/m3',
  },
  conductivity: {
    name: 'an electrical conductivity',
    examples: ['1.2 mS/cm', '900 uS/cm'],
    internal: 'mS/cm',
  },
};

/** Exact by definition: the international foot, pound and the US liquid gallon. */
const foot = 0.3048;
const inch = 0.0254;
const mile = 5280 * foot;
const pound = 453.59237;
const gallon = 0.003785411784;

/** Molar masses, g/mol: sums of IUPAC conventional atomic weights (H 1.008, C 12.011, N 14.007, O 15.999). */
const molar = { N: 14.007, NH3: 17.031, NH4: 18.039, NO2: 46.005, NO3: 62.004, HCO3: 61.016 };
/** Grams per equivalent: CaCO3 100.086 / 2. */
const calciteEquivalent = 50.043;
/** Molar mass of calcium, g/mol. */
const calcium = 40.078;

const lengths = { m: 1, cm: 0.01, mm: 0.001, in: inch, ft: foot };
const volumes = { m3: 1, L: 1e-3, mL: 1e-6, gal: gallon, ft3: wholePower(foot, 3) };
const masses = { g: 1, kg: 1000, mg: 1e-3, t: 1e6, lb: pound, oz: pound / 16 };
const times = { d: 1, h: 1 / 24, min: 1 / 1440, s: 1 / 86400, week: 7 };
const longTimes = { day: 1, days: 1, hour: 1 / 24, hours: 1 / 24, weeks: 7, minutes: 1 / 1440 };
const concentrations = { 'mg/L': 1, 'g/m3': 1, 'g/L': 1000, 'kg/m3': 1000, 'ug/L': 1e-3, ppm: 1 };

/** Every dimension. */
export const dimensionNames = Object.keys(texts) as readonly Dimension[];

function plainUnits(factors: Record<string, number>): [string, Unit][] {
  return Object.entries(factors).map(([name, factor]) => [name, { factor, offset: 0 }]);
}

/** Every unit of `above` for each unit of time. */
function perTime(above: Record<string, number>): [string, Unit][] {
  const spans = { ...times, day: 1 };
  return Object.entries(above).flatMap(([name, size]) =>
    Object.entries(spans).map(([span, days]): [string, Unit] => [
      `${name}/${span}`,
      { factor: size / days, offset: 0 },
    ]),
  );
}

/** Nitrogen said unmistakably: as N, or as the ion by its name. */
function nitrogenUnits(ions: readonly (keyof typeof molar)[]): [string, Unit][] {
  const asN = { 'mg N/L': 1, 'g N/m3': 1, 'ug N/L': 1e-3, 'ppm N': 1, 'mmol/L': molar.N, 'mol/m3': molar.N };
  const perIon = ions.flatMap((ion) =>
    Object.entries(concentrations).map(([name, size]): [string, number] => [
      `${name} as ${ion}`,
      (size * molar.N) / molar[ion],
    ]),
  );
  const spelled = Object.entries(concentrations).map(([name, size]): [string, number] => [
    `${name} as N`,
    size,
  ]);
  return plainUnits({ ...asN, ...Object.fromEntries(spelled), ...Object.fromEntries(perIon) });
}

/** The units of each dimension, by name. */
const unitsByDimension = (): Readonly<Record<Dimension, ReadonlyMap<string, Unit>>> => ({
  length: new Map(plainUnits(lengths)),
  area: new Map(plainUnits({ m2: 1, cm2: 1e-4, ft2: wholePower(foot, 2) })),
  volume: new Map(plainUnits({ ...volumes, litre: 1e-3, litres: 1e-3, liter: 1e-3, liters: 1e-3 })),
  mass: new Map(plainUnits(masses)),
  time: new Map(plainUnits({ ...times, ...longTimes })),
  temperature: new Map<string, Unit>([
    ['degC', { factor: 1, offset: 0 }],
    ['C', { factor: 1, offset: 0 }],
    ['degF', { factor: 5 / 9, offset: -160 / 9 }],
    ['F', { factor: 5 / 9, offset: -160 / 9 }],
    ['K', { factor: 1, offset: -273.15 }],
  ]),
  'volume-flow': new Map([...perTime(volumes), ['gpm', { factor: gallon * 1440, offset: 0 }]]),
  'mass-flow': new Map(perTime(masses)),
  'depth-rate': new Map(perTime({ mm: 0.001, cm: 0.01, m: 1, in: inch })),
  rate: new Map([...perTime({ '1': 1 }), ...perTime({ '': 1 })]),
  share: new Map(plainUnits({ '%': 0.01 })),
  'share-rate': new Map([...perTime({ '%': 0.01, '1': 1 }), ...perTime({ 'g/kg': 0.001 })]),
  'mole-share': new Map(plainUnits({ 'mol/mol': 1, ppm: 1e-6, 'umol/mol': 1e-6, '%': 0.01 })),
  concentration: new Map(plainUnits(concentrations)),
  ammonia: new Map(nitrogenUnits(['NH3', 'NH4'])),
  nitrite: new Map(nitrogenUnits(['NO2'])),
  nitrate: new Map(nitrogenUnits(['NO3'])),
  alkalinity: new Map(
    plainUnits({
      'eq/m3': 1,
      'meq/L': 1,
      'mg/L as CaCO3': 1 / calciteEquivalent,
      'ppm as CaCO3': 1 / calciteEquivalent,
      'g/m3 as CaCO3': 1 / calciteEquivalent,
      'mg/L as HCO3': 1 / molar.HCO3,
      dKH: degreeOfHardness,
    }),
  ),
  radiation: new Map(
    plainUnits({ 'MJ/m2/d': 1, 'MJ/m2/day': 1, 'kWh/m2/d': 3.6, 'J/cm2/d': 0.01, 'W/m2': 0.0864 }),
  ),
  light: new Map(plainUnits({ 'mol/m2/d': 1, 'mol/m2/day': 1, 'umol/m2/s': 0.0864 })),
  speed: new Map(plainUnits({ 'm/s': 1, 'km/h': 1 / 3.6, 'km/d': 1 / 86.4, mph: mile / 3600 })),
  calcium: new Map(
    plainUnits({
      'mol/m3': 1,
      'mmol/L': 1,
      'mg/L': 1 / calcium,
      'g/m3': 1 / calcium,
      ppm: 1 / calcium,
      'mg/L as Ca': 1 / calcium,
      'mg/L as CaCO3': 0.5 / calciteEquivalent,
      'ppm as CaCO3': 0.5 / calciteEquivalent,
      dGH: degreeOfHardness / 2,
    }),
  ),
  conductivity: new Map(plainUnits({ 'mS/cm': 1, 'dS/m': 1, 'uS/cm': 1e-3, 'S/m': 10, 'mS/m': 0.01 })),
});

// Pure: a program that reads no written quantities is sent without them.
const table = /* @__PURE__ */ unitsByDimension();

/** What is expected where a quantity stands: `a volume such as "1.8 m3" or "450 L"`. */
export function describeDimension(dimension: Dimension): string {
  const { name, examples } = texts[dimension];
  return `${name} such as ${examples
    .slice(0, 2)
    .map((example) => `"${example}"`)
    .join(' or ')}`;
}

/** Examples of the dimension as written in a file. */
export function exampleQuantities(dimension: Dimension): readonly string[] {
  return texts[dimension].examples;
}

/** Name of the internal unit of a dimension, as it may be written in a file. */
export function internalUnit(dimension: Dimension): string {
  return texts[dimension].internal;
}

/** Writes an internal `value` so that {@link parseQuantity} reads the same number back. */
export function formatQuantity(value: number, dimension: Dimension): string {
  const { internal } = texts[dimension];
  return internal === '1' ? String(value) : `${value} ${internal}`;
}

/** Largest quantity in its internal unit: 1000 km3 of water, a million tonnes. Above it sums lose what is small. */
const largest = 1e12;

/**
 * What is wrong with a quantity in the internal unit of its dimension; undefined where nothing is. Only temperatures
 * may be below zero.
 */
export function quantityProblem(value: number, dimension: Dimension): string | undefined {
  if (!Number.isFinite(value)) return 'not a finite number';
  if (Math.abs(value) > largest) return 'larger than anything on earth';
  if (dimension === 'temperature') return value < -273.15 ? 'below absolute zero' : undefined;
  return value < 0 ? 'negative' : undefined;
}

/** Signs that people type or paste for the plain ones. */
function normaliseUnit(unit: string): string {
  return unit
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/ ?\/ ?/g, '/')
    .replace(/\^?²|\^2/g, '2')
    .replace(/\^?³|\^3/g, '3')
    .replace(/[µμ]/g, 'u')
    .replace(/° ?([CF])/g, 'deg$1')
    .replace(/(^|\/|m)l(?![a-z])/g, '$1L')
    .replace(/₂/g, '2')
    .replace(/₃/g, '3')
    .replace(/₄/g, '4')
    .replace(/^mg\/L N$/, 'mg N/L');
}

function dimensionsOf(unit: string): Dimension[] {
  return (Object.keys(table) as Dimension[]).filter((dimension) => table[dimension].has(unit));
}

/** The dimensions that may be written in a unit, however its signs are typed; none for what is no unit. */
export function dimensionsWith(unit: string): readonly Dimension[] {
  return dimensionsOf(normaliseUnit(unit));
}

/** The units of a dimension by name, the internal one and its like first. */
export function unitNames(dimension: Dimension): readonly string[] {
  return [...table[dimension].keys()];
}

const nitrogen: ReadonlySet<Dimension> = new Set(['ammonia', 'nitrite', 'nitrate']);

function unitFault(unit: string, dimension: Dimension): QuantityFault {
  const expected = describeDimension(dimension);
  if (nitrogen.has(dimension) && table.concentration.has(unit)) {
    const [, ion = ''] = texts[dimension].examples;
    return {
      problem: 'ambiguous unit: it may mean nitrogen or the whole ion',
      expected: `"mg N/L" for nitrogen or "${ion.replace(/^[\d.]+ /, '')}" for the ion`,
    };
  }
  if (dimension === 'alkalinity' && table.concentration.has(unit)) {
    return { problem: 'ambiguous unit: it does not say as what', expected };
  }
  const others = dimensionsOf(unit);
  if (others[0] !== undefined) {
    return { problem: `wrong dimension: this is ${texts[others[0]].name}`, expected };
  }
  const guess = nearest(unit, [...table[dimension].keys()]);
  return { problem: `unknown unit "${unit}"`, expected, ...(guess === undefined ? {} : { nearest: guess }) };
}

/**
 * Converts a number (`value`) in a named unit to the internal unit of its dimension.
 * The sign is checked too: only temperatures may be below zero.
 */
export function convert(value: number, unit: string, dimension: Dimension): QuantityAnswer {
  const name = normaliseUnit(unit);
  const found = table[dimension].get(name);
  if (found === undefined) return unitFault(name, dimension);
  const converted = value * found.factor + found.offset;
  const expected = describeDimension(dimension);
  const problem = quantityProblem(converted, dimension);
  return problem === undefined ? { value: converted } : { problem, expected };
}

const shape = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*(.*)$/;

/**
 * Reads a written quantity such as `"450 L"` into the internal unit of its dimension.
 *
 * Never guesses: a bare number, another dimension, an unknown unit, a decimal comma and values that
 * are not finite are answered by what is wrong with them.
 */
export function parseQuantity(text: string, dimension: Dimension): QuantityAnswer {
  const expected = describeDimension(dimension);
  const trimmed = text.trim().replace(/^\u2212/, '-');
  if (/^[+-]?\.?(nan|inf|infinity)\b/i.test(trimmed)) return { problem: 'not a finite number', expected };
  const match = shape.exec(trimmed);
  if (/[\u2018-\u201f]/.test(trimmed))
    return { problem: 'typographic quotes: write plain ones, or none', expected };
  if (match === null) return { problem: 'not a quantity', expected };
  const [, digits = '', unit = ''] = match;
  if (/^,\d/.test(unit)) {
    return { problem: 'a comma in a number: write a decimal point and no thousands separator', expected };
  }
  if (/^[-\u2012-\u2014]\s*[\d.]/.test(unit)) return { problem: 'a range: give one value', expected };
  if (/^\d{3}\b/.test(unit)) return { problem: 'a space in a number', expected };
  if (unit !== '') return convert(Number(digits), unit, dimension);
  if (dimension !== 'share') return { problem: 'a number without a unit', expected };
  const value = Number(digits);
  if (!Number.isFinite(value)) return { problem: 'not a finite number', expected };
  return value < 0 ? { problem: 'negative', expected } : { value };
}

/** A number in one unit as a number in another, where some dimension knows both; undefined where none does. */
export function inUnit(value: number, from: string, to: string): number | undefined {
  const [here, there] = [normaliseUnit(from), normaliseUnit(to)];
  for (const units of Object.values(table)) {
    const [a, b] = [units.get(here), units.get(there)];
    if (a !== undefined && b !== undefined) return (value * a.factor + a.offset - b.offset) / b.factor;
  }
  return undefined;
}
