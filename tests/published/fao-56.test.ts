import { describe, expect, it } from 'vitest';
import { createParameters } from '../../packages/core/src/library/parameters.js';
import { hargreaves } from '../../packages/core/src/weather/hargreaves.js';
import { penmanMonteith, type ReferenceDay } from '../../packages/core/src/weather/penman-monteith.js';

// Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56. Marks: [R] read, [C] computed by a
// second implementation, [M] from memory of the paper.
const values = createParameters();

type Line = readonly [name: keyof ReferenceDay, computed: string, printed: string];

/** Digits after the point of a printed number. */
const digits = (printed: string): number => printed.split('.')[1].length;

describe('Example 18: Uccle (Brussels), 50 deg 48 min N, 100 m, 6 July; inputs [M], height of wind and wind [R]', () => {
  const site = { latitude: 50.8, elevation: 100, windHeight: 10 };
  const day = {
    dayOfYear: 187,
    high: 21.5,
    low: 12.3,
    humidityHigh: 0.84,
    humidityLow: 0.63,
    wind: 10 / 3.6,
    sunshine: 9.25,
  };
  const got = penmanMonteith(values, site, day);

  it.each<Line>([
    ['pressure', '100.12', '100.1'], // printed [R]
    ['psychrometric', '0.06658', '0.0666'], // printed here and below [M]
    ['slope', '0.12211', '0.122'],
    ['actual', '1.4086', '1.409'],
    ['wind', '2.0776', '2.078'],
    ['extraterrestrial', '41.09', '41.09'],
    ['daylight', '16.10', '16.1'],
    ['radiation', '22.07', '22.07'], // 22.06 was also read [R]: less by one in the last digit
    ['clearSky', '30.90', '30.90'],
    ['netShort', '17.00', '17.00'],
    ['netLong', '3.712', '3.71'],
    ['net', '13.28', '13.28'],
    ['et0', '3.880', '3.88'],
  ])('%s is %s [C], printed %s', (name, computed, printed) => {
    const value = got[name] as number;
    expect(value.toFixed(digits(computed))).toBe(computed);
    expect(value.toFixed(digits(printed))).toBe(printed);
  });

  it('has a saturation vapour pressure of 1.9975 kPa [C]; the paper cuts it to 1.997 [M]', () => {
    expect(got.saturation.toFixed(4)).toBe('1.9975');
    expect(Math.floor(got.saturation * 1000) / 1000).toBe(1.997);
  });

  it('gives 3.9 mm/d [R]', () => {
    expect(got.et0.toFixed(1)).toBe('3.9');
    expect(got.assumed).toEqual([]);
  });
});

describe('Example 20: Lyon, 45 deg 43 min N, 200 m, July, temperatures only; inputs [M]', () => {
  const site = { latitude: 45 + 43 / 60, elevation: 200 };
  const day = { dayOfYear: 196, high: 26.6, low: 14.8 };
  const got = penmanMonteith(values, site, day);

  it.each<readonly [name: keyof ReferenceDay, printed: string]>([
    ['extraterrestrial', '40.55'],
    ['actual', '1.68'],
    ['radiation', '22.29'],
    ['wind', '2.0'],
  ])('%s is %s [C, M]', (name, printed) => {
    expect((got[name] as number).toFixed(digits(printed))).toBe(printed);
  });

  it('gives 4.56 mm/d [C, M], 4.6 to one digit, by Penman-Monteith with the missing-data rules', () => {
    expect(got.et0.toFixed(2)).toBe('4.56');
    expect(got.assumed).toEqual([
      'dew point from the lowest temperature',
      'solar radiation from the range of temperature (interior)',
      'wind of 2 m/s',
    ]);
  });

  it('gives 5.03 mm/d [C], printed 5.0 [M], by Hargreaves', () => {
    const depth = hargreaves(values, site, day);
    expect(depth.toFixed(2)).toBe('5.03');
    expect(depth.toFixed(1)).toBe('5.0');
  });
});
