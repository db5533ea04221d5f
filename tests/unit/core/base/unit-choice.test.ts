import { metric, readUnitChoice, unitShown, valueShown } from '@leat/core/units';
import { describe, expect, it } from 'vitest';

const chosen = (...words: string[]): ReturnType<typeof readUnitChoice>['choice'] => {
  const { choice, faults } = readUnitChoice(words);
  expect(faults).toEqual([]);
  return choice;
};

/** A number of results in the unit it is shown in. */
function told(value: number, unit: string, words: readonly string[], quantity = ''): [number, string] {
  const to = unitShown(unit, chosen(...words), quantity);
  return [valueShown(value, unit, to), to];
}

/**
 * Published factors. NIST SP 811 (2008), appendix B.8: gallon (US) 3.785412 E-03 m3, pound (avoirdupois) 4.535924 E-01 kg,
 * ounce (avoirdupois) 2.834952 E-02 kg, square foot 9.290304 E-02 m2, inch 2.54 E-02 m, degree Fahrenheit t/degC =
 * (t/degF - 32)/1.8. Standard Methods for the Examination of Water and Wastewater, 4500-NO3 and 4500-NH3: the ion is the
 * nitrogen times 62.004/14.007 = 4.4266, 46.005/14.007 = 3.2845, 18.039/14.007 = 1.2879 (molar masses, IUPAC 2021).
 * Standard Methods 2320: alkalinity as CaCO3, 50.04 mg to the milliequivalent. DIN 38409-7 and the German degree: 1 dKH is
 * 10 mg CaO/L, 17.848 mg/L as CaCO3.
 */
const published: readonly [
  value: number,
  unit: string,
  choice: string,
  quantity: string,
  is: number,
  shown: string,
][] = [
  [1, 'm3', 'us', '', 1 / 3.785412e-3, 'gal'],
  [3.785412, 'L', 'us', '', 1, 'gal'],
  [1, 'kg', 'us', '', 1 / 0.4535924, 'lb'],
  [28.34952, 'g', 'us', '', 1, 'oz'],
  [0.09290304, 'm2', 'us', '', 1, 'ft2'],
  [25.4, 'mm', 'us', '', 1, 'in'],
  [25, 'degC', 'us', '', 77, 'degF'],
  [10, 'mg N/L', 'mg/L as NO3', 'nitrate', 44.266, 'mg/L as NO3'],
  [1, 'mg N/L', 'mg/L as NO2', 'nitrite', 3.2845, 'mg/L as NO2'],
  [1, 'mg N/L', 'mg/L as NH4', 'tan', 1.2879, 'mg/L as NH4'],
  [1, 'mg N/L', 'mg/L as NH4', 'un-ionised-ammonia', 17.031 / 14.007, 'mg/L as NH3'],
  [17.848, 'mg/L as CaCO3', 'dKH', 'alkalinity', 1, 'dKH'],
  [100.08, 'mg/L as CaCO3', 'meq/L', 'alkalinity', 2, 'meq/L'],
];

describe('units that results are shown in', () => {
  it.each(published)('%d %s under %s of %s as published', (value, unit, choice, quantity, is, shown) => {
    const [number, name] = told(value, unit, [choice], quantity);
    expect(name).toBe(shown);
    expect(Math.abs(number / is - 1)).toBeLessThan(1e-4);
  });

  it('leaves concentrations by the litre to the customary units: they are what kits read', () => {
    for (const unit of ['mg N/L', 'mg/L', 'meq/L', 'mmol/L'])
      expect(told(2, unit, ['us'])).toEqual([2, unit]);
  });

  it('are those of the results where nothing is chosen', () => {
    for (const unit of ['mg N/L', 'm3', 'kg', 'degC', 'kg dry'])
      expect(unitShown(unit, metric, 'nitrate')).toBe(unit);
  });

  it('convert fractions part by part, and leave concentrations and days as they are', () => {
    const [perArea, unit] = told(1, 'kg/m2', ['us']);
    expect(unit).toBe('lb/ft2');
    // 1 kg/m2 = 0.2048161 lb/ft2 (NIST SP 811, B.8: 4.882428 kg/m2 to the pound a square foot).
    expect(Math.abs(perArea * 4.882428 - 1)).toBeLessThan(1e-6);
    expect(told(100, 'L/d', ['us'])[1]).toBe('gal/d');
    const [feed, feedUnit] = told(40, 'g/(m2 d)', ['us']);
    expect(feedUnit).toBe('oz/(ft2 d)');
    // 1 oz/ft2 = 305.1517 g/m2 (NIST SP 811, B.8).
    expect(Math.abs((feed * 305.1517) / 40 - 1)).toBeLessThan(1e-6);
    expect(told(5, 'mg/L', ['us'], 'oxygen')).toEqual([5, 'mg/L']);
    expect(told(2, 'kg dry', ['us'])[1]).toBe('lb dry');
  });

  it('put a single unit over those of a system, in any order', () => {
    expect(told(1, 'kg', ['kg', 'us'])).toEqual([1, 'kg']);
    expect(told(1, 'm3', ['us', 'kg'])[1]).toBe('gal');
  });

  it('fault every word that is none at once, with the nearest name', () => {
    const { faults } = readUnitChoice(['uss', 'mg/L as NO33', 'mg/L', 'degC', 'degF']);
    expect(faults.map(({ got, nearest }) => [got, nearest])).toEqual([
      ['uss', 'us'],
      ['mg/L as NO33', 'mg/L as NO3'],
      ['mg/L', undefined],
      ['degF', undefined],
    ]);
    expect(faults[2].problem).toContain('ambiguous');
    expect(faults[3].problem).toContain('a second unit of temperature beside degC');
  });
});
