import { describe, expect, it } from 'vitest';
import { createParameters } from '../../../../packages/core/src/library/parameters.js';
import { actualPressure } from '../../../../packages/core/src/weather/vapour-pressure.js';
import { airPressure } from '../../../../packages/core/src/weather/penman-monteith.js';
import { netLongWave } from '../../../../packages/core/src/weather/radiation.js';
import { solarRadiation } from '../../../../packages/core/src/weather/radiation.js';
import { sunPosition } from '../../../../packages/core/src/weather/radiation.js';
import {
  saturationPressure,
  saturationSlope,
} from '../../../../packages/core/src/weather/vapour-pressure.js';
import { windAtTwoMetres } from '../../../../packages/core/src/weather/penman-monteith.js';

const values = createParameters();
const day = { dayOfYear: 187, high: 25, low: 18 };

describe('airPressure', () => {
  it('is 101.3 kPa at the sea and falls with height', () => {
    expect(airPressure(values, 0)).toBe(101.3);
    // FAO-56 Example 2, 1800 m: 81.8 kPa [M].
    expect(airPressure(values, 1800).toFixed(1)).toBe('81.8');
  });
});

describe('vapour pressure', () => {
  it('has the slope of its curve, to what rounding 17.27 x 237.3 to 4098 leaves', () => {
    for (const at of [-5, 0, 10, 25, 40]) {
      const step = 1e-4;
      const rise = saturationPressure(values, at + step) - saturationPressure(values, at - step);
      expect(saturationSlope(values, at) / (rise / (2 * step))).toBeCloseTo(1, 4);
    }
  });

  it('comes from the best that was measured, in the order of FAO-56', () => {
    const humid = { humidityHigh: 0.82, humidityLow: 0.54, humidity: 0.68 };
    // FAO-56 Example 5: 25 and 18 degC, 82 and 54 %: 1.70 kPa [M].
    expect(actualPressure(values, { ...day, ...humid }).value.toFixed(2)).toBe('1.70');
    const dew = actualPressure(values, { ...day, ...humid, dewPoint: 10 });
    expect(dew).toEqual({ value: saturationPressure(values, 10) });
    const low = saturationPressure(values, 18);
    expect(actualPressure(values, { ...day, humidityHigh: 0.9 }).value).toBeCloseTo(0.9 * low, 12);
    const mean = (low + saturationPressure(values, 25)) / 2;
    expect(actualPressure(values, { ...day, humidity: 0.7 }).value).toBeCloseTo(0.7 * mean, 12);
    expect(actualPressure(values, day)).toEqual({
      value: low,
      assumed: 'dew point from the lowest temperature',
    });
  });
});

describe('windAtTwoMetres', () => {
  it('brings 3.2 m/s at 10 m to 2.4 m/s (FAO-56 Example 14 [M]) and leaves wind at 2 m alone', () => {
    expect(windAtTwoMetres(values, 3.2, 10).value.toFixed(1)).toBe('2.4');
    expect(windAtTwoMetres(values, 3.2)).toEqual({ value: 3.2 });
    expect(windAtTwoMetres(values, 0, 10).value).toBe(0);
  });

  it('is 2 m/s where none was measured, and says so', () => {
    expect(windAtTwoMetres(values, undefined, 10)).toEqual({ value: 2, assumed: 'wind of 2 m/s' });
  });
});

describe('solarRadiation', () => {
  const site = { latitude: 45, elevation: 0 };
  const sun = sunPosition(values, site.latitude, day.dayOfYear);
  const of = (more: object, coastal = false) =>
    solarRadiation(values, { ...site, coastal }, { ...day, ...more }, sun);

  it('is what was measured, before what sunshine would give', () => {
    expect(of({ radiation: 20, sunshine: 3 })).toEqual({ value: 20 });
    expect(of({ sunshine: 12 }).value).toBeGreaterThan(of({ sunshine: 0 }).value);
    expect(of({ sunshine: 3 }).assumed).toBeUndefined();
  });

  it('is taken from the range of temperature otherwise: 0.19 / 0.16 times as much at the coast', () => {
    expect(of({}, true).value / of({}).value).toBeCloseTo(0.19 / 0.16, 12);
    expect(of({}, true).assumed).toBe('solar radiation from the range of temperature (coastal)');
    expect(of({ low: 25 }).value).toBe(0);
  });
});

describe('netLongWave', () => {
  it('counts no sky as clearer than clear (Rs/Rso at most 1, FAO-56 eq. 39)', () => {
    const lost = (radiation: number): number => netLongWave(values, 25, 18, 1.5, radiation, 30);
    expect(lost(33)).toBe(lost(30));
    expect(lost(29)).toBeLessThan(lost(30));
  });
});
