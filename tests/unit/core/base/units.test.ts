import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  convert,
  describeDimension,
  exampleQuantities,
  formatQuantity,
  internalUnit,
  parseQuantity,
  type Dimension,
} from '../../../../packages/core/src/base/units.js';

const dimensions: Dimension[] = [
  'length',
  'area',
  'volume',
  'mass',
  'time',
  'temperature',
  'volume-flow',
  'mass-flow',
  'depth-rate',
  'rate',
  'share',
  'share-rate',
  'concentration',
  'ammonia',
  'nitrite',
  'nitrate',
  'alkalinity',
  'radiation',
  'speed',
];

function valueOf(text: string, dimension: Dimension): number {
  const answer = parseQuantity(text, dimension);
  if (!('value' in answer)) throw new Error(`${text}: ${answer.problem}`);
  return answer.value;
}

describe('parseQuantity', () => {
  it.each<[string, Dimension, number]>([
    ['1.8 m3', 'volume', 1.8],
    ['450 L', 'volume', 0.45],
    ['450l', 'volume', 0.45],
    ['450 litres', 'volume', 0.45],
    ['110 gal', 'volume', 0.41639529624],
    ['2 m³', 'volume', 2],
    ['2 m^3', 'volume', 2],
    ['1 ft3', 'volume', 0.028316846592],
    ['80 g/d', 'mass-flow', 80],
    ['1 kg/week', 'mass-flow', 1000 / 7],
    ['24 degC', 'temperature', 24],
    ['24 °C', 'temperature', 24],
    ['-5 degC', 'temperature', -5],
    ['77 degF', 'temperature', 25],
    ['298.15 K', 'temperature', 25],
    ['3 lb', 'mass', 1360.77711],
    ['16 oz', 'mass', 453.59237],
    ['10 ft2', 'area', 0.9290304],
    ['12 in', 'length', 0.3048],
    ['2 m3/h', 'volume-flow', 48],
    ['30 L/min', 'volume-flow', 43.2],
    ['1 gpm', 'volume-flow', 5.450992968960001],
    ['5 mm/d', 'depth-rate', 0.005],
    ['60 %', 'share', 0.6],
    ['0.6', 'share', 0.6],
    ['1.5 %/d', 'share-rate', 0.015],
    ['15 g/kg/d', 'share-rate', 0.015],
    ['3 1/h', 'rate', 72],
    ['3/h', 'rate', 72],
    ['2 weeks', 'time', 14],
    ['90 min', 'time', 0.0625],
    ['1e2 mg/L', 'concentration', 100],
    ['2 meq/L', 'alkalinity', 2],
    ['0 mg N/L', 'nitrate', 0],
    ['7.2 km/h', 'speed', 2],
    ['86.4 km/d', 'speed', 1],
    ['10 mph', 'speed', 4.4704],
    ['200 W/m2', 'radiation', 17.28],
    ['5 kWh/m2/d', 'radiation', 18],
  ])('reads %s as %s', (text, dimension, expected) => {
    expect(valueOf(text, dimension)).toBeCloseTo(expected, 12);
  });

  it('counts nitrogen in the ion by molar masses: 62.004 g of nitrate hold 14.007 g', () => {
    expect(valueOf('62.004 mg/L as NO3', 'nitrate')).toBeCloseTo(14.007, 12);
    expect(valueOf('46.005 mg/L as NO2', 'nitrite')).toBeCloseTo(14.007, 12);
    expect(valueOf('18.039 mg/L as NH4', 'ammonia')).toBeCloseTo(14.007, 12);
    expect(valueOf('3 mg/L as N', 'nitrate')).toBe(3);
    expect(valueOf('1 mmol/L', 'nitrate')).toBe(14.007);
  });

  it('counts alkalinity in equivalents: 50.043 mg of CaCO3, or 2.804 German degrees, to the meq', () => {
    expect(valueOf('50.043 mg/L as CaCO3', 'alkalinity')).toBeCloseTo(1, 12);
    expect(valueOf('2.80385 dKH', 'alkalinity')).toBeCloseTo(1, 12);
    expect(valueOf('61.016 mg/L as HCO3', 'alkalinity')).toBeCloseTo(1, 12);
  });

  it.each<[string, Dimension, string]>([
    ['5', 'volume', 'a number without a unit'],
    ['5 kg', 'volume', 'wrong dimension: this is a mass'],
    ['5 mg/L', 'nitrate', 'ambiguous unit: it may mean nitrogen or the whole ion'],
    ['5 ppm', 'ammonia', 'ambiguous unit: it may mean nitrogen or the whole ion'],
    ['5 mg/L', 'alkalinity', 'ambiguous unit: it does not say as what'],
    ['-1 L', 'volume', 'negative'],
    ['-300 degC', 'temperature', 'below absolute zero'],
    ['1,8 m3', 'volume', 'a comma in a number: write a decimal point and no thousands separator'],
    ['nan L', 'volume', 'not a finite number'],
    ['1e400 L', 'volume', 'not a finite number'],
    ['', 'volume', 'not a quantity'],
    ['some', 'volume', 'not a quantity'],
    ['constructor', 'volume', 'not a quantity'],
    ['1 constructor', 'volume', 'unknown unit "constructor"'],
  ])('refuses %s as %s', (text, dimension, problem) => {
    expect(parseQuantity(text, dimension)).toMatchObject({ problem });
  });

  it('names the nearest unit', () => {
    expect(parseQuantity('5 gall', 'volume')).toMatchObject({ nearest: 'gal' });
    expect(parseQuantity('5 mg/L as CaCO', 'alkalinity')).toMatchObject({ nearest: 'mg/L as CaCO3' });
  });

  it('never throws, and gives a finite number or a problem, whatever it is given', () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom(...dimensions), (text, dimension) => {
        const answer = parseQuantity(text, dimension);
        expect('value' in answer ? Number.isFinite(answer.value) : answer.problem !== '').toBe(true);
      }),
    );
  });
});

describe('every dimension', () => {
  it.each(dimensions)('%s reads its own examples', (dimension) => {
    for (const example of exampleQuantities(dimension)) {
      expect(valueOf(example, dimension)).toBeGreaterThan(0);
      expect(describeDimension(dimension)).toMatch(/^an? .* such as "/);
    }
  });

  it.each(dimensions)('%s is written so that the same number is read back', (dimension) => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e9, noNaN: true }), (value) => {
        expect(valueOf(formatQuantity(value, dimension), dimension)).toBe(value);
      }),
    );
  });

  it('converts a number in the internal unit to itself', () => {
    const units = dimensions.filter((dimension) => dimension !== 'share');
    expect(units.map((dimension) => convert(7, internalUnit(dimension), dimension))).toEqual(
      units.map(() => ({ value: 7 })),
    );
  });
});
