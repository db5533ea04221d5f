import { describe, expect, it } from 'vitest';
import { InputError } from '../../../../packages/core/src/base/faults.js';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { dayOfYear } from '../../../../packages/core/src/base/calendar.js';
import { hargreaves } from '../../../../packages/core/src/weather/evapotranspiration.js';
import { penmanMonteith } from '../../../../packages/core/src/weather/penman-monteith.js';
import { referenceEvapotranspiration } from '../../../../packages/core/src/weather/evapotranspiration.js';

const values = createParameters();
const site = { latitude: 45, elevation: 100 };
const day = { dayOfYear: 187, high: 28, low: 15, humidity: 0.6, wind: 2 };
const et0 = (more: object): number => penmanMonteith(values, site, { ...day, ...more }).et0;

describe('penmanMonteith', () => {
  it('rises with sun, wind and dry air', () => {
    expect(et0({ radiation: 25 })).toBeGreaterThan(et0({ radiation: 15 }));
    expect(et0({ wind: 4 })).toBeGreaterThan(et0({ wind: 1 }));
    expect(et0({ humidity: 0.4 })).toBeGreaterThan(et0({ humidity: 0.8 }));
  });

  it('is the energy term alone in saturated, still air: 0.408 slope Rn / (slope + gamma)', () => {
    const got = penmanMonteith(values, site, {
      ...day,
      high: 20,
      low: 20,
      humidity: 1,
      wind: 0,
      radiation: 20,
    });
    const energy = (0.408 * got.slope * got.net) / (got.slope + got.psychrometric);
    expect(got.et0).toBeCloseTo(energy, 12);
  });

  it('is not cut off where it goes below zero: cold and dull, on a humid day', () => {
    const dull = { dayOfYear: 355, high: 1, low: 0, humidity: 1, wind: 0.5 };
    expect(penmanMonteith(values, { ...site, latitude: 60 }, { ...dull, radiation: 1.2 }).et0).toBeLessThan(
      0,
    );
  });

  it('names every value that cannot be', () => {
    const wrong = { dayOfYear: 0, high: 10, low: 12, humidity: 60, wind: -1 };
    const ask = () => penmanMonteith(values, { latitude: 91, elevation: Number.NaN }, wrong);
    expect(ask).toThrow(InputError);
    let keys: (string | undefined)[] = [];
    try {
      ask();
    } catch (error) {
      keys = (error as InputError).faults.map(({ key }) => key);
    }
    expect(keys).toEqual(['latitude', 'elevation', 'dayOfYear', 'humidity', 'wind', 'low']);
  });

  it('does not answer for a day without sun', () => {
    const north = { latitude: 80, elevation: 0 };
    expect(() => penmanMonteith(values, north, { ...day, dayOfYear: 355 })).toThrow(
      'the sun does not rise on this day; got day 355 at 80 degrees',
    );
  });
});

describe('hargreaves', () => {
  it('is 0 without a range of temperature and at a mean of -17.8 degC', () => {
    expect(hargreaves(values, site, { dayOfYear: 187, high: 20, low: 20 })).toBe(0);
    expect(hargreaves(values, site, { dayOfYear: 187, high: -14.8, low: -20.8 })).toBeCloseTo(0, 12);
  });

  it('refuses a lowest above the highest', () => {
    expect(() => hargreaves(values, site, { dayOfYear: 187, high: 20, low: 21 })).toThrow(
      'low: above the highest; got 21; expected at most 20 degC',
    );
  });
});

describe('referenceEvapotranspiration', () => {
  it('is in m/d what the formulas give in mm/d', () => {
    const by = (method: 'penman-monteith' | 'hargreaves') =>
      referenceEvapotranspiration(values, method, site, day);
    expect(by('penman-monteith')).toBe(penmanMonteith(values, site, day).et0 / 1000);
    expect(by('hargreaves')).toBe(hargreaves(values, site, day) / 1000);
  });
});

describe('dayOfYear', () => {
  it.each([
    ['2027-01-01', 0, 1],
    ['2027-07-06', 0, 187],
    ['2028-12-31', 0, 366],
    ['2027-12-31', 1, 1],
    ['2027-03-01', 0.7, 60],
    ['2028-02-28', 2, 61],
  ])('%s and %d days: %d', (date, after, expected) => {
    expect(dayOfYear(date, after)).toBe(expected);
  });

  it.each(['2027-02-29', '2027-13-01', 'soon', '2027-1-1'])('refuses %s', (date) => {
    expect(() => dayOfYear(date)).toThrow('no such date');
  });
});
